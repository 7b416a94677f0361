import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { told } from './reference/agreement';
import { type Broken, HOLDING } from './reference/breakers';
import { PREPARING } from './reference/breakersOfBenchWork';
import { PROVING } from './reference/breakersOfProof';
import { instructionsOf } from './reference/fastWalk';
import { forksOf } from './reference/forks';
import { caseOf, type DrawnCase, openCase, readingProblems } from './reference/generate';
import { plans } from './reference/plan';
import { flatPlanned, writeProcedure } from './reference/planned';
import { walkWorld } from './reference/referenceWalker';
import { describeWorld, drawFrom, someWorlds } from './reference/world';

const ROOT = resolve('sample-procedures');
const SAMPLES = ['v4-major.procedure.yaml', 'v4-wheel-44.procedure.yaml', 'h9-rebuild.procedure.yaml'];
const SEED = Number(process.env.WITNESSMARK_SEED ?? Math.floor(Math.random() * 2 ** 31));
const RUNS = Number(process.env.WITNESSMARK_RUNS ?? 80);

console.info(`reference walk: seed ${SEED}`);

async function opened(name: string): Promise<ProcedureView> {
  const workspace = new Workspace([uriOfPath(ROOT)]);
  const uri = uriOfPath(join(ROOT, 'procedures', name));
  await workspace.loadLinked(uri, new NodeFiles());
  const document = workspace.snapshot.document(uri);
  const procedure = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new Error(`${name} cannot be read`);
  return procedure;
}

test.each(SAMPLES)(`%s can be carried out in every world that is tried (seed ${SEED})`, async (name) => {
  const procedure = await opened(name);
  const worlds = someWorlds(procedure.space, forksOf(procedure).size, 25, drawFrom(SEED));
  for (const world of worlds) {
    expect(`${describeWorld(world)}: ${told(procedure, walkWorld(procedure, world))}`).toBe(
      `${describeWorld(world)}: nothing`,
    );
  }
});

test(`${RUNS} drawn procedures can be carried out (seed ${SEED})`, () => {
  fc.assert(
    fc.property(plans, fc.nat(), (plan, seed) => {
      const drawn = caseOf(plan);
      const procedure = openCase(drawn);
      expect(readingProblems(procedure)).toEqual([]);
      for (const world of someWorlds(procedure.space, forksOf(procedure).size, 6, drawFrom(seed))) {
        const failed = told(procedure, walkWorld(procedure, world));
        if (failed !== 'nothing')
          throw new Error(
            `${describeWorld(world)}: ${failed}\n${drawn.family}\n${writeProcedure(drawn.head, drawn.steps)}`,
          );
      }
    }),
    { seed: SEED, numRuns: RUNS },
  );
});

const BREAKERS = Object.entries({ ...HOLDING, ...PREPARING, ...PROVING });
const SHOWN = Number(process.env.WITNESSMARK_SHOWN ?? 2);
const DRAWN = fc.sample(fc.tuple(plans, fc.nat()), { seed: SEED, numRuns: 3000 });

test.each(BREAKERS)(`%s: the reference says so (seed ${SEED})`, (_name, breaker) => {
  let shown = 0;
  for (const [plan, seed] of DRAWN) {
    const broken = breaker(caseOf(plan));
    if (broken === undefined) continue;
    if (showsIn(caseOf(plan), broken, seed)) shown += 1;
    if (shown === SHOWN) return;
  }
  expect(shown).toBe(SHOWN);
});

/** Whether a mistake shows in a world; throws where it shows in another way than it must. */
function showsIn(drawn: DrawnCase, { steps, at, cause, about, shows }: Broken, seed: number): boolean {
  const procedure = openCase(drawn, steps);
  let shown = false;
  for (const world of someWorlds(procedure.space, forksOf(procedure).size, 4, drawFrom(seed))) {
    const { instruction, failures } = walkWorld(procedure, world);
    if (failures.length === 0 && shows === 'somewhere') continue;
    const place = at === 'end' ? 'end' : instructionsOf(procedure)[flatPlanned(steps).indexOf(at)];
    const isIt = instruction === place && failures.some((one) => one.cause === cause && one.about === about);
    if (!isIt) {
      const said = `${describeWorld(world)}: ${told(procedure, { instruction, failures })}, not ${cause} ${about}`;
      throw new Error(`${said}\n${drawn.family}\n${writeProcedure(drawn.head, steps)}`);
    }
    shown = true;
  }
  return shown;
}
