import { type Instruction, ifNotValue } from './instructionKeys';
import type { PlannedStep } from './plannedSteps';

/** More rows than this would fill a page; whoever goes back more often takes another sheet. */
const MOST_ROUNDS = 8;
/** How often the work goes back where nobody states it: the way back is there, so it is gone at least once. */
const BACK_AT_LEAST = 1;

/**
 * How often each instruction may come up: once more than the work goes back over it. Instructions that come up once are
 * not in it.
 */
export function roundsOf(
  steps: readonly PlannedStep[],
  goingBack: readonly PlannedStep[],
): ReadonlyMap<Instruction, number> {
  const rounds = new Map<Instruction, number>();
  if (goingBack.length === 0) return rounds;
  const places = new Map(steps.map((step, place) => [step.id, place]));
  for (const step of goingBack) {
    const place = step.number - 1;
    const instructions = instructionsOf(step);
    for (const [last, instruction] of instructions.entries()) {
      const { goTo, atMost } = ifNotValue(instruction) ?? {};
      const from = goTo === undefined ? undefined : places.get(goTo.id);
      if (from === undefined || from > place) continue;
      const times = Math.min(MOST_ROUNDS, 1 + (atMost?.value ?? BACK_AT_LEAST));
      const again = [...steps.slice(from, place).flatMap(instructionsOf), ...instructions.slice(0, last + 1)];
      for (const one of again) rounds.set(one, Math.max(times, rounds.get(one) ?? 1));
    }
  }
  return rounds;
}

function instructionsOf({ here }: PlannedStep): readonly Instruction[] {
  return here.view.step.do ?? [];
}
