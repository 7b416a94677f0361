import { afterAll, describe, expect, test } from 'vitest';
import { type Known, type PlausibleJoint, plausibleJoint, randomFrom } from './plausibleJoints';
import { asPlausible, casesOf, sampleFamilies, slipsIn, toldIn } from './sampleTorques';
import { type SlipFigures, slipFigures, slipTable } from './unitSlips';

const SEED = 20261125;
const JOINTS = 2000;

const tables: string[] = [];
// The figures are for reading as well.
afterAll(() => console.info(tables.join('\n\n')));

function measured(title: string, joints: readonly PlausibleJoint[]): SlipFigures {
  const figures = slipFigures(joints);
  tables.push(slipTable(title, figures));
  return figures;
}

function drawn(known: Known, lightly = 1): PlausibleJoint[] {
  const random = randomFrom(SEED);
  return Array.from({ length: JOINTS }, () => plausibleJoint(random, known, lightly));
}

/** Share in per cent. */
function share(part: number, whole: number): number {
  return (100 * part) / whole;
}

describe(`of ${JOINTS} random joints (seed ${SEED})`, () => {
  test('with a class known, nearly every slip of the unit is told, and next to nothing else', () => {
    const { large, wronglyTold, torques } = measured(`Class known, seed ${SEED}`, drawn('bolt'));
    expect(share(large.caught, large.slips)).toBeGreaterThanOrEqual(99.9);
    expect(share(large.named, large.slips)).toBeGreaterThanOrEqual(99.5);
    expect(share(wronglyTold, torques)).toBeLessThanOrEqual(0.2);
  });

  test('with no class known, few slips are missed', () => {
    const { large, wronglyTold, torques } = measured(`No class known, seed ${SEED}`, drawn('nothing'));
    expect(share(large.caught, large.slips)).toBeGreaterThanOrEqual(98.5);
    expect(share(wronglyTold, torques)).toBeLessThanOrEqual(0.2);
  });

  test('torques a third as high, as thin shafts and soft housings have them, are let be', () => {
    const { large, wronglyTold, torques } = measured(`A third of the usual torque, seed ${SEED}`, drawn('bolt', 1 / 3));
    expect(share(wronglyTold, torques)).toBeLessThanOrEqual(0.5);
    expect(share(large.caught, large.slips)).toBeGreaterThanOrEqual(99.5);
  });
});

describe('of the torques of the sample families', () => {
  test('none is told as it is written', async () => {
    const cases = [...(await sampleFamilies()).values()].flatMap(casesOf);
    expect(cases.length).toBeGreaterThanOrEqual(20);
    expect(cases.filter(({ judgement }) => judgement?.implausible === true).map(({ joint }) => joint.id)).toEqual([]);
  });

  test('every one is told in a unit that is eight times off', async () => {
    const cases = [...(await sampleFamilies()).values()].flatMap(casesOf);
    const { large } = measured('Torques of the sample families', cases.flatMap(asPlausible));
    expect(large.slips).toBeGreaterThanOrEqual(40);
    expect(large.caught).toBe(large.slips);
    expect(large.named).toBe(large.slips);
  });

  test('the rules tell each of them at its place, with the unit that was meant among the fixes', async () => {
    const missed: string[] = [];
    for (const [name, family] of await sampleFamilies()) {
      for (const slip of slipsIn(family)) {
        const told = await toldIn(slip.text, slip.part);
        if (!told.includes(`Write ${slip.meant}`)) missed.push(`${name}: ${slip.part} in ${slip.written}`);
      }
    }
    expect(missed).toEqual([]);
  });
});
