import { declarationsIn, type NamedThing } from '../analysis/declarations';
import { documentValue } from '../analysis/documentUnit';
import { FamilyView } from '../analysis/familyView';
import { followPath } from '../analysis/links';
import { MENTION_KINDS, Names } from '../analysis/names';
import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import type { RefKind } from '../model/shape';
import type { ItemRange, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { sourceRange } from '../syntax/scalarSource';
import { readersOfFamily } from './familyReaders';
import { type IdUse, OUTCOME_KINDS } from './idUses';

/** What an id stands for. */
export type IdTarget =
  | { readonly is: 'thing'; readonly thing: NamedThing }
  /** One value of what the bench finds: `left` of `nut-hand`, `renewed` of a part. */
  | { readonly is: 'value'; readonly of: NamedThing; readonly value: string; readonly node: ScalarNode }
  | { readonly is: 'file'; readonly uri: Uri };

/** What an id in a document stands for: nothing where nothing has it, several where a text leaves open which is meant. */
export function targetsOf(snapshot: Snapshot, document: SyntaxDocument, use: IdUse): IdTarget[] {
  switch (use.is) {
    case 'declared':
      return asThings([declarationsIn(document).find(use.kind, use.id)]);
    case 'named':
      return asThings([firstNamed(snapshot, document, use.kinds, use.id)]);
    case 'mentioned':
      return mentioned(snapshot, document, use);
    case 'value-listed':
      return valueTarget(declarationsIn(document).find('outcome', use.outcome), use.id);
    case 'value-asked':
      return valueTarget(firstNamed(snapshot, document, OUTCOME_KINDS, use.outcome), use.id);
    case 'path':
      return fileAt(snapshot, document, use);
  }
}

/** The same for everything that is the same target, whoever looks at it. */
export function keyOfTarget(target: IdTarget): string {
  if (target.is === 'file') return target.uri;
  const { document, kind, id } = target.is === 'thing' ? target.thing : target.of;
  const key = `${document.uri}\n${kind}\n${id}`;
  return target.is === 'thing' ? key : `${key}\n=${target.value}`;
}

/** The id under which a target stands in documents; a file may be written in many ways. */
export function idOfTarget(target: IdTarget): string | undefined {
  if (target.is === 'file') return undefined;
  return target.is === 'thing' ? target.thing.id : target.value;
}

/** Where a target is declared; undefined for a file, which is its own declaration. */
export function declarationOf(target: IdTarget): { document: SyntaxDocument; range: ItemRange } | undefined {
  switch (target.is) {
    case 'file':
      return undefined;
    case 'value':
      return { document: target.of.document, range: withoutQuotes(target.node) };
    case 'thing':
      return { document: target.thing.document, range: withoutQuotes(target.thing.declared.node) };
  }
}

function withoutQuotes(node: ScalarNode): ItemRange {
  return sourceRange(node, 0, node.text.length);
}

function asThings(things: readonly (NamedThing | undefined)[]): IdTarget[] {
  return things.flatMap((thing) => (thing === undefined ? [] : [{ is: 'thing', thing }]));
}

function firstNamed(
  snapshot: Snapshot,
  document: SyntaxDocument,
  kinds: readonly RefKind[],
  id: string,
): NamedThing | undefined {
  const names = Names.of(snapshot, document);
  for (const kind of kinds) {
    const thing = names.find(kind, id);
    if (thing !== undefined) return thing;
  }
  return undefined;
}

/** What a family does not know itself may be a tool of those who read it. */
function mentioned(snapshot: Snapshot, document: SyntaxDocument, use: IdUse & { is: 'mentioned' }): IdTarget[] {
  const own = mentionedIn(Names.of(snapshot, document), use);
  if (own.length > 0 || document.kind !== 'family') return asThings(own);
  const readers = readersOfFamily(snapshot, document);
  return asThings(readers.flatMap((reader) => mentionedIn(Names.of(snapshot, reader), use)));
}

function mentionedIn(names: Names, { kind: written, id }: IdUse & { is: 'mentioned' }): readonly NamedThing[] {
  if (written === undefined) return names.mentionable(id);
  const kind = MENTION_KINDS.find((one) => one === written);
  const thing = kind === undefined ? undefined : names.find(kind, id);
  return thing === undefined ? [] : [thing];
}

function valueTarget(of: NamedThing | undefined, value: string): IdTarget[] {
  if (of === undefined) return [];
  const node = of.kind === 'part' ? renewNode(of, value) : listedValue(of, value);
  return node === undefined ? [] : [{ is: 'value', of, value, node }];
}

function listedValue({ document, declared }: NamedThing, value: string): ScalarNode | undefined {
  const identify = documentValue(document, 'family')?.identify?.find(({ id }) => id === declared);
  return identify?.value.values?.find((one) => one.text === value)?.node;
}

/** Whether a part was re-used or renewed is open where the family says `renew: on-condition`. */
function renewNode({ document, id }: NamedThing, value: string): ScalarNode | undefined {
  const renew = FamilyView.of(document)?.part(id)?.renew;
  const isOpen = renew?.value === 'on-condition' && (value === 'renewed' || value === 're-used');
  return isOpen ? renew.node : undefined;
}

function fileAt(snapshot: Snapshot, document: SyntaxDocument, { path }: IdUse & { is: 'path' }): IdTarget[] {
  const target = followPath(snapshot, document.uri, path);
  switch (target.is) {
    case 'document':
      return [{ is: 'file', uri: target.document.uri }];
    case 'file':
    case 'not-loaded':
      return [{ is: 'file', uri: target.uri }];
    default:
      return [];
  }
}
