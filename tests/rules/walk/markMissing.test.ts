import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'mark-missing';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut]';
const family = (shaft: string, more = ''): string =>
  `parts:\n  shaft: { name: shaft, sits-on: core${shaft} }\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover]${more} }\nbalance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }`;
const MARK = '- mark: wheel\n  across: shaft';
const unmarked = (line: number, builds = ''): string =>
  `${line} wheel: The wheel comes off without a mark, but must go back in its position; mark it first${builds}`;
const bare = (line: number): string =>
  `${line} wheel: The wheel bears no mark to go by here; mark it before it comes off, so that no cleaning takes the mark away`;

test('marked on the bench is too late, marked in place is right, from either side', async () => {
  expect(await shown(work(`${OPEN}\n- remove: wheel\n${MARK}`, family('')), RULE)).toEqual([unmarked(2)]);
  expect(await shown(work(`${OPEN}\n${MARK}\n- remove: wheel`, family('')), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- mark: shaft\n  across: wheel\n- remove: wheel`, family('')), RULE)).toEqual([]);
});

test('a mark of the maker, or a partner that is always renewed, needs none', async () => {
  expect(await shown(work(`${OPEN}\n- remove: wheel`, family('', ', maker-mark: true')), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- remove: wheel`, family(', renew: always')), RULE)).toEqual([]);
});

test('where both may be renewed, it matters when both are used again', async () => {
  const either = family(', renew: on-condition', ', renew: on-condition');
  expect(await shown(work(`${OPEN}\n- remove: wheel`, either), RULE)).toEqual([
    unmarked(2, ' (when the shaft is re-used and the wheel is re-used)'),
  ]);
});

test('the builds on which it is not marked', async () => {
  const steps = `${OPEN}\n${MARK}\n  when: k1-a\n- remove: wheel`;
  expect(await shown(work(steps, family('')), RULE)).toEqual([unmarked(5, ' (K1-B)')]);
});

test('paint that was washed off is missed at the alignment, a scribed line is not', async () => {
  const rest = '- remove: wheel\n- clean: wheel\n- install: wheel\n- align: wheel\n  to: shaft';
  expect(await shown(work(`${OPEN}\n${MARK}\n  by: paint\n${rest}`, family('')), RULE)).toEqual([
    bare(8),
    '-> 6 wheel: The wheel is cleaned here',
  ]);
  expect(await shown(work(`${OPEN}\n${MARK}\n  by: scribe\n${rest}`, family('')), RULE)).toEqual([]);
});

test('a family that asks for a mark before fitting is told there', async () => {
  const asked = 'parts:\n  wheel: { name: wheel, sits-on: core, behind: [cover], before-fitting: [mark] }';
  const found = await shown(work(`${OPEN}\n- remove: wheel\n- install: wheel`, asked), RULE);
  expect(found).toEqual([bare(3), '-> 2 wheel: The wheel is taken off here']);
});

test('a mark that is half typed may have been that of the part', async () => {
  expect(await shown(work(`${OPEN}\n- mark: wheel\n  across: shaf\n- remove: wheel`, family('')), RULE)).toEqual([]);
});
