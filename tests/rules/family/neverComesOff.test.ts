import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, reported } from '../../support/checkText';

const RULE = 'never-comes-off';
const parts = (...lines: string[]) => inFamily(`parts:\n  ${lines.join('\n  ')}`);

test('the circle is told in order, and not at what only waits for it', async () => {
  const example = parts(
    'shield: { name: shield, sits-on: core, behind: [plate] }',
    'plate: { name: plate, sits-on: core, fastened-by: [plate-pin] }',
    'plate-pin: { name: plate pin, kind: pin, sits-on: core, behind: [shield] }',
    'hidden: { name: hidden washer, sits-on: core, behind: [shield] }',
  );
  expect(await reported(example, RULE)).toEqual([
    'plate: The shield can never be taken off: it is behind the plate, which is fastened by the plate pin, which is behind the shield; take out what is not so',
  ]);
  const { findings } = await checkExample(example);
  expect(findings).toHaveLength(1);
  expect(findings[0]?.about).toEqual(['plate', 'plate-pin', 'shield']);
  expect(findings[0]?.related.map((one) => one.message)).toEqual([
    'The plate is fastened by the plate pin',
    'The plate pin is behind the shield',
  ]);
});

test('only the builds on which the circle closes are named', async () => {
  const example = parts(
    'shield: { name: shield, sits-on: core, behind: [plate] }',
    'plate: { name: plate, when: { any: [k1-b, big-wheel] }, sits-on: core, behind: [shield] }',
  );
  expect(await reported(example, RULE)).toEqual([
    'plate: The shield can never be taken off: it is behind the plate, which is behind the shield; take out what is not so (K1-A with the big wheel; or K1-B)',
  ]);
});

test('two circles with a part in common are one knot, two apart are two', async () => {
  const one = parts(
    'part-a: { name: a-part, sits-on: core, behind: [part-b, part-c] }',
    'part-b: { name: b-part, sits-on: core, behind: [part-a] }',
    'part-c: { name: c-part, sits-on: core, behind: [part-a] }',
  );
  expect(await reported(one, RULE)).toHaveLength(1);
  const two = parts(
    'part-a: { name: a-part, sits-on: core, behind: [part-b] }',
    'part-b: { name: b-part, sits-on: core, behind: [part-a] }',
    'part-c: { name: c-part, sits-on: core, behind: [part-d] }',
    'part-d: { name: d-part, sits-on: core, behind: [part-c] }',
  );
  expect(await reported(two, RULE)).toHaveLength(2);
});

test('a clamp that only has to be loosened may have on it what rides on it, but must be in reach', async () => {
  const clamp = (rest: string) =>
    parts(
      'lid: { name: lid, sits-on: core, fastened-by: [band] }',
      `band: { name: band, kind: clamp, sits-on: core, ${rest} }`,
      'band-tag: { name: band tag, sits-on: band, behind: [lid] }',
    );
  expect(await reported(clamp('behind: [band-tag]'), RULE)).toEqual([]);
  expect(await reported(clamp('frees-when: off, behind: [band-tag]'), RULE)).toEqual([
    'band: The lid can never be taken off: it is fastened by the band, which is behind the band tag, which is behind the lid; take out what is not so',
  ]);
  expect(await reported(clamp('behind: [lid]'), RULE)).toEqual([
    'band: The lid can never be taken off: it is fastened by the band, which is behind the lid; take out what is not so',
  ]);
});

test('what lies on the bench can be taken apart, whatever hid it in the unit', async () => {
  const example = parts(
    'carrier: { name: carrier, sits-on: core }',
    'part-a: { name: a-part, sits-on: carrier, behind: [part-b] }',
    'part-b: { name: b-part, sits-on: carrier, behind: [part-a] }',
  );
  expect(await reported(example, RULE)).toEqual([]);
});

test('what takes the place of a cover or fastener is meant as well', async () => {
  const example = parts(
    'ring: { name: ring, sits-on: core, behind: [lid] }',
    'lid: { name: lid, sits-on: core }',
    'big-lid: { name: big lid, when: big-wheel, instead-of: lid, sits-on: core, behind: [ring] }',
  );
  expect(await reported(example, RULE)).toEqual([
    'lid: The ring can never be taken off: it is behind the big lid (in place of the lid), which is behind the ring; take out what is not so (K1-A with the big wheel)',
  ]);
});

test('the base holds nothing and hides nothing', async () => {
  const example = parts('lid: { name: lid, sits-on: core, fastened-by: [core], behind: [core] }');
  expect(await reported(example, RULE)).toEqual([
    'core: The lid is said to be fastened by the core, the base, which never comes off; name what has to come off before the lid, or take this out',
    'core: The lid is said to be behind the core, the base, which never comes off; name what has to come off before the lid, or take this out',
  ]);
});

test('half a family tells nothing and throws nothing', async () => {
  for (const text of [
    'parts:\n  lid: { name: lid, behind: [, }',
    'parts:\n  lid: { fastened-by: [lid, gone] }',
    'base:\nparts:',
  ]) {
    expect(await reported(inFamily(text), RULE)).toEqual([]);
  }
});

test('the same words that close a circle with a part and with what takes its place are told once', async () => {
  const example = parts(
    'lid: { name: lid, sits-on: core, fastened-by: [lid-pin] }',
    'big-lid: { name: big lid, when: big-wheel, instead-of: lid, sits-on: core, fastened-by: [lid-pin] }',
    'lid-pin: { name: lid pin, kind: pin, sits-on: core, behind: [lid] }',
  );
  expect(await reported(example, RULE)).toEqual([
    'lid-pin: The lid can never be taken off: it is fastened by the lid pin, which is behind the lid; take out what is not so',
  ]);
});

test('a circle that only a torn text closes is told by the tear', async () => {
  const example = parts(
    'lid: { name: lid, sits-on: core, fastened-by: [lid-pin] }',
    'lid-pin:',
    '  name: lid pin',
    '  sits-on: core',
    // The line "lid-seal:" is lost, so that its keys stand in the pin.
    '  name: lid seal',
    '  behind: [lid]',
  );
  const { findings } = await checkExample(example);
  expect(findings.map((one) => one.rule)).toContain('not-yaml');
  expect(findings.map((one) => one.rule)).not.toContain(RULE);
});
