import process from 'node:process';
import { describe, expect, test } from 'vitest';
import { UNIT_SHAPES } from '../../server/src/core/model/generated/shapes';
import type { Keys, Shape } from '../../server/src/core/model/shape';
import type { Change } from '../../server/src/core/review/change';
import { compareVersions } from '../../server/src/core/review/compareVersions';
import { keyClass } from '../../server/src/core/review/keyClasses';
import { seededRandom } from '../support/seededRandom';
import { line, SAMPLES, versionWith } from './versions';

const ROUNDS = Number(process.env.WITNESSMARK_ROUNDS ?? 16);
const SEED = Number(process.env.WITNESSMARK_SEED ?? 20261125);

test('nothing differs from itself', async () => {
  expect(compareVersions(await versionWith(), await versionWith()).changes).toEqual([]);
});

test('every key of every document has a class', () => {
  const missing = new Set<string>();
  const look = (def: string, keys: Keys) => {
    for (const [key, { shape }] of Object.entries(keys)) {
      if (keyClass(def, key) === undefined) missing.add(`${def}/${key}`);
      inside(def, shape);
    }
  };
  const inside = (def: string, shape: Shape): void => {
    if (shape.as === 'object') look(def, shape.keys);
    if (shape.as === 'list') inside(def, shape.items);
    if (shape.as === 'entries') inside(def, shape.values);
  };
  for (const { def, shape } of Object.values(UNIT_SHAPES)) look(def, shape.keys);
  expect([...missing]).toEqual([]);
});

/** The same said in another way: none of it can hurt anybody. */
const REWRITTEN: readonly (readonly [what: string, (text: string) => string])[] = [
  [
    'quotes',
    (text) => text.replace(/^( +(?:- )?(?:number|title|sign|torque|accept|kind): )([^\n"'{[|>#&*!%@`]+)$/gm, '$1"$2"'),
  ],
  ['the order of keys', (text) => text.replace(/\{ ([^{}[\],]+), ([^{}[\],]+) \}/g, '{ $2, $1 }')],
  [
    'spellings of units',
    (text) => text.replaceAll(/(?<=torque: [^\n{]*)N·m/g, 'Nm').replaceAll(/(?<=torque: [^\n{]*)lbf·in/g, 'in-lb'),
  ],
  ['remarks', (text) => text.replace(/^ {6}- step:/gm, '      # seen\n$&')],
  ['line ends', (text) => text.replaceAll('\n', '\r\n')],
];

test.each(REWRITTEN)('%s alone never could hurt, nor fit differently', async (_, rewrite) => {
  const texts = Object.fromEntries([...SAMPLES].map(([name, text]) => [name, rewrite(text)]));
  expect(Object.entries(texts).some(([name, text]) => text !== SAMPLES.get(name))).toBe(true);
  const { changes } = compareVersions(await versionWith(), await versionWith(texts));
  expect(changes.filter((one) => one.class === 'hurt' || one.class === 'fits').map(line)).toEqual([]);
});

/** Lines of a text that match, one of them changed in a known way. */
type Mutation = readonly [
  what: string,
  line: RegExp,
  to: (found: string) => string,
  expected: (change: Change) => boolean,
];

const bigger = (text: string) => text.replace(/\d+(?:\.\d+)?/, (number) => String(Number(number) * 10));

const MUTATIONS: readonly Mutation[] = [
  [
    'a torque ten times as much',
    /^ +torque: \d.*N·m.*$/gm,
    (text) => text.replace(/: .*/, (value) => bigger(value.replace(/ *\(.*\)/, '').replace(/ ± [\d.]+/, ''))),
    (one) => one.class === 'hurt' && one.key === 'torque',
  ],
  [
    'a caution taken out',
    /^ +(?:warning|caution|notice): [^\n[{|>]+\n/gm,
    () => '',
    (one) => one.class === 'hurt' && ['warning', 'caution', 'notice'].includes(one.key ?? ''),
  ],
  [
    'always renewed no more',
    /^ +renew: always$/gm,
    (text) => text.replace('always', 'never'),
    (one) => one.class === 'hurt' && one.key === 'renew',
  ],
  ['a hold point taken out', /^ +sign: \w+\n/gm, () => '', (one) => one.class === 'hurt' && one.key === 'sign'],
  [
    'another number of a part',
    /^ +number: \S+$/gm,
    (text) => `${text}9`,
    (one) => one.class === 'fits' && one.key === 'number',
  ],
  [
    'another orientation',
    /^ +orient: [^\n{]*$/gm,
    (text) => `${text} again`,
    (one) => one.class === 'fits' && one.key === 'orient',
  ],
  [
    'another title',
    /^ +title: [^\n{]*$/gm,
    (text) => `${text} again`,
    (one) => one.class === 'says' && one.key === 'title',
  ],
  ['a remark behind a line', /^ +title: [^\n{]*$/gm, (text) => `${text} # seen`, (one) => one.class === 'looks'],
];

describe(`known changes of the samples (${ROUNDS} rounds, seed ${SEED})`, () => {
  test('each is told in its class at its place, and the other way round it is mirrored', async () => {
    const random = seededRandom(SEED);
    const base = await versionWith();
    const names = [...SAMPLES.keys()];
    let done = 0;
    while (done < ROUNDS) {
      const name = names[Math.floor(random() * names.length)] ?? '';
      const [what, pattern, to, expected] = MUTATIONS[Math.floor(random() * MUTATIONS.length)] as Mutation;
      const text = SAMPLES.get(name) ?? '';
      const all = [...text.matchAll(pattern)];
      const hit = all[Math.floor(random() * all.length)];
      if (hit === undefined) continue;
      done++;
      const changed = text.slice(0, hit.index) + to(hit[0]) + text.slice(hit.index + hit[0].length);
      const version = await versionWith({ [name]: changed });
      const { changes } = compareVersions(base, version);
      const at = `${what} in ${name} at ${hit.index}: ${hit[0].trim()}`;
      expect(changes.filter(expected), at).toHaveLength(1);
      expect(changes, at).toHaveLength(1);
      const place = changes[0]?.after ?? changes[0]?.before;
      expect(place?.uri.endsWith(name), at).toBe(true);
      expect(mirrored(compareVersions(version, base).changes), at).toEqual(sides(changes));
    }
  }, 600_000);
});

const sides = (changes: readonly Change[]) => changes.map(({ before, after }) => [before?.text, after?.text]);
const mirrored = (changes: readonly Change[]) => changes.map(({ before, after }) => [after?.text, before?.text]);
