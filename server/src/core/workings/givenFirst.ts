import type { CalculationStep } from '../standards/calculation';
import { isGiven, symbolsIn } from './formulaText';

/**
 * The steps of a calculation with what is given before what is worked out, as on paper. Where a symbol gets another value,
 * a new pass begins, with what is given for it first; nothing comes out differently.
 */
export function givenFirst(steps: readonly CalculationStep[]): CalculationStep[] {
  return passesOf(steps).flatMap((pass) => [...pass.filter(isGiven), ...pass.filter((step) => !isGiven(step))]);
}

function passesOf(steps: readonly CalculationStep[]): CalculationStep[][] {
  const passes: CalculationStep[][] = [[]];
  for (const step of steps) {
    const pass = passes.at(-1) ?? [];
    const isNew = isGiven(step) && pass.some((one) => !isGiven(one)) && pass.some((one) => concerns(one, step.symbol));
    if (isNew) passes.push([step]);
    else pass.push(step);
  }
  return passes;
}

/** Whether a step gives or uses a symbol; the sign of a term is not part of it. */
function concerns(step: CalculationStep, symbol: string): boolean {
  const bare = (one: string) => one.replace(/^[+−]/, '');
  return bare(step.symbol) === bare(symbol) || (!isGiven(step) && symbolsIn(step.formula).includes(bare(symbol)));
}
