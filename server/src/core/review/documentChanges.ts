import { documentUnit } from '../analysis/documentUnit';
import { FamilyView } from '../analysis/familyView';
import { kitViewOf } from '../analysis/kitView';
import { ProcedureView } from '../analysis/procedureView';
import type { Snapshot } from '../analysis/snapshot';
import { BuildSpace } from '../builds';
import { UNIT_SHAPES } from '../model/generated/shapes';
import { camel } from '../model/typeNames';
import type { Entry } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { ChangeClass, Subject } from './change';
import { entryChanges } from './entryChanges';
import { LIST_KINDS, type Listed, listChanges } from './listChanges';
import type { Renamed } from './meaning';
import { objectChanges } from './objectChanges';
import type { Values } from './slot';
import { stepChanges } from './stepChanges';
import { type FoundChange, type Two, TwoDocuments, type TwoSpaces } from './twoSides';

/** What lists of things by id are lists of, by key, and what it comes to that one goes. */
const ENTRY_KINDS: Readonly<Record<string, readonly [kind: string, gone: ChangeClass]>> = {
  variants: ['variant', 'fits'],
  options: ['option', 'fits'],
  identify: ['finding of the bench', 'hurt'],
  parts: ['part', 'fits'],
  assemblies: ['assembly', 'fits'],
  'balance-groups': ['balance group', 'hurt'],
  checks: ['check', 'hurt'],
  dimensions: ['dimension', 'fits'],
  limits: ['limit', 'hurt'],
  readings: ['reading', 'fits'],
  figures: ['figure', 'says'],
  tools: ['tool', 'fits'],
  consumables: ['consumable', 'fits'],
};

const EMPTY = new BuildSpace({ variants: [], options: [], identify: [], renewable: [] });

/** Everything that differs between two versions of a document, in the order of its keys. */
export function documentChanges(
  documents: Two<SyntaxDocument>,
  snapshots: Two<Snapshot>,
  renamed: Renamed,
): readonly FoundChange[] {
  const [before, after] = [documentUnit(documents.before), documentUnit(documents.after)];
  const two = new TwoDocuments(documents, spacesOf(documents, snapshots), renamed);
  const { kind } = documents.after;
  if (documents.before.text === documents.after.text || kind !== documents.before.kind) return two.found;
  if (before === undefined || after === undefined) {
    two.found.push(unreadable(documents, before === undefined, after === undefined));
    return two.found;
  }
  const values = { before: before.value, after: after.value } as Values;
  headChanges(two, values, kind);
  insideChanges(two, values, kind);
  if (kind === 'procedure') procedureChanges(two, documents, snapshots);
  if (two.found.length === 0)
    two.tell(layoutOnly(documents.after), documents.before.items[0] && whole(documents.before), whole(documents.after));
  return two.found;
}

/** The first line stands for a document whose layout or remarks are all that differs. */
function whole({ root, items }: SyntaxDocument) {
  return root?.pairs[0]?.key ?? { item: items[0] ?? { text: '', root: undefined, problems: [] }, from: 0, to: 0 };
}

function layoutOnly(document: SyntaxDocument) {
  return { class: 'looks', kind: 'changed', of: subjectOfDocument(document), note: 'layout or remarks' } as const;
}

function unreadable({ before, after }: Two<SyntaxDocument>, wasBroken: boolean, isBroken: boolean): FoundChange {
  const note = isBroken
    ? wasBroken
      ? 'neither can be read'
      : 'it cannot be read any more'
    : 'it could not be read before';
  const side = (document: SyntaxDocument) => ({ uri: document.uri, span: { start: 0, end: 0 }, text: '' });
  const told = {
    class: 'hurt',
    kind: 'changed',
    of: subjectOfDocument(after),
    key: undefined,
    note,
    builds: '',
  } as const;
  return { ...told, where: undefined, before: side(before), after: side(after) };
}

