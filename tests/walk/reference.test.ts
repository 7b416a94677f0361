import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { told } from './reference/agreement';
import { forksOf } from './reference/forks';
import { caseOf, openCase, readingProblems } from './reference/generate';
import { plans } from './reference/plan';
import { writeProcedure } from './reference/planned';
import { walkWorld } from './reference/referenceWalker';
import { describeWorld, drawFrom, someWorlds } from './reference/world';

const ROOT = resolve('sample-procedures');
const SAMPLES = ['v4-major.procedure.yaml', 'v4-wheel-44.procedure.yaml', 'h9-rebuild.procedure.yaml'];
const SEED = Number(process.env.WITNESSMARK_SEED ?? Math.floor(Math.random() * 2 ** 31));
const RUNS = Number(process.env.WITNESSMARK_RUNS ?? 200);

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
  const worlds = someWorlds(procedure.space, forksOf(procedure).size, 60, drawFrom(SEED));
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
