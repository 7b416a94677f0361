import { LineIndex } from '../../../src/core/text/lineIndex';
import { procedureOf, SAMPLE_URI } from '../procedures';
import { applied, type Edit, editScript } from './editScript';
import { startOurs, startPeer } from './servers';

const SEED = 20261125;
/** Steps of the document, changes that both servers are sent, and the aim for the ratio of their slow twentieth. */
const SIZES = [
  { steps: 60, count: 100, aim: 1 / 6 },
  { steps: 300, count: 60, aim: 1 / 20 },
  { steps: 2000, count: 20, aim: 1 / 30 },
] as const;

interface Times {
  readonly whole: number[];
  readonly broken: number[];
}

/**
 * From a key to the findings, of this server with all rules and the walk and of a general one with the schema alone:
 * the same changes of the same document over the same pipes, in turns. Wall milliseconds.
 */
export async function latency(only?: number): Promise<void> {
  console.log(`\nFrom a key to the findings, over stdio; the peer is yaml-language-server (seed ${SEED}):`);
  const medians: { steps: number; ms: number }[] = [];
  for (const { steps, count, aim } of SIZES.filter((one) => only === undefined || one.steps === only)) {
    for (const [ends, text] of lineEnds(procedureOf(steps))) {
      const { ours, peer } = await inTurns(text, editScript(text, count, SEED));
      row(`${steps} steps, ${ends}`, ours.whole, peer.whole, aim);
      row(`${steps} steps, ${ends}, while the text is broken`, ours.broken, peer.broken, 1 / 5);
      medians.push({ steps, ms: at(ours.whole, 0.5) });
    }
  }
  if (only === undefined) growth(medians);
}

function lineEnds(text: string): [string, string][] {
  return [
    ['LF', text],
    ['CRLF', text.replaceAll('\n', '\r\n')],
  ];
}

async function inTurns(text: string, script: readonly Edit[]): Promise<{ ours: Times; peer: Times }> {
  const servers = [await startOurs(), await startPeer()] as const;
  const times: readonly [Times, Times] = [
    { whole: [], broken: [] },
    { whole: [], broken: [] },
  ];
  for (const server of servers) await server.open(SAMPLE_URI, text);
  let now = text;
  for (const [nth, edit] of script.entries()) {
    const lines = new LineIndex(now);
    const range = { start: lines.position(edit.from), end: lines.position(edit.to) };
    for (const [i, server] of servers.entries()) {
      const ms = await server.change(SAMPLE_URI, nth + 2, range, edit);
      // The first keys warm the compiler of both.
      if (nth >= 5) times[i === 0 ? 0 : 1][edit.state].push(ms);
    }
    now = applied(now, edit);
  }
  for (const server of servers) await server.stop();
  return { ours: times[0], peer: times[1] };
}

function row(what: string, ours: readonly number[], peer: readonly number[], aim: number): void {
  const figures = [at(ours, 0.5), at(ours, 0.95), at(peer, 0.5), at(peer, 0.95)].map((ms) => ms.toFixed(1));
  const ratio = at(ours, 0.95) / at(peer, 0.95);
  console.log(
    `${what.padEnd(44)} p50/p95 ${`${figures[0]}/${figures[1]}`.padStart(13)} ms   peer ${`${figures[2]}/${figures[3]}`.padStart(15)} ms   ratio of p95 1/${(1 / ratio).toFixed(1)} (aim 1/${(1 / aim).toFixed(0)}), ${ours.length} keys`,
  );
}

/** How the time of a key grows with the length of the document: the exponent between the shortest and the longest. */
function growth(medians: readonly { steps: number; ms: number }[]): void {
  const [first, last] = [medians[0], medians.at(-2)];
  if (first === undefined || last === undefined) return;
  const exponent = Math.log(last.ms / first.ms) / Math.log(last.steps / first.steps);
  console.log(`growth of a key from ${first.steps} to ${last.steps} steps: exponent ${exponent.toFixed(2)} (aim 0.3)`);
}

export function at(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}
