import type { RefKind } from '../model/shape';
import type { Declared } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import { documentUnit, documentValue } from './documentUnit';
import { summariesOf } from './unitSummary';

/** Something that has an id: a part, a tool, a step. */
export interface NamedThing {
  readonly kind: RefKind;
  readonly id: string;
  /** What people call it: its name, or the title of a step; the id where it has none. */
  readonly name: string;
  /** Where it is declared. */
  readonly declared: Declared;
  readonly document: SyntaxDocument;
}

export type ThingsById = ReadonlyMap<string, NamedThing>;

/** The ids that a document declares, by kind; the first one where an id stands twice. Made once for a reading. */
export function declarationsIn(document: SyntaxDocument): ReadonlyMap<RefKind, ThingsById> {
  const known = remembered.get(document);
  if (known !== undefined) return known;
  const byKind = new Map<RefKind, Map<string, NamedThing>>();
  const names = namesIn(document);
  const unit = documentUnit(document);
  for (const summary of unit === undefined ? [] : summariesOf(unit)) {
    for (const declared of summary.declared) {
      const { kind, id } = declared;
      const byId = byKind.get(kind) ?? new Map<string, NamedThing>();
      byKind.set(kind, byId);
      if (!byId.has(id)) byId.set(id, { kind, id, name: names.get(declared) ?? id, declared, document });
    }
  }
  remembered.set(document, byKind);
  return byKind;
}

const remembered = new WeakMap<SyntaxDocument, ReadonlyMap<RefKind, ThingsById>>();

interface MayHaveName {
  readonly id: Declared;
  readonly value: object;
}

function namesIn(document: SyntaxDocument): Map<Declared, string> {
  const names = new Map<Declared, string>();
  for (const { id, value } of entriesOf(document)) {
    const text = 'name' in value ? (value.name as { text?: string } | undefined)?.text : undefined;
    if (text !== undefined) names.set(id, text);
  }
  for (const phase of documentValue(document, 'procedure')?.phases ?? []) {
    for (const { step, title } of phase.steps ?? []) {
      if (step !== undefined && title !== undefined) names.set(step, title.text);
    }
  }
  return names;
}

function entriesOf(document: SyntaxDocument): readonly MayHaveName[] {
  const family = documentValue(document, 'family');
  const stores = documentValue(document, 'stores');
  const procedure = documentValue(document, 'procedure');
  const lists: readonly (readonly MayHaveName[] | undefined)[] = [
    family?.variants,
    family?.options,
    family?.identify,
    family?.parts,
    family?.assemblies,
    family?.balanceGroups,
    family?.checks,
    family?.limits,
    family?.readings,
    family?.figures,
    stores?.tools,
    stores?.consumables,
    procedure?.readings,
    procedure?.figures,
  ];
  return lists.flatMap((list) => list ?? []);
}
