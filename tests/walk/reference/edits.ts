import fc from 'fast-check';
import { type Planned, type PlannedStep, planned } from './planned';

/** One change that a writer makes; places are numbers of instructions, taken modulo how many there are. */
export interface Edit {
  readonly kind: 'delete' | 'repeat' | 'move';
  readonly from: number;
  readonly to: number;
}

export const edits: fc.Arbitrary<Edit[]> = fc.array(
  fc.record({ kind: fc.constantFrom('delete', 'repeat', 'move'), from: fc.nat(997), to: fc.nat(997) }),
  { minLength: 1, maxLength: 4 },
);

/** The steps after an edit. No step is left empty, so that nothing that names it loses it. */
export function edited(steps: readonly PlannedStep[], { kind, from, to }: Edit): PlannedStep[] {
  const places = steps.flatMap((step, index) => step.do.map((one) => ({ one, index })));
  const source = places[from % places.length];
  const target = places[to % places.length];
  if (source === undefined || target === undefined) return [...steps];
  const copy: Planned = { ...source.one };
  return steps.map((step, index) => {
    const work = step.do.flatMap((one) => {
      const isTarget = kind !== 'delete' && index === target.index && one === target.one;
      const isGone = kind !== 'repeat' && index === source.index && one === source.one;
      return [...(isTarget ? [copy] : []), ...(isGone ? [] : [one])];
    });
    return { ...step, do: work.length === 0 ? [planned('say', 'Nothing.')] : work };
  });
}
