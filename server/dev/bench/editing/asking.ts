import { LineIndex } from '../../../src/core/text/lineIndex';
import { uriOfPath } from '../../../src/node/nodeFiles';
import { withManyProcedures } from '../manyFiles';
import { procedureOf, SAMPLE_URI } from '../procedures';
import { at } from './latency';
import { seededRandom } from './seededRandom';
import { startOurs, startPeer } from './servers';

/** From the start of the process to the answer to `initialize`, and to the findings of a document opened then. */
export async function startTimes(): Promise<void> {
  const text = procedureOf(60);
  const answers: [number[], number[]] = [[], []];
  const findings: [number[], number[]] = [[], []];
  for (let i = 0; i < 7; i++) {
    for (const which of [0, 1] as const) {
      const before = performance.now();
      const server = await (which === 0 ? startOurs : startPeer)();
      answers[which].push(server.startMs);
      await server.open(SAMPLE_URI, text);
      findings[which].push(performance.now() - before);
      await server.stop();
    }
  }
  console.log(`\nstart to the answer to initialize: ${besidePeer(answers)} (aim 0.6)`);
  console.log(`start to the findings of a document of 60 steps: ${besidePeer(findings)}`);
}

function besidePeer([ours, peer]: readonly [readonly number[], readonly number[]]): string {
  const [mine, theirs] = [at(ours, 0.5), at(peer, 0.5)];
  return `${mine.toFixed(0)} ms, peer ${theirs.toFixed(0)} ms, ratio ${(mine / theirs).toFixed(2)}`;
}

/** Completion and hover at places all over a long document, a key pressed before each. */
export async function askingTimes(): Promise<void> {
  const server = await startOurs();
  const text = procedureOf(2000);
  await server.open(SAMPLE_URI, text);
  const lines = new LineIndex(text);
  const random = seededRandom(7);
  const values = [...text.matchAll(/^ +(?:- )?(?:tighten|torque|install|remove|with|measure): (?=\S)/gm)];
  for (const method of ['textDocument/completion', 'textDocument/hover']) {
    const times: number[] = [];
    for (let i = 0; i < 60; i++) {
      const match = values[Math.floor(random() * values.length)];
      if (match === undefined) continue;
      const position = lines.position(match.index + match[0].length);
      const before = performance.now();
      await server.request(method, { textDocument: { uri: SAMPLE_URI }, position, context: { triggerKind: 1 } });
      if (i >= 10) times.push(performance.now() - before);
    }
    const figures = [at(times, 0.5), at(times, 0.95)].map((ms) => ms.toFixed(1)).join('/');
    console.log(`${method}, 2000 steps: p50/p95 ${figures} ms (aim 30)`);
  }
  await server.stop();
}

/** Memory of the server once a folder of so many procedures has been checked. */
export async function folderMemory(count: number): Promise<void> {
  await withManyProcedures(count, (folder) => memoryOf(folder, count));
}

async function memoryOf(folder: string, count: number): Promise<void> {
  const server = await startOurs(uriOfPath(folder));
  const empty = server.memory();
  await server.scanned;
  const after = server.memory();
  if (empty === undefined || after === undefined) console.log('memory is not told on this platform');
  else
    console.log(
      `memory after a folder of ${count} procedures: ${after.toFixed(0)} MB, empty ${empty.toFixed(0)} MB (aim 200)`,
    );
  await server.stop();
}
