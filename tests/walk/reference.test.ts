import { join, resolve } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { forksOf } from './reference/forks';
import { caseOf, openCase, readingProblems } from './reference/generate';
import { plans } from './reference/plan';
import { writeProcedure } from './reference/planned';
import { type FirstFailure, walkWorld } from './reference/referenceWalker';
import { describeWorld, drawFrom, someWorlds, type World } from './reference/world';

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
  for (const world of worlds) expect(told(procedure, walkWorld(procedure, world), world)).toBe('');
});

test(`${RUNS} drawn procedures can be carried out (seed ${SEED})`, () => {
  fc.assert(
    fc.property(plans, fc.nat(), (plan, seed) => {
      const drawn = caseOf(plan);
      const procedure = openCase(drawn);
      expect(readingProblems(procedure)).toEqual([]);
      for (const world of someWorlds(procedure.space, forksOf(procedure).size, 6, drawFrom(seed))) {
        const failed = told(procedure, walkWorld(procedure, world), world);
        if (failed !== '') throw new Error(`${failed}\n${drawn.family}\n${writeProcedure(drawn.head, drawn.steps)}`);
      }
    }),
    { seed: SEED, numRuns: RUNS },
  );
});

/** A failure in words; empty where nothing fails. */
function told(procedure: ProcedureView, { instruction, failures }: FirstFailure, world: World): string {
  if (failures.length === 0) return '';
  const span = instruction === 'end' ? undefined : procedure.document.spanOf(instruction.node);
  const at = span === undefined ? 'the end' : procedure.document.text.slice(span.start, span.end).split('\n')[0];
  const what = failures.map(({ cause, about, other }) => `${cause} ${about} ${other ?? ''}`.trim()).join('; ');
  return `${describeWorld(world)}: ${at}: ${what}`;
}
