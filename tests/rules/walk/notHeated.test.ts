import { expect, test } from 'vitest';
import { shown, work } from './shown';

const RULE = 'not-heated';
const OPEN = '- remove: [cover-screw, cover, cover-seal, cap-nut, wheel]';
const asks = (what: string): string =>
  `parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], before-fitting: [${what}] }`;
const HEAT = '- heat: wheel\n  until: 120 °C';
const cold = (line: number, builds = ''): string =>
  `${line} wheel: The wheel is not hot when it is fitted; heat it right before${builds}`;
const REMOVED = '-> 1 wheel: The wheel is taken off here';

test('install and press need the heat', async () => {
  expect(await shown(work(`${OPEN}\n- press: wheel`, asks('heat')), RULE)).toEqual([cold(2), REMOVED]);
  expect(await shown(work(`${OPEN}\n${HEAT}\n- press: wheel`, asks('heat')), RULE)).toEqual([]);
});

test.each(['wait: 30 min', 'cool: wheel\n  until: ≤ 30 °C'])('%s loses it', async (loss) => {
  expect((await shown(work(`${OPEN}\n${HEAT}\n- ${loss}\n- install: wheel`, asks('heat')), RULE))[0]).toMatch(
    /^[56] wheel: The wheel is not hot/,
  );
});

test('other work in between does not, heating something else is no heating', async () => {
  const between = `${OPEN}\n${HEAT}\n- apply: oil\n  to: wheel\n- install: wheel`;
  expect(await shown(work(between, asks('heat, lubricate')), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n- heat: core\n- install: wheel`, asks('heat')), RULE)).toHaveLength(2);
});

test('what must be cold is told as such, and heat after cold is not cold', async () => {
  const chill = '- cool: wheel\n  until: -20 °C';
  expect(await shown(work(`${OPEN}\n- install: wheel`, asks('cool')), RULE)).toEqual([
    '2 wheel: The wheel is not cold when it is fitted; cool it right before',
    REMOVED,
  ]);
  expect(await shown(work(`${OPEN}\n${chill}\n- install: wheel`, asks('cool')), RULE)).toEqual([]);
  expect(await shown(work(`${OPEN}\n${chill}\n- heat: wheel\n- install: wheel`, asks('cool')), RULE)).toHaveLength(2);
});

test('the second fitting needs it again, a trial fit does not', async () => {
  const twice = `${OPEN}\n${HEAT}\n- install: wheel\n- remove: wheel\n- install: wheel`;
  expect(await shown(work(twice, asks('heat')), RULE)).toEqual([cold(6), REMOVED.replace('1', '5')]);
  expect(await shown(work(`${OPEN}\n- install: wheel\n  trial: true`, asks('heat')), RULE)).toEqual([]);
});

test('the builds on which it is not heated', async () => {
  const steps = `${OPEN}\n${HEAT}\n  when: k1-a\n- install: wheel`;
  expect(await shown(work(steps, asks('heat')), RULE)).toEqual([cold(5, ' (K1-B)'), REMOVED]);
});

test('a heating that is half typed may have been that of the part', async () => {
  expect(await shown(work(`${OPEN}\n- heat: whe\n- install: wheel`, asks('heat')), RULE)).toEqual([]);
});
