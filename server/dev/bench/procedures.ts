import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { LineCounter, parseDocument } from 'yaml';
import { Workspace } from '../../src/core/analysis/workspace';
import { checkDocument } from '../../src/core/rules/checkDocument';
import { readDocument } from '../../src/core/syntax/readDocument';
import { ReadingMemo } from '../../src/core/syntax/readingMemo';
import { NodeFiles, uriOfPath } from '../../src/node/nodeFiles';
import { cpuPair, line } from './measure';

export const TODAY = '2026-11-01';
const SAMPLE = resolve('sample-procedures/procedures/v4-major.procedure.yaml');
export const SAMPLE_URI = uriOfPath(SAMPLE);

/** A procedure of as many steps, made of the sample's steps over and over with ids of their own. */
export function procedureOf(steps: number): string {
  const text = readFileSync(SAMPLE, 'utf8');
  const chunks = text.split(/(?=^ {6}- step: )/m);
  const head = chunks[0] ?? '';
  const bodies = chunks.slice(1).map((chunk) => chunk.split(/^(?! {6})\S?|^ {2}- phase:/m)[0] ?? chunk);
  const places = new Map(bodies.map((body, place) => [/- step: (\S+)/.exec(body)?.[1] ?? '', place]));
  const body = Array.from({ length: steps }, (_, i) => numbered(bodies[i % bodies.length] ?? '', i, places));
  return head + body.join('');
}

/** Each step has an id of its own, and what sends the fitter back sends them to the step of the same round. */
function numbered(step: string, number: number, places: ReadonlyMap<string, number>): string {
  const round = number - (number % places.size);
  return step
    .replace(/title: (.*\S)/, `title: $1 -n${number}`)
    .replace(/- step: (\S+)/, `- step: $1-n${number}`)
    .replace(/go-to: ([a-z0-9-]+)/, (_, id: string) => `go-to: ${id}-n${round + (places.get(id) ?? 0)}`);
}

/** A workspace that holds the family, kits and stores of the sample. */
export async function workspaceOfSample(): Promise<Workspace> {
  const workspace = new Workspace([uriOfPath('sample-procedures')]);
  await workspace.loadLinked(SAMPLE_URI, new NodeFiles());
  return workspace;
}

export function bareParse(text: string): void {
  parseDocument(text, { lineCounter: new LineCounter() });
}

export async function oneProcedure(): Promise<void> {
  const workspace = await workspaceOfSample();
  const text = procedureOf(60);
  const check = (): void => {
    const document = readDocument(SAMPLE_URI, 'procedure', text, new ReadingMemo());
    checkDocument(workspace.snapshot, document, { today: TODAY });
  };
  const { ms, peerMs } = cpuPair(check, () => bareParse(text), 60, 40);
  line(`check one procedure of 60 steps (${(text.length / 1000).toFixed(0)} kB)`, ms, peerMs);
}

/** Different texts, so that nothing is remembered from one to the next. */
export async function manyProcedures(count: number): Promise<void> {
  const workspace = await workspaceOfSample();
  const base = procedureOf(60);
  const texts = Array.from({ length: count }, (_, i) => base.replaceAll(/-n(\d+)/g, `-k${i}n$1`));
  const check = (text: string): void => {
    const document = readDocument(SAMPLE_URI, 'procedure', text, new ReadingMemo());
    checkDocument(workspace.snapshot, document, { today: TODAY });
  };
  // They take turns, so that whatever else the machine does slows both alike.
  let bare = 0;
  let checked = 0;
  for (let i = 0; i < texts.length; i += 20) {
    bare += totalMs(texts.slice(i, i + 20), bareParse);
    checked += totalMs(texts.slice(i, i + 20), check);
  }
  line(`check ${count} procedures of 60 steps`, checked, bare);
  console.log(
    `${'memory after them'.padEnd(52)} ${(process.memoryUsage().rss / 1e6).toFixed(0).padStart(9)} MB resident`,
  );
}

function totalMs(texts: readonly string[], call: (text: string) => void): number {
  const before = process.cpuUsage();
  for (const text of texts) call(text);
  const used = process.cpuUsage(before);
  return (used.user + used.system) / 1000;
}
