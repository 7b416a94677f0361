import { readdirSync, readFileSync } from 'node:fs';
import process from 'node:process';
import { expect, test } from 'vitest';
import { type Unit, unitsIn } from '../../server/src/core/model/facts';
import { UNIT_SHAPES } from '../../server/src/core/model/generated/shapes';
import { readUnit } from '../../server/src/core/model/readUnit';
import { isSoundUnit } from '../../server/src/core/model/sound';
import { problemsOf } from '../../server/src/core/model/validateUnit';
import { type DocumentKind, documentKindOf } from '../../server/src/core/syntax/documentKind';
import { read } from '../support/read';
import { seededRandom } from '../support/seededRandom';

const SAMPLES = 'sample-procedures';
const TEXTS = readdirSync(SAMPLES, { recursive: true, encoding: 'utf8' }).flatMap((path) => {
  const kind = documentKindOf(path);
  return kind === undefined ? [] : [{ kind, text: readFileSync(`${SAMPLES}/${path}`, 'utf8') }];
});

function unitsOf(text: string, kind: DocumentKind): readonly Unit[] {
  const { root, other } = read(text, kind);
  const node = root ?? other;
  return node === undefined ? [] : unitsIn(readUnit(node, kind));
}

interface Counted {
  units: number;
  broken: number;
  missed: number;
}

/** Counts; fails where a unit passes for sound in which the validators find something. */
function compare(units: readonly Unit[], counted: Counted): void {
  for (const { node, def } of units) {
    const shape = UNIT_SHAPES[def];
    if (shape === undefined) throw new Error(def);
    const problems = problemsOf(node, shape);
    const sound = isSoundUnit(node, def);
    if (sound && problems.length > 0) expect({ def, text: node.item.text, problems }).toBe('sound');
    counted.units++;
    if (problems.length > 0) counted.broken++;
    else if (!sound && node.kind === 'map') counted.missed++;
  }
}

test('every unit of the samples in which the validators find nothing is sound', () => {
  const counted = { units: 0, broken: 0, missed: 0 };
  for (const { kind, text } of TEXTS) compare(unitsOf(text, kind), counted);
  expect(counted.units).toBeGreaterThan(1000);
  expect(counted.missed).toBe(0);
});

const RANDOM_TEXTS = [
  '',
  '-',
  '[]',
  '{}',
  'true',
  '0',
  '12',
  'x',
  '2026-02-30',
  '{ text: a }',
  '[a, b]',
  '{ all: [] }',
];

/** One slip in the text: a line or a value that is gone, doubled, moved, or something else. */
function withSlip(text: string, random: () => number): string {
  const pick = <T>(list: readonly T[]): T => list[Math.floor(random() * list.length)] as T;
  const lines = text.split('\n');
  const at = Math.floor(random() * lines.length);
  const line = lines[at] ?? '';
  const other = pick(RANDOM_TEXTS);
  const slips: readonly (() => readonly string[])[] = [
    () => [],
    () => [line, line],
    () => [line.replace(/: .*/, `: ${other}`)],
    () => [line.replace(/:.*/, ':')],
    () => [line.replace(/(\w)(\w)/, '$2$1')],
    () => [
      line.replace(/([\w-]+):/, `${pick(['step', 'when', 'text', 'constructor', '__proto__', 'say', 'tighten'])}:`),
    ],
    () => [line.replace(/\[[^\]]*\]/, pick(['[]', 'one', '{ a: 1 }', '[[a]]', '[{ text: a }]']))],
    () => [line.replace(/(, |\{ )\w[\w-]*(?=[,: }])/, `$1${other}`)],
    () => [line, pick(lines)],
  ];
  lines.splice(at, 1, ...pick(slips)());
  return lines.join('\n');
}

test('a unit passes for sound only where the validators find nothing, and nearly always then', () => {
  const seed = Number(process.env.SEED ?? Date.now() % 1e9);
  const rounds = Number(process.env.ROUNDS ?? 400);
  const random = seededRandom(seed);
  const counted = { units: 0, broken: 0, missed: 0 };
  try {
    for (let i = 0; i < rounds; i++) {
      const { kind, text } = TEXTS[Math.floor(random() * TEXTS.length)] as (typeof TEXTS)[number];
      let slipped = text;
      for (let slips = 0; slips < 8; slips++) slipped = withSlip(slipped, random);
      compare(unitsOf(slipped, kind), counted);
    }
  } catch (error) {
    throw new Error(`SEED=${seed}`, { cause: error });
  }
  expect(counted.broken, `SEED=${seed}`).toBeGreaterThan(rounds);
  expect(counted.missed / counted.units, `SEED=${seed}`).toBeLessThan(0.005);
});
