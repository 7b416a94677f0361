import { documentUnit, documentValue } from '../analysis/documentUnit';
import { MENTION_KINDS } from '../analysis/names';
import { type ConditionAtom, RESERVED_WORDS } from '../builds/condition';
import { type Facts, type Unit, unitsIn } from '../model/facts';
import type { Concession } from '../model/generated/types';
import { mentionsIn } from '../model/readValues';
import type { RefKind } from '../model/shape';
import type { Declared, PathRef, Prose } from '../model/values';
import type { ItemRange, ScalarNode } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { sourceRange } from '../syntax/scalarSource';
import { unitsWithin } from './unitsWithin';

interface Written {
  /** The id or the text, as written. */
  readonly id: string;
  /** Where it stands, without quotes, signs and brackets around it. */
  readonly range: ItemRange;
}

/** An id where it stands in a document, by what the place alone says of it. */
export type IdUse =
  | (Written & { readonly is: 'declared'; readonly kind: RefKind; readonly declared: Declared })
  /** It names one thing: that of the first of the kinds which has the id. */
  | (Written & { readonly is: 'named'; readonly kinds: readonly RefKind[] })
  /** `<id>` or `<kind/id>` in a text for people. Without a kind, things of several kinds may be meant. */
  | (Written & { readonly is: 'mentioned'; readonly kind: string | undefined })
  /** A value that the bench can find: where it is listed, and behind `outcome=` in a condition. */
  | (Written & { readonly is: 'value-listed'; readonly outcome: string })
  | (Written & { readonly is: 'value-asked'; readonly outcome: string })
  /** The path of a file; the id is the path. */
  | (Written & { readonly is: 'path'; readonly path: PathRef });

/** What a condition's name may be: of the bench, or of a part that is renewed on condition. */
export const OUTCOME_KINDS: readonly RefKind[] = ['outcome', 'part'];
const BUILD_KINDS: readonly RefKind[] = ['variant', 'option'];
/** What a concession may be about, in the order in which an id is looked for. */
const ABOUT_KINDS: readonly RefKind[] = [
  ...MENTION_KINDS,
  'variant',
  'option',
  'outcome',
  'assembly',
  'balance-group',
  'dimension',
];

/** Every id in a document, by the id. Made once for a reading, from what was read and not from the text. */
export function idUsesIn(document: SyntaxDocument): ReadonlyMap<string, readonly IdUse[]> {
  const known = remembered.get(document);
  if (known !== undefined) return known;
  const byId = new Map<string, IdUse[]>();
  const unit = documentUnit(document);
  for (const use of collect(document, unit === undefined ? [] : unitsIn(unit))) {
    const same = byId.get(use.id);
    if (same === undefined) byId.set(use.id, [use]);
    else same.push(use);
  }
  remembered.set(document, byId);
  return byId;
}

const remembered = new WeakMap<SyntaxDocument, ReadonlyMap<string, readonly IdUse[]>>();

/** The id at an offset. Of two that touch there, as in `nut-hand=left`, the one that goes on. */
export function idUseAt(document: SyntaxDocument, offset: number): IdUse | undefined {
  let before: IdUse | undefined;
  // A key pressed makes a new reading, of which only what stands here is needed.
  for (const use of collect(document, unitsWithin(document, { start: offset, end: offset }))) {
    const { start, end } = document.spanOf(use.range);
    if (start <= offset && offset < end) return use;
    if (offset === end) before = use;
  }
  return before;
}

function* collect(document: SyntaxDocument, units: Iterable<Unit>): Generator<IdUse> {
  for (const one of units) yield* usesInUnit(one);
  for (const { id, value } of documentValue(document, 'family')?.identify ?? []) {
    for (const { node, text } of value.values ?? []) {
      yield { is: 'value-listed', outcome: id.id, id: text, range: within(node, 0, node.text.length) };
    }
  }
}

/** The ids in a unit, without those of the units inside it. */
export function* usesInUnit({ facts, def, value }: Unit): Generator<IdUse> {
  yield* usesIn(facts);
  if (def === 'procedure/concession') yield* aboutOf(value as Concession);
}

function* usesIn({ declared, refs, prose, conditions, byBuilds, paths }: Facts): Generator<IdUse> {
  for (const one of declared) {
    const { node, kind, id } = one;
    if (id !== '') yield { is: 'declared', kind, id, declared: one, range: within(node, 0, id.length) };
  }
  for (const { ref } of refs) {
    const { node, id, kind } = ref;
    // A sign stands before the id, so it is counted from the end.
    const range = within(node, node.text.length - id.length, node.text.length);
    if (id !== '') yield { is: 'named', kinds: kindsWithin(kind), id, range };
  }
  for (const one of prose) yield* mentionsOf(one.prose);
  for (const { condition } of conditions) {
    for (const { node, expr } of condition.names) if (isAtom(expr)) yield* namesOf(node, expr);
  }
  for (const { byBuild } of byBuilds) {
    if (byBuild.is === 'one') continue;
    for (const { key, expr } of byBuild.cases) if (isAtom(expr)) yield* namesOf(key, expr);
  }
  for (const path of paths) {
    const { node } = path;
    yield { is: 'path', path, id: path.path, range: within(node, 0, node.text.length) };
  }
}

function isAtom(expr: { readonly kind: string } | undefined): expr is ConditionAtom {
  return expr?.kind === 'is' || expr?.kind === 'arrives' || expr?.kind === 'outcome';
}

function* namesOf(node: ScalarNode, atom: ConditionAtom): Generator<IdUse> {
  const start = node.text.length - node.text.trimStart().length;
  if (atom.kind === 'outcome') {
    const { name, value } = atom;
    yield { is: 'named', kinds: OUTCOME_KINDS, id: name, range: within(node, start, start + name.length) };
    const from = start + name.length + 1;
    yield { is: 'value-asked', outcome: name, id: value, range: within(node, from, from + value.length) };
    return;
  }
  if (RESERVED_WORDS.includes(atom.id)) return;
  const from = atom.kind === 'arrives' ? start + 'arrives='.length : start;
  const kinds: readonly RefKind[] = atom.kind === 'arrives' ? ['option'] : BUILD_KINDS;
  yield { is: 'named', kinds, id: atom.id, range: within(node, from, from + atom.id.length) };
}

function* mentionsOf(prose: Prose): Generator<IdUse> {
  for (const scalar of [prose.scalar, ...Object.values(prose.translations)]) {
    for (const { kind, id, to } of mentionsIn(scalar.text)) {
      const end = to - 1;
      yield { is: 'mentioned', kind, id, range: within(scalar, end - id.length, end) };
    }
  }
}

function* aboutOf({ about }: Concession): Generator<IdUse> {
  for (const { node, text } of about ?? []) {
    if (text !== '') yield { is: 'named', kinds: ABOUT_KINDS, id: text, range: within(node, 0, text.length) };
  }
}

export function kindsWithin(kind: RefKind): readonly RefKind[] {
  return kind === 'limit-or-reading' ? ['limit', 'reading'] : [kind];
}

function within(node: ScalarNode, from: number, to: number): ItemRange {
  return sourceRange(node, from, to);
}
