import { describe, expect, test } from 'vitest';
import { type Example, inFamily } from '../../server/src/core/rules/examples';
import { checkExample } from '../support/checkText';

const COMMON = 'common practice, no source';
const AIRCRAFT = 'FAA AC 43.13-1B, table 7-1 (public domain), tension nuts, recommended torques';
const STAINLESS = 'published table of stainless tightening torques after VDI 2230, µ = 0.10';
const STEEL = 'published torque table for µ = 0.14, DIN 912 screws';

interface Published {
  readonly what: string;
  readonly source: string;
  readonly keys: string;
  readonly torque: string;
  readonly unit: string;
}

function published(source: string, what: string, keys: string, torque: string, unit: string): Published {
  return { source, what, keys, torque, unit };
}

const NUT = 'kind: nut, thread: M5×0.8, property-class: 10';
const bolt = (thread: string, ofClass: string): string => `kind: bolt, thread: ${thread}, property-class: ${ofClass}`;

const TORQUES: readonly Published[] = [
  published(COMMON, 'a small compressor nut', NUT, '5', 'N·m'),
  published(COMMON, 'a small compressor nut', NUT, '40..50', 'lbf·in'),
  published(COMMON, 'a small compressor nut without a class', 'kind: nut, thread: M5×0.8', '40..50', 'lbf·in'),
  published(COMMON, 'a housing band clamp', 'kind: clamp, thread: M6×1', '8', 'lbf·ft'),
  published(COMMON, 'a housing band clamp', 'kind: clamp, thread: M6×1', '11', 'N·m'),
  published(COMMON, 'a housing band clamp with a class', 'kind: clamp, thread: M6×1, property-class: 8.8', '11', 'N·m'),
  published(AIRCRAFT, '1/4-28', bolt('1/4-28', 'grade 5'), '50..70', 'lbf·in'),
  published(AIRCRAFT, '5/16-24', bolt('5/16-24', 'grade 5'), '100..140', 'lbf·in'),
  published(AIRCRAFT, '3/8-24', bolt('3/8-24', 'grade 5'), '160..190', 'lbf·in'),
  published(AIRCRAFT, '1/4-20', bolt('1/4-20', 'grade 5'), '40..50', 'lbf·in'),
  published(AIRCRAFT, '5/16-18', bolt('5/16-18', 'grade 5'), '80..90', 'lbf·in'),
  published(AIRCRAFT, '10-32 without a class', 'kind: bolt, thread: "#10-32"', '20..25', 'lbf·in'),
  published(STAINLESS, 'M5 A2-70', bolt('M5', 'A2-70'), '3.68', 'N·m'),
  published(STAINLESS, 'M8 A2-70', bolt('M8', 'A2-70'), '15.2', 'N·m'),
  published(STAINLESS, 'M8 A2-50', bolt('M8', 'A2-50'), '7.2', 'N·m'),
  published(STAINLESS, 'M10 A4-80', bolt('M10', 'A4-80'), '40', 'N·m'),
  published(STEEL, 'M6 8.8', bolt('M6', '8.8'), '10', 'N·m'),
  published(STEEL, 'M8 8.8', bolt('M8', '8.8'), '25', 'N·m'),
  published(STEEL, 'M8 10.9', bolt('M8', '10.9'), '35', 'N·m'),
  published(STEEL, 'M12 12.9', bolt('M12', '12.9'), '145', 'N·m'),
];

/** The units that change a torque eight times or more. */
const WRONG: Readonly<Record<string, readonly string[]>> = {
  N·m: ['lbf·in', 'kgf·cm'],
  lbf·ft: ['lbf·in', 'kgf·cm'],
  lbf·in: ['N·m', 'lbf·ft'],
};

function family({ keys, torque }: Published, unit: string): Example {
  return inFamily(`parts:\n  one: { name: fastener, sits-on: core, hand: right, ${keys}, torque: ${torque} ${unit} }`);
}

async function told(one: Published, unit: string) {
  const { findings } = await checkExample(family(one, unit));
  return findings.filter(({ rule }) => rule === 'torque-implausible' || rule === 'torque-above-proof');
}

describe.each(TORQUES)('$what, $torque $unit ($source)', (one) => {
  test('is not told', async () => {
    expect(await told(one, one.unit)).toEqual([]);
  });

  test.each(WRONG[one.unit] ?? [])('is told in %s, once, and can be mended', async (wrong) => {
    const [finding, ...more] = await told(one, wrong);
    expect(more).toEqual([]);
    expect(finding?.fixes().map(({ title }) => title)).toContain(`Write ${one.unit}`);
  });
});
