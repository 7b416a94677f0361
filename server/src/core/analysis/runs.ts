/** Something that keeps its identity from one reading to the next; its number is any that no other one has. */
export interface Numbered {
  readonly serial: number;
}

/**
 * Things that follow each other, about sixteen. A run is the same object as long as it holds the same things, so what is
 * gathered from it can be kept with it: a key pressed in a long procedure makes one run anew, and not the work of all.
 */
export interface Run<Thing> {
  readonly things: readonly Thing[];
  /** What was gathered from it, by whoever gathered it. */
  readonly kept: Map<unknown, { readonly by: unknown; readonly value: unknown }>;
}

let last = 0;

/** A number for a new thing. It decides where runs end and nothing else. */
export function nextSerial(): number {
  last += 1;
  return last;
}

/** Runs by their first thing. */
export type KnownRuns<Thing extends Numbered> = WeakMap<Thing, Run<Thing>>;

/**
 * Cuts a row of things into runs. Where a run ends is told by the thing that it ends with and not by its place, so that
 * the runs behind a thing that is added or taken out stay what they are.
 */
export function runsOf<Thing extends Numbered>(things: readonly Thing[], known: KnownRuns<Thing>): Run<Thing>[] {
  const runs: Run<Thing>[] = [];
  let start = 0;
  for (let end = 1; end <= things.length; end++) {
    const thing = things[end - 1];
    if (thing === undefined || (end < things.length && !endsRun(thing))) continue;
    runs.push(runOf(things, start, end, known));
    start = end;
  }
  return runs;
}

/** One in sixteen, spread by a multiplication with the golden ratio of 32 bits, since serials of one reading are in order. */
function endsRun({ serial }: Numbered): boolean {
  return Math.imul(serial, 0x9e3779b1) >>> 28 === 0;
}

function runOf<Thing extends Numbered>(
  things: readonly Thing[],
  start: number,
  end: number,
  known: KnownRuns<Thing>,
): Run<Thing> {
  const first = things[start] as Thing;
  const already = known.get(first);
  if (already !== undefined && isStretch(already.things, things, start, end)) return already;
  const run = { things: things.slice(start, end), kept: new Map() };
  known.set(first, run);
  return run;
}

function isStretch<Thing>(run: readonly Thing[], things: readonly Thing[], start: number, end: number): boolean {
  if (run.length !== end - start) return false;
  for (let i = 0; i < run.length; i++) if (run[i] !== things[start + i]) return false;
  return true;
}

/** What is gathered from a run: kept with it for as long as `by`, all else that it depends on, is the same object. */
export function keptWith<Thing, Value>(run: Run<Thing>, what: unknown, by: unknown, make: () => Value): Value {
  const known = run.kept.get(what);
  if (known !== undefined && known.by === by) return known.value as Value;
  const value = make();
  run.kept.set(what, { by, value });
  return value;
}