/** What a document is called: its own number, id or name. */
export function subjectOfDocument(document: SyntaxDocument): Subject {
  const value = documentUnit(document)?.value as Readonly<Record<string, unknown>> | undefined;
  const own = value?.[document.kind] as { text?: string; id?: string } | undefined;
  const name = (value?.title ?? value?.name) as { text?: string } | undefined;
  const id = own?.text ?? own?.id ?? '';
  const file = document.uri.slice(document.uri.lastIndexOf('/') + 1);
  return { kind: document.kind, id, name: name?.text ?? (id || file), step: undefined };
}

function headChanges(two: TwoDocuments, values: Values, kind: SyntaxDocument['kind']): void {
  const keys = UNIT_SHAPES[kind]?.shape.keys ?? {};
  const apart = Object.keys(keys).filter((key) => keys[key]?.shape.as === 'entries' && kind !== 'settings');
  objectChanges(two, values, {
    def: kind,
    keys,
    of: subjectOfDocument(two.documents.after),
    without: new Set([...apart, ...Object.keys(LIST_KINDS), 'phases']),
    within: { before: undefined, after: undefined },
  });
}

function insideChanges(two: TwoDocuments, values: Values, kind: SyntaxDocument['kind']): void {
  for (const [key, { shape }] of Object.entries(UNIT_SHAPES[kind]?.shape.keys ?? {})) {
    const list = LIST_KINDS[key];
    const [before, after] = [values.before[camel(key)] ?? [], values.after[camel(key)] ?? []];
    if (!Array.isArray(before) || !Array.isArray(after)) continue;
    if (list !== undefined) listChanges(two, { before: before as Listed[], after: after as Listed[] }, list);
    else if (shape.as === 'entries' && kind !== 'settings') {
      const [name, gone] = ENTRY_KINDS[key] ?? [key, 'fits'];
      entryChanges(
        two,
        { before: before as Entry<unknown>[], after: after as Entry<unknown>[] },
        { kind: name, gone, shape },
      );
    }
  }
}

function procedureChanges(two: TwoDocuments, documents: Two<SyntaxDocument>, snapshots: Two<Snapshot>): void {
  const before = ProcedureView.of(snapshots.before, documents.before);
  const after = ProcedureView.of(snapshots.after, documents.after);
  if (before === undefined || after === undefined) return;
  const nameOf = (id: string) => {
    const part = after.family?.nameOf(id);
    if (part !== undefined && part !== id) return part;
    return after.tools.get(id)?.entry.value.name?.text ?? after.consumables.get(id)?.entry.value.name?.text ?? id;
  };
  stepChanges(two, { before, after }, nameOf);
}

function spacesOf(documents: Two<SyntaxDocument>, snapshots: Two<Snapshot>): TwoSpaces {
  const before = spaceOf(documents.before, snapshots.before);
  const after = spaceOf(documents.after, snapshots.after);
  return { before, after, same: isSameSpace(before, after) };
}

function spaceOf(document: SyntaxDocument, snapshot: Snapshot): BuildSpace {
  switch (document.kind) {
    case 'family':
      return FamilyView.of(document)?.space ?? EMPTY;
    case 'kit':
      return kitViewOf(snapshot, document)?.family?.space ?? EMPTY;
    case 'procedure':
      return ProcedureView.of(snapshot, document)?.space ?? EMPTY;
    default:
      return EMPTY;
  }
}

/** Names aside, which are only printed. */
function isSameSpace(before: BuildSpace, after: BuildSpace): boolean {
  const plain = (value: unknown): unknown => {
    if (value instanceof Map) return [...value].map(([key, one]) => [key, plain(one)]);
    if (value instanceof Set) return [...value].map(plain);
    if (Array.isArray(value)) return value.map(plain);
    if (typeof value !== 'object' || value === null) return value;
    return Object.entries(value).flatMap(([key, one]) => (key === 'name' ? [] : [[key, plain(one)]]));
  };
  return JSON.stringify(plain(before.facts)) === JSON.stringify(plain(after.facts));
}
