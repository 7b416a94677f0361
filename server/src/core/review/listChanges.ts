import { UNIT_SHAPES } from '../model/generated/shapes';
import type { Node } from '../syntax/node';
import type { ChangeClass, Subject } from './change';
import { matchSequence, wordLikeness } from './matchSequence';
import { meaningOf } from './meaning';
import { objectChanges } from './objectChanges';
import type { Values } from './slot';
import type { Two, TwoDocuments } from './twoSides';

/** An entry of a list that has no id of its own. */
export type Listed = Readonly<Record<string, unknown>> & { readonly node: Node };

export interface ListKind {
  readonly kind: string;
  readonly def: string;
  readonly removed: (one: Listed) => ChangeClass;
  readonly added: (one: Listed) => ChangeClass;
  /** What tells two entries apart; undefined where only their words do. */
  readonly identity: (one: Listed) => string | undefined;
}

const text = (one: Listed, key: string): string => {
  const value = one[key] as { text?: string; id?: string } | undefined;
  return value?.text ?? value?.id ?? '';
};

/** A line that warns is a hazard that nobody is told of any more. */
const warns = (one: Listed) => ['warning', 'caution', 'notice'].some((key) => key in one);

export const LIST_KINDS: Readonly<Record<string, ListKind>> = {
  lines: {
    kind: 'kit line',
    def: 'kit/line',
    removed: () => 'fits',
    added: () => 'fits',
    identity: (one) => text(one, 'item') || undefined,
  },
  revisions: {
    kind: 'revision',
    def: 'procedure/revision',
    removed: () => 'says',
    added: () => 'says',
    identity: (one) => text(one, 'revision') || undefined,
  },
  'before-you-start': {
    kind: 'line before the start',
    def: 'procedure/notice-line',
    removed: (one) => (warns(one) ? 'hurt' : 'fits'),
    added: (one) => (warns(one) ? 'fits' : 'says'),
    identity: () => undefined,
  },
  concessions: {
    kind: 'concession',
    def: 'procedure/concession',
    removed: () => 'fits',
    // What was found to be wrong is let stand from now on.
    added: () => 'hurt',
    identity: (one) => `${text(one, 'rule')} ${text(one, 'at')}`,
  },
};

/** Compares the entries of a list, each with the one that it was. */
export function listChanges(two: TwoDocuments, { before, after }: Two<readonly Listed[]>, list: ListKind): void {
  const shape = { as: 'unit', def: list.def } as const;
  const { pairs, removed, added } = matchSequence(before, after, {
    identity: (one) => list.identity(one) ?? meaningOf(one.node, shape),
    likeness: (a, b) => wordLikeness(meaningOf(a.node, shape), meaningOf(b.node, shape)),
    least: 0.5,
  });
  for (const pair of pairs) {
    objectChanges(two, { before: pair.before, after: pair.after } as Values, {
      def: list.def,
      keys: UNIT_SHAPES[list.def]?.shape.keys ?? {},
      of: subjectOf(pair.after, list),
      within: { before: undefined, after: undefined },
    });
  }
  for (const one of removed)
    two.tell({ class: list.removed(one), kind: 'removed', of: subjectOf(one, list) }, one.node, undefined);
  for (const one of added)
    two.tell({ class: list.added(one), kind: 'added', of: subjectOf(one, list) }, undefined, one.node);
}

function subjectOf(one: Listed, { kind }: ListKind): Subject {
  const id = text(one, 'item') || text(one, 'revision') || text(one, 'rule');
  const name = text(one, 'part') || text(one, 'what') || text(one, 'say') || text(one, 'because') || id;
  return { kind, id, name, step: kind === 'concession' ? text(one, 'at') || undefined : undefined };
}
