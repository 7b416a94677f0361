import { LineIndex } from '../../../src/core/text/lineIndex';
import { uriOfPath } from '../../../src/node/nodeFiles';
import { withManyProcedures } from '../manyFiles';
import { procedureOf, SAMPLE_URI } from '../procedures';
import { at } from './latency';
import { seededRandom } from './seededRandom';
import { startOurs, startPeer } from './servers';
import type { StdioServer } from './stdioServer';

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

/** Completion and hover at places all over a long document: as it stands, and right behind a key. */
export async function askingTimes(): Promise<void> {
  const server = await startOurs();
  const document = new AskedDocument(server, procedureOf(2000));
  await server.open(SAMPLE_URI, document.text);
  for (const method of ['textDocument/completion', 'textDocument/hover']) {
    for (const [when, before] of [
      ['as it stands', async () => {}],
      // Who asks for a hover has seen the findings come; a completion is asked for while they are worked out.
      ['behind a key', (place: Place) => document.press(place, method === 'textDocument/hover')],
    ] as const) {
      const times = await document.ask(method, before);
      const figures = [at(times, 0.5), at(times, 0.95)].map((ms) => ms.toFixed(1)).join('/');
      console.log(`${method}, 2000 steps, ${when}: p50/p95 ${figures} ms (aim 30)`);
    }
  }
  await server.stop();
}

/** Where a value stands: behind a key, on a line. */
type Place = { readonly line: number; readonly character: number };

/** A document that is asked about at places of its values, chosen at random. */
class AskedDocument {
  readonly #server: StdioServer;
  readonly #places: readonly Place[];
  /** The ends of titles, where a key changes no place of a value. */
  readonly #titles: readonly Place[];
  readonly #random = seededRandom(7);
  #version = 1;

  constructor(
    server: StdioServer,
    readonly text: string,
  ) {
    this.#server = server;
    const lines = new LineIndex(text);
    const endsOf = (pattern: RegExp) =>
      [...text.matchAll(pattern)].map((match) => lines.position(match.index + match[0].length));
    this.#places = endsOf(/^ +(?:- )?(?:tighten|torque|install|remove|with|measure): (?=\S)/gm);
    this.#titles = endsOf(/^ +title: .*$/gm);
  }

  async ask(method: string, before: (place: Place) => Promise<unknown>): Promise<number[]> {
    const times: number[] = [];
    for (let i = 0; i < 60; i++) {
      const position = this.#places[Math.floor(this.#random() * this.#places.length)];
      if (position === undefined) continue;
      await before(position);
      const started = performance.now();
      const textDocument = { uri: SAMPLE_URI };
      await this.#server.request(method, { textDocument, position, context: { triggerKind: 1 } });
      if (i >= 10) times.push(performance.now() - started);
    }
    return times;
  }

  /** A letter at the end of the title above a place. */
  async press({ line }: Place, isFindingAwaited: boolean): Promise<void> {
    const title = this.#titles.findLast((one) => one.line < line);
    if (title === undefined) return;
    this.#version += 1;
    const change = this.#server.change(SAMPLE_URI, this.#version, { start: title, end: title }, { text: 'x' });
    if (isFindingAwaited) await change;
  }
}

/** Memory of the server once a folder of so many procedures has been checked. */
export async function folderMemory(count: number): Promise<void> {
  await withManyProcedures(count, (folder) => memoryOf(folder, count));
}

async function memoryOf(folder: string, count: number): Promise<void> {
  const server = await startOurs(uriOfPath(folder));
  await server.scanned;
  const after = server.memory();
  await server.stop();
  if (after === undefined) return console.log('memory is not told on this platform');
  console.log(`memory after a folder of ${count} procedures: ${after.toFixed(0)} MB (aim 200)`);
}
