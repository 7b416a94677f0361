import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { forksOf } from './reference/forks';
import { walkWorld } from './reference/referenceWalker';
import { describeWorld, drawFrom, someWorlds } from './reference/world';

const ROOT = resolve('sample-procedures');
const SAMPLES = ['v4-major.procedure.yaml', 'v4-wheel-44.procedure.yaml', 'h9-rebuild.procedure.yaml'];
const SEED = 1;

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
    const { instruction, failures } = walkWorld(procedure, world);
    const span = instruction === 'end' ? undefined : procedure.document.spanOf(instruction.node);
    const at = span === undefined ? 'end' : procedure.document.text.slice(span.start, span.end).split('\n')[0];
    expect({ at, failures, world: describeWorld(world) }).toEqual({ at, failures: [], world: describeWorld(world) });
  }
});
