import fc from 'fast-check';
import { test } from 'vitest';
import { disagreement } from './reference/agreement';
import { HOLDING } from './reference/breakers';
import { PREPARING } from './reference/breakersOfBenchWork';
import { PROVING } from './reference/breakersOfProof';
import { edited, edits } from './reference/edits';
import { forksOf } from './reference/forks';
import { caseOf, type DrawnCase, openCase } from './reference/generate';
import { plans } from './reference/plan';
import { type PlannedStep, writeProcedure } from './reference/planned';
import { drawFrom, someWorlds } from './reference/world';

const SEED = Number(process.env.WITNESSMARK_SEED ?? Math.floor(Math.random() * 2 ** 31));
const RUNS = Number(process.env.WITNESSMARK_RUNS ?? 60);

console.info(`agreement of the walks: seed ${SEED}`);

test(`the fast walk finds in a right procedure what the reference finds (seed ${SEED})`, () => {
  const property = fc.property(plans, fc.nat(), (plan, seed) => {
    const drawn = caseOf(plan);
    agree(drawn, drawn.steps, seed);
  });
  fc.assert(property, { seed: SEED, numRuns: RUNS });
});

test(`the fast walk finds after each edit what the reference finds (seed ${SEED})`, () => {
  const property = fc.property(plans, edits, fc.nat(), (plan, script, seed) => {
    const drawn = caseOf(plan);
    let { steps } = drawn;
    for (const edit of script) {
      steps = edited(steps, edit);
      agree(drawn, steps, seed);
    }
  });
  fc.assert(property, { seed: SEED, numRuns: RUNS });
});

test(`the fast walk finds in each broken procedure what the reference finds (seed ${SEED})`, () => {
  const breakers = fc.constantFrom(...Object.values({ ...HOLDING, ...PREPARING, ...PROVING }));
  const property = fc.property(plans, breakers, fc.nat(), (plan, breaker, seed) => {
    const drawn = caseOf(plan);
    const broken = breaker(drawn);
    if (broken !== undefined) agree(drawn, broken.steps, seed);
  });
  fc.assert(property, { seed: SEED, numRuns: 3 * RUNS });
});

function agree(drawn: DrawnCase, steps: readonly PlannedStep[], seed: number): void {
  const procedure = openCase(drawn, steps);
  for (const world of someWorlds(procedure.space, forksOf(procedure).size, 6, drawFrom(seed))) {
    const apart = disagreement(procedure, world);
    if (apart !== '') throw new Error(`${apart}\n${drawn.family}\n${writeProcedure(drawn.head, steps)}`);
  }
}
