import { UNIT_SHAPES } from '../model/generated/shapes';
import type { Instruction } from '../model/generated/types';
import { instructionDef } from '../model/instructionDef';
import type { Ref } from '../model/values';
import type { ChangeClass, Subject } from './change';
import { matchSequence, movedPairs, wordLikeness } from './matchSequence';
import { meaningOf, wordsOf } from './meaning';
import { objectChanges } from './objectChanges';
import { orderWeight, type Reordered } from './reordered';
import type { Values } from './slot';
import type { Two, TwoDocuments, TwoSets } from './twoSides';

/** Where instructions stand. */
export interface InstructionPlace {
  readonly step: string | undefined;
  readonly within: TwoSets;
  /** What the name of a part, tool or limit is, by its id. */
  readonly nameOf: (id: string) => string;
  readonly reordered: Reordered;
}

const INSTRUCTION = { as: 'instruction' } as const;

/** Compares the instructions of a step, or those that are carried out when a result is not right. */
export function instructionChanges(
  two: TwoDocuments,
  { before, after }: Two<readonly Instruction[]>,
  place: InstructionPlace,
): void {
  const { pairs, removed, added } = matchSequence(before, after, {
    identity: (one) => meaningOf(one.node, INSTRUCTION, two.renamed),
    likeness: (a, b) => likeness(a, b, two),
    least: 0.35,
  });
  for (const pair of pairs) comparePair(two, pair, place);
  for (const one of removed)
    two.tell({ class: goneClass(one), kind: 'removed', of: subjectOf(one, place) }, one.node, undefined);
  for (const one of added) two.tell({ class: 'fits', kind: 'added', of: subjectOf(one, place) }, undefined, one.node);
  const weight = ({ before: one }: { before: Instruction }) => orderWeight(meaningOf(one.node, INSTRUCTION));
  for (const pair of movedPairs(pairs, weight)) {
    const passed = pairs.filter((other) => pair.from < other.from !== pair.to < other.to).map((other) => other.before);
    const told = place.reordered([pair.before], passed);
    two.tell({ ...told, kind: 'moved', of: subjectOf(pair.after, place) }, pair.before.node, pair.after.node);
  }
}

function comparePair(two: TwoDocuments, { before, after }: Two<Instruction>, place: InstructionPlace): void {
  if (
    before.node.item.text === after.node.item.text &&
    before.node.from === after.node.from &&
    before.node.to === after.node.to
  )
    return;
  const def = instructionDef(after.node);
  const shape = UNIT_SHAPES[def]?.shape;
  if (shape === undefined) return;
  objectChanges(two, { before, after } as unknown as Values, {
    def,
    keys: shape.keys,
    of: subjectOf(after, place),
    within: place.within,
    instructions: (inner) => instructionChanges(two, inner as Two<readonly Instruction[]>, place),
  });
}

/** An instruction is the same one where the verb is, and most of what it is done to. */
function likeness(a: Instruction, b: Instruction, two: TwoDocuments): number {
  if (a.verb !== b.verb) return 0;
  const [first, second] = [idsOf(a).map(two.renamed), idsOf(b)];
  const words = wordLikeness(meaningOf(a.node, INSTRUCTION, two.renamed), meaningOf(b.node, INSTRUCTION));
  if (first.length + second.length === 0) return words >= 0.4 ? words : 0;
  const shared = first.filter((id) => second.includes(id)).length;
  if (shared === 0) return 0;
  return 0.5 + 0.25 * ((2 * shared) / (first.length + second.length)) + 0.25 * words;
}

/** The ids that stand under the verb itself. */
export function idsOf(instruction: Instruction): string[] {
  const value = (instruction as unknown as Record<string, unknown>)[instruction.verb];
  const refs = Array.isArray(value) ? value : value === undefined ? [] : [value];
  return refs.flatMap((one) => idOf(one) ?? []);
}

function idOf(one: unknown): string | undefined {
  if (typeof one !== 'object' || one === null) return undefined;
  if ('id' in one) return (one as Ref).id;
  return 'ref' in one ? (one as { ref: Ref }).ref.id : undefined;
}

/** What is only written down or said can be left out without anything being left undone. */
function goneClass({ verb }: Instruction): ChangeClass {
  return verb === 'record' || verb === 'say' ? 'fits' : 'hurt';
}

function subjectOf(one: Instruction, { step, nameOf }: InstructionPlace): Subject {
  const ids = idsOf(one);
  const words = ids.length === 0 ? wordsOfSentence(one) : `${one.verb} ${ids.map(nameOf).join(', ')}`;
  return { kind: 'instruction', id: ids.join(','), name: words.length > 60 ? `${words.slice(0, 59)}…` : words, step };
}

/** What has no thing to name is called by its own words. */
function wordsOfSentence(one: Instruction): string {
  const own = (one as unknown as Record<string, { text?: string } | undefined>)[one.verb];
  return own?.text === undefined ? meaningOf(one.node, INSTRUCTION) : `“${wordsOf(own.text)}”`;
}
