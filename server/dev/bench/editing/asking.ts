import { LineIndex } from '../../../src/core/text/lineIndex';
import { uriOfPath } from '../../../src/node/nodeFiles';
import { withManyProcedures } from '../manyFiles';
import { procedureOf, SAMPLE_URI } from '../procedures';
import { at } from './latency';
import { seededRandom } from './seededRandom';
import { startOurs, startPeer } from './servers';

/** From the start of the process to the answer to `initialize`. */
export async function startTimes(): Promise<void> {
  const times: [number[], number[]] = [[], []];
  for (let i = 0; i < 7; i++) {
    for (const [which, start] of [startOurs, startPeer].entries()) {
      const server = await start();
      times[which === 0 ? 0 : 1].push(server.startMs);
      await server.stop();
    }
  }
  const [ours, peer] = [at(times[0], 0.5), at(times[1], 0.5)];
  console.log(
    `\nstart to the answer to initialize: ${ours.toFixed(0)} ms, peer ${peer.toFixed(0)} ms, ratio ${(ours / peer).toFixed(2)} (aim 0.6)`,
  );
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
