import { expect, test } from 'vitest';
import { EXAMPLE_PATHS, EXAMPLE_STORES } from '../../../server/src/core/rules/exampleDocuments';
import { inHead, inStep, withFamily, withFiles } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

const OPEN = '- remove: [cover-screw, cover, cap-nut]';
const OIL = `${EXAMPLE_STORES}  assembly-oil: { name: assembly oil, kind: oil }\n`;

/** A nut of which the family asks something before it is fitted. */
function nut(asked: string, instructions: string) {
  const part = `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [${asked}] }`;
  return withFamily(withFiles(inStep(instructions), { [EXAMPLE_PATHS.stores]: OIL }), part);
}

test('what was blasted is dirty, however often it was washed before', async () => {
  const cover = '- clean: cover\n  by: wash\n- clean: cover\n  by: blast\n- install: cover';
  expect(await reported(inStep(`${OPEN}\n${cover}`), 'not-cleaned')).toEqual([
    'cover: The cover is fitted with the dirt of blasting on it; wash it after it is blasted and before it is fitted',
  ]);
  expect(await reported(nut('clean', `${OPEN}\n- install: cap-nut`), 'not-cleaned')).toEqual([
    'cap-nut: The cap nut is fitted without having been cleaned since it came off; clean it before it is fitted',
  ]);
});

test('oil that was cleaned off again leaves the part dry', async () => {
  const oiled = '- apply: assembly-oil\n  to: cap-nut\n- clean: cap-nut\n- install: cap-nut';
  expect((await reported(nut('lubricate', `${OPEN}\n${oiled}`), 'not-lubricated'))[0]).toContain('is fitted dry');
  const never = await reported(nut('lubricate', `${OPEN}\n- install: cap-nut`), 'not-lubricated');
  expect(never[0]).toContain('without having been lubricated since it came off');
});

test('threadlocker is missing, cleaned off, or broken by turning', async () => {
  const lock = '- apply: threadlocker\n  to: cap-nut';
  const never = await reported(nut('threadlock', `${OPEN}\n- install: cap-nut`), 'not-threadlocked');
  expect(never[0]).toContain('without having been given threadlocker since it came off');
  const cleaned = `${OPEN}\n${lock}\n- clean: cap-nut\n- install: cap-nut`;
  expect((await reported(nut('threadlock', cleaned), 'not-threadlocked'))[0]).toContain('after the thread was cleaned');
  const turned = `${OPEN}\n${lock}\n- install: cap-nut\n- tighten: cap-nut\n- loosen: cap-nut\n- tighten: cap-nut`;
  expect((await reported(nut('threadlock', turned), 'not-threadlocked'))[0]).toContain('which broke its threadlocker');
});

test('a mark that is looked for and not there is told apart from one that was never made', async () => {
  const family =
    'parts:\n  shaft: { name: shaft, sits-on: core, renew: on-condition }\nbalance-groups:\n  rotor: { name: rotor, members: [shaft, wheel], keep-position: true }';
  const painted =
    '- mark: wheel\n  across: shaft\n  by: paint\n- remove: wheel\n- clean: wheel\n- install: wheel\n- align: wheel\n  to: shaft';
  const gone = await reported(withFamily(inStep(`${OPEN}\n${painted}`), family), 'mark-missing');
  expect(gone).toHaveLength(1);
  expect(gone[0]).toContain('bears no mark to go by here');
  const never = await reported(withFamily(inStep(`${OPEN}\n- remove: wheel`), family), 'mark-missing');
  expect(never[0]).toContain('comes off without a mark');
});

test('a check that was made too early is told apart from one that is never made', async () => {
  const family = 'checks:\n  free-turn: { say: The wheel turns freely., after: [cover] }';
  const never = await reported(inStep('- say: Look.'), 'check-missing');
  expect(never[0]).toContain('The check free-turn is never made');
  const early = inStep(`${OPEN}\n- check: free-turn\n- install: [cap-nut, cover, cover-screw]`);
  expect((await reported(withFamily(early, family), 'check-missing'))[0]).toContain('is not made again after');
});

test('the way of cleaning that spoils a part is named', async () => {
  const family = 'parts:\n  wheel: { name: wheel, sits-on: core, behind: [cover], never-clean-with: [caustic, blast] }';
  const example = withFamily(inStep(`${OPEN}\n- clean: [cover, wheel]\n  by: caustic`), family);
  expect(await reported(example, 'cleaning-forbidden')).toEqual([
    'wheel: The wheel must not be cleaned by "caustic", which the family lists under never-clean-with; clean it in another way',
  ]);
});

test('a trial fit that stays, and a part of another build, are no blanks', async () => {
  const trial = inStep('- remove: [cover-screw, cover]\n- install: cover\n  trial: true\n- install: cover-screw');
  expect((await reported(trial, 'left-in'))[0]).toContain('fitted on trial only');
  const family = 'parts:\n  plain-cap: { name: plain cap, sits-on: core, unless: big-wheel }';
  const grown = withFamily(inHead('adds: [big-wheel]', '- say: Look.'), family);
  expect((await reported(grown, 'left-in'))[0]).toContain('does not belong to the finished unit');
});
