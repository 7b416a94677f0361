import { objectIds } from '../../analysis/instructions';
import type { ProcedureView, StepView } from '../../analysis/procedureView';

/** A place for a new step: beside a step, in a phase that has none yet, or in a new phase beside another. */
export interface StepPlace {
  readonly is: 'beside-step' | 'in-phase' | 'new-phase';
  readonly side: 'before' | 'behind';
  /** Number of the step beside it; of the phase for the others. */
  readonly index: number;
  /** The step before which the unit stands as it does there, by number; the number of steps at the end. */
  readonly stands: number;
}

/** A check of the whole text stands behind each place that is tried. */
const MOST = 7;

/**
 * Where the step that fits again what a step took off may go, the likeliest first: behind what came off after it and is
 * fitted, before what came off before it, else at the end of the assembly.
 */
export function reversePlaces(procedure: ProcedureView, stripped: StepView): StepPlace[] {
  const { steps } = procedure;
  const from = steps.indexOf(stripped);
  const cameOff = orderOff(steps);
  const assembling = [...steps.keys()].filter((i) => i > from && fittedIn(procedure, steps[i]).length > 0);
  const [first, last] = [assembling[0], assembling.at(-1)];
  if (first === undefined || last === undefined) return withoutAssembly(procedure, stripped);
  const fits = (i: number, wanted: (order: number) => boolean): boolean =>
    fittedIn(procedure, steps[i]).some((id) => wanted(orderOf(procedure, cameOff, id) ?? from));
  const behind = assembling.findLast((i) => fits(i, (order) => order > from));
  const before = assembling.find((i) => fits(i, (order) => order < from));
  const places = [
    ...(behind === undefined ? [] : [beside(behind, 'behind')]),
    ...(before === undefined ? [] : [beside(before, 'before')]),
    beside(last, 'behind'),
    beside(first, 'before'),
    ...assembling.toReversed().map((i) => beside(i, 'before')),
  ];
  return distinct(places).slice(0, MOST);
}

function beside(index: number, side: StepPlace['side']): StepPlace {
  return { is: 'beside-step', side, index, stands: side === 'before' ? index : index + 1 };
}

function distinct(places: readonly StepPlace[]): StepPlace[] {
  return [...new Map(places.map((place) => [place.stands, place])).values()];
}

/** A phase that waits for its steps, else a new one before the last phase or at the end. */
function withoutAssembly({ steps, phases }: ProcedureView, stripped: StepView): StepPlace[] {
  const own = phases.findIndex(({ head }) => head === stripped.phase);
  const standing = (phase: number): number => phases.slice(0, phase).reduce((sum, one) => sum + one.steps.length, 0);
  const empty = phases.findIndex((phase, i) => i > own && phase.steps.length === 0);
  if (empty >= 0) return [{ is: 'in-phase', side: 'behind', index: empty, stands: standing(empty) }];
  const last = phases.length - 1;
  const atEnd: StepPlace = { is: 'new-phase', side: 'behind', index: last, stands: steps.length };
  return last <= own ? [atEnd] : [atEnd, { is: 'new-phase', side: 'before', index: last, stands: standing(last) }];
}

/** In which step each part came off first: later it may come off again after a trial. */
function orderOff(steps: readonly StepView[]): Map<string, number> {
  const order = new Map<string, number>();
  steps.forEach(({ instructions }, i) => {
    for (const { instruction, nested } of instructions)
      if (!nested && instruction.verb === 'remove')
        for (const id of objectIds(instruction)) if (!order.has(id)) order.set(id, i);
  });
  return order;
}

/** A part that takes the place of another counts as that one, which came off. */
function orderOf({ family }: ProcedureView, cameOff: ReadonlyMap<string, number>, id: string): number | undefined {
  const replaced = (family?.part(id)?.insteadOf ?? []).flatMap((one) => cameOff.get(one.id) ?? []);
  return cameOff.get(id) ?? replaced[0];
}

/** The parts that a step fits for good. */
function fittedIn({ family }: ProcedureView, step: StepView | undefined): string[] {
  return (step?.instructions ?? []).flatMap(({ instruction, nested }) => {
    const fits = instruction.verb === 'install' || instruction.verb === 'press';
    const ids = nested || !fits ? [] : objectIds(instruction);
    return ids.filter((id) => family?.part(id)?.temporary?.value !== true);
  });
}
