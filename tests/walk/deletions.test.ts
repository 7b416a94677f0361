import { join, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { walkOf } from '../../server/src/core/walk/walkProcedure';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';

const ROOT = resolve('sample-procedures');

async function opened(name: string): Promise<{ workspace: Workspace; uri: string; procedure: ProcedureView }> {
  const workspace = new Workspace([uriOfPath(ROOT)]);
  const uri = uriOfPath(join(ROOT, 'procedures', name));
  await workspace.loadLinked(uri, new NodeFiles());
  const document = workspace.snapshot.document(uri);
  const procedure = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new Error(`${name} cannot be read`);
  return { workspace, uri, procedure };
}

/** Verbs whose every instruction in the samples is needed, so that leaving one out must show. */
const NEEDED = new Set(['remove', 'install', 'press', 'seat', 'align', 'balance', 'identify', 'receive', 'cool']);
const SAMPLES = ['v4-major.procedure.yaml', 'v4-wheel-44.procedure.yaml', 'h9-rebuild.procedure.yaml'];

test.each(SAMPLES)('%s can be carried out as it is written', async (name) => {
  const { procedure } = await opened(name);
  expect(walkOf(procedure)?.failures).toEqual([]);
});

test.each(SAMPLES)('%s: an instruction that is left out shows, and does not flood', async (name) => {
  const { workspace, uri, procedure } = await opened(name);
  const unseen: string[] = [];
  const floods: string[] = [];
  for (const { instructions } of procedure.steps) {
    for (const { instruction, nested } of instructions) {
      if (nested || !NEEDED.has(instruction.verb)) continue;
      const { start, end } = procedure.document.spanOf(instruction.node);
      const { text } = procedure.document;
      workspace.set(uri, { is: 'text', text: `${text.slice(0, start)}{ say: nothing }${text.slice(end)}` });
      const document = workspace.snapshot.document(uri);
      const without = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
      const failures = without === undefined ? [] : (walkOf(without)?.failures ?? []);
      const line = text.slice(start, end).split('\n')[0] ?? '';
      if (failures.length === 0) unseen.push(line);
      if (failures.length > 3) floods.push(`${line}: ${failures.map((one) => one.cause).join(', ')}`);
    }
  }
  expect(unseen).toEqual([]);
  expect(floods).toEqual([]);
});
