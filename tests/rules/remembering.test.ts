import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { type BuildSpace, buildsOf } from '../../server/src/core/builds';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { type Finding, fullMessage } from '../../server/src/core/rules/finding';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { TODAY } from '../support/checkText';

const PATH = resolve('sample-procedures/faulty/part-not-in-kit.procedure.yaml');
const URI = uriOfPath(PATH);
const TEXT = readFileSync(PATH, 'utf8').replace(
  '        title: ',
  '        title: Look at <end-play> in <fit-nut>, with the soft-face hammer ',
);
const STEP = /(?=^ {6}- step: )/m;
const seed = 20261125;

async function opened(): Promise<Workspace> {
  const workspace = new Workspace([uriOfPath('sample-procedures')]);
  await workspace.loadLinked(URI, new NodeFiles());
  return workspace;
}

/** A finding with everything that a user can see of it, the edits of its fixes included. */
function whole(finding: Finding): unknown {
  const set = finding.where();
  const where = set === undefined ? undefined : buildsOf(set, set.owner as BuildSpace, 20).map((build) => build.id);
  return { ...finding, message: fullMessage(finding), where, fixes: finding.fixes(), working: finding.working() };
}

function findingsAfter(workspace: Workspace, text: string): unknown[] {
  workspace.set(URI, { is: 'text', text });
  const document = workspace.snapshot.document(URI);
  if (document === undefined) throw new Error('no document');
  return checkDocument(workspace.snapshot, document, { today: TODAY }).findings.map(whole);
}

const lines = TEXT.split('\n');
const words = [...new Set(TEXT.match(/[\w<>-]{3,}/g) ?? [])];
const edits = fc.oneof(
  fc.record({
    kind: fc.constant('delete-lines' as const),
    at: fc.nat({ max: lines.length }),
    count: fc.integer({ min: 1, max: 12 }),
  }),
  fc.record({
    kind: fc.constant('insert-line' as const),
    at: fc.nat({ max: lines.length }),
    from: fc.nat({ max: lines.length }),
  }),
  fc.record({
    kind: fc.constant('word' as const),
    at: fc.nat(),
    word: fc.constantFrom(...words, '<cover-nut>', '"', '45', '8 N·m', ''),
  }),
  fc.record({
    kind: fc.constant('move-lines' as const),
    at: fc.nat({ max: lines.length }),
    count: fc.integer({ min: 1, max: 12 }),
    to: fc.nat({ max: lines.length }),
  }),
);

const stepEdits = fc.oneof(
  fc.record({ kind: fc.constant('copy-step' as const), from: fc.nat({ max: 12 }), to: fc.nat({ max: 12 }) }),
  fc.record({
    kind: fc.constant('rename-step' as const),
    at: fc.nat({ max: 12 }),
    id: fc.constantFrom('fit-nut', 'other-step', 'socket-8'),
  }),
);

type Edit = typeof edits extends fc.Arbitrary<infer Value> ? Value : never;
type StepEdit = typeof stepEdits extends fc.Arbitrary<infer Value> ? Value : never;

function withStepEdited(text: string, edit: StepEdit): string {
  const chunks = text.split(STEP);
  const last = chunks.length - 1;
  if (edit.kind === 'copy-step') chunks.splice(1 + (edit.to % last), 0, chunks[1 + (edit.from % last)] ?? '');
  else {
    const at = 1 + (edit.at % last);
    chunks[at] = (chunks[at] ?? '').replace(/- step: \S+/, `- step: ${edit.id}`);
  }
  return chunks.join('');
}

function edited(text: string, edit: Edit | StepEdit): string {
  if (edit.kind === 'copy-step' || edit.kind === 'rename-step')
    return text.split(STEP).length < 2 ? text : withStepEdited(text, edit);
  const all = text.split('\n');
  if (edit.kind === 'delete-lines') all.splice(edit.at, edit.count);
  else if (edit.kind === 'insert-line') all.splice(edit.at, 0, lines[edit.from] ?? '');
  else if (edit.kind === 'move-lines') all.splice(edit.to, 0, ...all.splice(edit.at, edit.count));
  else {
    const places = [...text.matchAll(/[\w<>-]{3,}/g)];
    const place = places[edit.at % Math.max(1, places.length)];
    if (place === undefined) return text;
    return text.slice(0, place.index) + edit.word + text.slice(place.index + place[0].length);
  }
  return all.join('\n');
}

test('what is remembered of a step never changes what is found', async () => {
  const warm = await opened();
  await fc.assert(
    fc.asyncProperty(fc.array(fc.oneof(edits, stepEdits), { minLength: 1, maxLength: 4 }), async (sequence) => {
      let text = TEXT;
      findingsAfter(warm, text);
      for (const edit of sequence) {
        text = edited(text, edit);
        expect(findingsAfter(warm, text)).toEqual(findingsAfter(await opened(), text));
      }
    }),
    { seed, numRuns: 70, verbose: true },
  );
  // The fixes of what the walk finds are proved by walking, thousands of times here.
}, 120_000);

test('a step that is moved is shown where it now stands', async () => {
  const workspace = await opened();
  const before = findingsAfter(workspace, TEXT) as Finding[];
  const after = findingsAfter(workspace, `# one more line\n${TEXT}`) as Finding[];
  const shift = '# one more line\n'.length;
  expect(after.map((finding) => finding.span.start)).toEqual(before.map((finding) => finding.span.start + shift));
});
