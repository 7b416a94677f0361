import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { ProcedureView } from '../../server/src/core/analysis/procedureView';
import type { Failure } from '../../server/src/core/walk/failure';
import { walkOf } from '../../server/src/core/walk/walkProcedure';
import { type Broken, HOLDING } from './reference/breakers';
import { PREPARING } from './reference/breakersOfBenchWork';
import { PROVING } from './reference/breakersOfProof';
import { instructionsOf } from './reference/fastWalk';
import { caseOf, openCase } from './reference/generate';
import { plans } from './reference/plan';
import { flatPlanned, writeProcedure } from './reference/planned';

const SEED = Number(process.env.WITNESSMARK_SEED ?? Math.floor(Math.random() * 2 ** 31));
/** How many random procedures each mistake is tried on. */
const CASES = Number(process.env.WITNESSMARK_RUNS ?? 150);
const BREAKERS = Object.entries({ ...HOLDING, ...PREPARING, ...PROVING });
const DRAWN = fc.sample(plans, { seed: SEED, numRuns: CASES });

console.info(`broken procedures: seed ${SEED}`);

/** One kind of finding for one mistake, and at most one other: what the mistake really leads to. */
test.each(BREAKERS)(`%s: told at its place, with at most one other (seed ${SEED})`, (_name, breaker) => {
  for (const plan of DRAWN) {
    const drawn = caseOf(plan);
    const broken = breaker(drawn);
    if (broken === undefined) continue;
    const procedure = openCase(drawn, broken.steps);
    const failures = walkOf(procedure)?.failures ?? [];
    if (failures.length === 0 && broken.shows === 'somewhere') continue;
    const isTold = failures.some((failure) => isIt(procedure, broken, failure));
    const said = failures.map(({ cause, about, other }) => `${cause} ${about} ${other ?? ''}`);
    const shown = `not ${broken.cause} ${broken.about}: ${said.join('; ')}\n${drawn.family}\n${writeProcedure(drawn.head, broken.steps)}`;
    if (!isTold || new Set(failures.map(kindOf)).size > 2) throw new Error(shown);
  }
  expect(DRAWN).toHaveLength(CASES);
});

/** Several results that one touch makes worthless, or several fasteners of one rotor, are one kind of finding. */
function kindOf({ cause }: Failure): string {
  return ['result-void', 'check-missing', 'balance-missing'].includes(cause) ? 'result' : cause;
}

function isIt(procedure: ProcedureView, { steps, at, cause, about }: Broken, failure: Failure): boolean {
  if (failure.cause !== cause || failure.about !== about) return false;
  if (at === 'end' || failure.at === undefined) return at === 'end' && failure.at === undefined;
  const node = instructionsOf(procedure)[flatPlanned(steps).indexOf(at)]?.node;
  if (node === undefined) return false;
  const [around, place] = [procedure.document.spanOf(node), procedure.document.spanOf(failure.at)];
  return around.start <= place.start && place.end <= around.end;
}
