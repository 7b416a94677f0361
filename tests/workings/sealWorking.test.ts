import { expect, test } from 'vitest';
import { sealWorkingsOf } from '../../server/src/core/workings/sealWorking';
import { familyWith, rowsOf } from './familyWith';

const ring = (keys: string) => familyWith(`parts:\n  ring: { name: ring, kind: o-ring, sits-on: core, ${keys} }`);

test('a ring shows squeeze, stretch and fill, even where nothing is wrong', async () => {
  const family = await ring(
    'section: 1.78 ± 0.08 mm, inside-diameter: 66.40 mm, groove: { depth: 1.27..1.40 mm, width: 2.6 mm, diameter: 67.2 mm, motion: static }',
  );
  const [working] = sealWorkingsOf(family, 'ring');
  expect(rowsOf(working)).toEqual([
    'section: 1.7 to 1.86 mm',
    'squeeze: 18 % to 32 %',
    'squeeze, as a length: 0.3 to 0.59 mm',
    'recommended squeeze: 10 to 40 %, static',
    'stretch, at most 5 %: 1.2 %',
    'fill of the groove, at most 85 %: 62 % to 82 %',
  ]);
  expect(working?.missing).toEqual([]);
  expect(new Set(working?.steps.map(({ symbol }) => symbol)).size).toBe(working?.steps.length);
});

test('a groove around the ring has no stretch', async () => {
  const family = await ring(
    'section: 1.78 mm, inside-diameter: 13.94 mm, groove: { depth: 1.35 mm, diameter: 17.4 mm }',
  );
  expect(rowsOf(sealWorkingsOf(family, 'ring')[0])).toContain(
    'stretch: none: the groove is around the ring, as in a bore',
  );
});

test('what is missing is named', async () => {
  const [half] = sealWorkingsOf(await ring('section: 2.40 mm, groove: { width: 3 mm }'), 'ring');
  expect(rowsOf(half)).toEqual(['section: 2.4 to 2.4 mm']);
  expect(half?.missing).toEqual([
    'the depth of the groove',
    'whether the joint moves',
    'the inside diameter of the ring and the diameter of the groove',
    'the width of the groove',
  ]);
  const [none] = sealWorkingsOf(await ring('groove: { depth: 1.3 mm }'), 'ring');
  expect(none?.missing).toEqual(['the cross-section of the ring']);
  expect(sealWorkingsOf(await ring('mass: 1 g'), 'ring')).toEqual([]);
});
