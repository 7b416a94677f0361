import { UNIT_SHAPES } from '../model/generated/shapes';
import type { Shape } from '../model/shape';
import type { ByBuild, Declared, Entry, QuantityValue } from '../model/values';
import type { Node } from '../syntax/node';
import { type NodeValue, valuePairs } from './byBuildChange';
import type { ChangeClass, Subject } from './change';
import { judgeQuantity } from './judge';
import { matchSequence, wordLikeness } from './matchSequence';
import { meaningOf } from './meaning';
import { objectChanges } from './objectChanges';
import type { Values } from './slot';
import type { Two, TwoDocuments } from './twoSides';

type Entries = readonly Entry<unknown>[];

/** What a list of things by id is a list of, and what it comes to that one goes. */
export interface EntryKind {
  readonly kind: string;
  readonly gone: ChangeClass;
  readonly shape: Shape & { readonly as: 'entries' };
}

const NOWHERE = { before: undefined, after: undefined };

/** The pairs of entries that are one thing in two versions, those under another id among them. */
export function matchEntries({ before, after }: Two<Entries>, shape: Shape) {
  return matchSequence(before, after, {
    identity: ({ id }) => id.id,
    likeness: (a, b) => wordLikeness(bodyOf(a, shape), bodyOf(b, shape)),
    least: 0.75,
  });
}

function bodyOf({ value }: Entry<unknown>, shape: Shape): string {
  return meaningOf((value as { node?: Node }).node, shape.as === 'entries' ? shape.values : shape);
}

/** Compares things that are declared by id. */
export function entryChanges(two: TwoDocuments, entries: Two<Entries>, kind: EntryKind): void {
  const { pairs, removed, added } = matchEntries(entries, kind.shape);
  for (const { before, after } of pairs) {
    const of = subjectOf(after, kind.kind);
    if (before.id.id !== after.id.id) two.tell({ class: 'looks', kind: 'renamed', of }, before.id.node, after.id.node);
    compareEntry(two, { before, after }, kind, of);
  }
  for (const one of removed)
    two.tell({ class: kind.gone, kind: 'removed', of: subjectOf(one, kind.kind) }, entryRange(one), undefined);
  for (const one of added)
    two.tell({ class: 'fits', kind: 'added', of: subjectOf(one, kind.kind) }, undefined, entryRange(one));
}

function compareEntry(
  two: TwoDocuments,
  { before, after }: Two<Entry<unknown>>,
  { shape }: EntryKind,
  of: Subject,
): void {
  if (shape.values.as === 'unit') {
    const def = shape.values.def;
    const keys = UNIT_SHAPES[def]?.shape.keys ?? {};
    objectChanges(two, { before: before.value, after: after.value } as Values, {
      def,
      keys,
      of,
      within: NOWHERE,
    });
    return;
  }
  if (shape.values.as !== 'by-build') return;
  const values = [before.value, after.value] as readonly ByBuild<NodeValue>[];
  for (const pair of valuePairs(values[0], values[1], two.spaces, NOWHERE)) {
    const judged =
      pair.before === undefined || pair.after === undefined
        ? { class: 'hurt' as const }
        : judgeQuantity('family', 'dimensions', pair.before as QuantityValue, pair.after as QuantityValue);
    const kind = pair.before === undefined ? 'added' : pair.after === undefined ? 'removed' : 'changed';
    if (judged !== undefined)
      two.tell({ ...judged, kind, of, builds: pair.builds, where: pair.where }, pair.before?.node, pair.after?.node);
  }
}

/** A thing that came or went is shown whole where it is a map of its own. */
function entryRange({ id, value }: Entry<unknown>): Declared['node'] | Node {
  const node = (value as { node?: Node }).node;
  return node !== undefined && node.item === id.node.item ? spanning(id.node, node) : id.node;
}

function spanning(key: Declared['node'], node: Node): Node {
  return { ...node, from: Math.min(key.from, node.from), to: node.to };
}

export function subjectOf({ id, value }: Entry<unknown>, kind: string): Subject {
  const name = (value as { name?: { text?: string } }).name?.text ?? (value as { say?: { text?: string } }).say?.text;
  return { kind, id: id.id, name: name ?? id.id, step: undefined };
}
