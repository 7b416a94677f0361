import { expect, test } from 'vitest';
import { type KnownRuns, keptWith, type Numbered, nextSerial, runsOf } from '../../server/src/core/analysis/runs';
import { SameParts } from '../../server/src/core/analysis/sameParts';

const things = (count: number): Numbered[] => Array.from({ length: count }, () => ({ serial: nextSerial() }));

test('a row is cut into runs of about sixteen, which hold all of it in order', () => {
  const row = things(2000);
  const runs = runsOf(row, new WeakMap());
  expect(runs.flatMap((run) => run.things)).toEqual(row);
  expect(runs.length).toBeGreaterThan(60);
  expect(runs.length).toBeLessThan(250);
  expect(Math.max(...runs.map((run) => run.things.length))).toBeLessThan(200);
});

test('a thing that is changed, added, taken out or moved makes few runs anew', () => {
  const row = things(2000);
  const known: KnownRuns<Numbered> = new WeakMap();
  const [added] = things(1);
  for (const changed of [
    row.with(1000, added as Numbered),
    row.toSpliced(700, 0, added as Numbered),
    row.toSpliced(300, 1),
    row.toSpliced(20, 1).toSpliced(1500, 0, row[20] as Numbered),
  ]) {
    const before = new Set(runsOf(row, known));
    const runs = runsOf(changed, known);
    expect(runs.flatMap((run) => run.things)).toEqual(changed);
    expect(runs.filter((run) => !before.has(run)).length).toBeLessThan(6);
  }
});

test('what is gathered from a run is kept until something else that it depends on is another', () => {
  const [run] = runsOf(things(1), new WeakMap());
  if (run === undefined) throw new Error('no run');
  let made = 0;
  const gather = (by: object): number => keptWith(run, gather, by, () => ++made);
  const family = {};
  expect([gather(family), gather(family), gather({}), gather(family)]).toEqual([1, 1, 2, 3]);
});

test('what rests on several things is made once while all of them are the same', () => {
  const same = new SameParts<number>();
  let made = 0;
  const [one, other] = [{}, {}];
  const of = (...parts: object[]): number => same.of(parts, () => ++made);
  expect([of(one, other), of(one, other), of(other, one), of(one), of(one, other)]).toEqual([1, 1, 2, 3, 1]);
});
