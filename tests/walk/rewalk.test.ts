import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { describeBuilds } from '../../server/src/core/builds';
import type { Failure } from '../../server/src/core/walk/failure';
import type { Trace } from '../../server/src/core/walk/trace';
import { walkOf } from '../../server/src/core/walk/walkProcedure';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';

const SAMPLES = ['v4-major', 'v4-wheel-44', 'h9-rebuild'];
const pathOf = (name: string): string => resolve('sample-procedures/procedures', `${name}.procedure.yaml`);
const seed = Number(process.env.WITNESSMARK_SEED ?? 20261125);

async function opened(path: string): Promise<Workspace> {
  const workspace = new Workspace([uriOfPath('sample-procedures')]);
  await workspace.loadLinked(uriOfPath(path), new NodeFiles());
  return workspace;
}

interface Looked {
  readonly trace: Trace;
  readonly shown: readonly string[];
}

/** Walks a text, with everything that a user can see of what fails, and of the unit at the end. */
function walked(workspace: Workspace, uri: string, text: string): Looked {
  workspace.set(uri, { is: 'text', text });
  const document = workspace.snapshot.document(uri);
  const view = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  const trace = view === undefined ? undefined : walkOf(view);
  if (document === undefined || view === undefined || trace === undefined) throw new Error('no walk');
  const builds = (where: Failure['where']): string => describeBuilds(where, view.space, (index) => trace.forks[index]);
  const place = (at: Failure['at']): number => (at === undefined ? -1 : document.spanOf(at).start);
  const failures = trace.failures.map(
    ({ cause, about, other, where, at, because }) =>
      `${place(at)} ${cause} ${about} ${other} (${builds(where)}) since ${because?.what} ${place(because?.at)}`,
  );
  const end = [...trace.end].map(([id, lane]) => `${id}: ${builds(lane.fitted)}, ${builds(lane.torqued)}`);
  return { trace, shown: [...failures, ...end] };
}

/** What a writer does to the lines of a procedure. */
const edit = fc.record({
  kind: fc.constantFrom('delete', 'double', 'move', 'word', 'remark'),
  at: fc.nat(),
  count: fc.integer({ min: 1, max: 5 }),
  to: fc.nat(),
});

type Edit = typeof edit extends fc.Arbitrary<infer T> ? T : never;

function edited(text: string, { kind, at, count, to }: Edit): string {
  const lines = text.split('\n');
  const first = 60 + (at % (lines.length - 60));
  const target = 60 + (to % (lines.length - 60));
  const block = lines.slice(first, first + count);
  if (kind === 'delete') lines.splice(first, count);
  if (kind === 'double') lines.splice(first, 0, ...block);
  if (kind === 'move') lines.splice(target, 0, ...lines.splice(first, count));
  if (kind === 'word') lines[first] = (lines[first] ?? '').replace(/[a-z]+-[a-z]+/, 'cover-ring');
  if (kind === 'remark') lines.splice(first, 0, '# a remark');
  return lines.join('\n');
}

test.each(SAMPLES)(
  `%s: what is taken over from an earlier walk is what a whole walk finds (seed ${seed})`,
  async (name) => {
    const path = pathOf(name);
    const text = readFileSync(path, 'utf8');
    const uri = uriOfPath(path);
    await fc.assert(
      fc.asyncProperty(fc.array(edit, { minLength: 1, maxLength: 4 }), async (edits) => {
        const warm = await opened(path);
        walked(warm, uri, text);
        let now = text;
        for (const one of edits) {
          now = edited(now, one);
          const cold = await opened(path);
          expect(walked(warm, uri, now).shown).toEqual(walked(cold, uri, now).shown);
        }
      }),
      { seed, numRuns: 6 },
    );
  },
);

test('a keystroke carries out again only what reads something that changed', async () => {
  const path = pathOf('v4-major');
  const text = readFileSync(path, 'utf8');
  const uri = uriOfPath(path);
  const workspace = await opened(path);
  const whole = walked(workspace, uri, text).trace.carriedOut;
  const again = (changed: string): number => {
    const { carriedOut } = walked(workspace, uri, changed).trace;
    walked(workspace, uri, text);
    return carriedOut;
  };
  expect(whole).toBeGreaterThan(150);
  expect(again(text.replace('text: Record the unit', 'text: Note the unit'))).toBe(0);
  expect(again(text.replace('- remove: rod-clip', '- remove: rod-clip # with pliers'))).toBeLessThan(2);
  expect(again(text.replace('- remove: cover-seal', '- say: Leave the seal'))).toBeLessThan(whole / 10);
});
