import { afterAll, describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../server/src/core/analysis/settings';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import { labelsFor } from '../../server/src/core/sheet/labels';
import type { ComputedBand, Sheet } from '../../server/src/core/sheet/sheet';
import { faceForThread } from '../../server/src/core/standards/bearingFaces';
import { readThreadDesignation } from '../../server/src/core/standards/threadDesignation';
import { torqueBand, usualFriction } from '../../server/src/core/standards/torqueBand';
import { roughNumber } from '../../server/src/core/workings/torqueUnits';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { FAMILY, filesWith, procedureWith, type SheetWish, sheetOfFiles } from './fixtures/bench';
import { print } from './fixtures/printPdf';
import { readPdf } from './fixtures/readPdf';

const asked = { torqueBands: 'computed' } as const;
const labels = labelsFor('en');

/** The bench family with a property class for some of its fasteners, and more fasteners. */
const CLASSED = FAMILY.replace('thread: M6×1, hand: right', 'thread: M6×1, property-class: 8.8, hand: right')
  .replace(
    'torque: 5.1 ± 0.3 N·m, hold',
    'property-class: { k2-a: 8, nut-hand=left: 8, nut-hand=right: 10 }, torque: 5.1 ± 0.3 N·m, hold',
  )
  .replace(
    '  rod-end: {',
    `  lock-nut: { name: lock nut, kind: nut, sits-on: rod-end, mates-with: rod-end, thread: M5×0.8, property-class: 8, hand: right, prevailing-torque: 1 N·m }
  odd-bolt: { name: odd bolt, kind: bolt, sits-on: core, thread: M5×0.8, property-class: Q7, hand: right, torque: 5 N·m }
  slim-bolt: { name: slim bolt, kind: bolt, sits-on: core, thread: M6×1, property-class: 8.8, hand: right, friction: 6 %, torque: 9 N·m }
  rod-end: { kind: rod,`,
  );

function sheetTightening(what: string, wish: SheetWish = {}): Promise<Sheet> {
  const steps = `phases:\n  - { phase: Work, steps: [{ step: one-step, title: Work, do: [${what}] }] }\n`;
  const files = { ...filesWith(procedureWith(steps)), 'families/pellow-k2.family.yaml': CLASSED };
  return sheetOfFiles(files, wish);
}

async function bandsOf(what: string, wish: SheetWish = {}): Promise<ComputedBand[][]> {
  const { torqueTable } = await sheetTightening(what, { ...wish, more: asked });
  return torqueTable.map(({ bands }) => bands ?? []);
}

const tight = (part: string): string => `{ tighten: ${part} }`;

afterAll(closePdfEngines);

/** The boxes for pieces stand in bands of their own, which tell no torque. */
function withoutBands(sheet: object): object {
  const isComputed = (value: unknown) =>
    Array.isArray(value) && value.some(({ kind }) => kind === 'band' || kind === 'none');
  return JSON.parse(JSON.stringify(sheet, (key, value) => (key === 'bands' && isComputed(value) ? undefined : value)));
}

describe('the computed band of a torque', () => {
  test('is nowhere on a sheet that nobody asked it of', async () => {
    const sheet = await sheetTightening(tight('cover-screw'));
    expect(withoutBands(sheet)).toEqual(JSON.parse(JSON.stringify(sheet)));
    const html = sheetToHtml(sheet, { mode: 'file' });
    expect(html).not.toContain(labels.computedBand);
    expect(html).not.toContain(labels.computedBandNote);
  });

  test('stands in both units of the torque beside it, with thread, class and where the strength is from', async () => {
    expect(await bandsOf(tight('cover-screw'))).toEqual([
      [
        {
          kind: 'band',
          primary: '2.7 to 12.4 N·m',
          secondary: '24 to 110 lbf·in',
          of: 'Computed for M6×1, class 8.8 (strength from ISO 898-1); not the maker’s value',
        },
      ],
    ]);
  });

  test('stands in the units of the settings', async () => {
    const settings = { ...DEFAULT_SETTINGS, units: new Map([['torque', ['lbf·in', 'N·m']]]) };
    const [[band] = []] = await bandsOf(tight('cover-screw'), { settings });
    expect(band).toMatchObject({ primary: '24 to 110 lbf·in', secondary: '2.7 to 12.4 N·m' });
  });

  test('changes nothing of the sheet but the rows of the table and their settings', async () => {
    const [plain, banded] = [
      await sheetTightening(tight('cover-screw')),
      await sheetTightening(tight('cover-screw'), { more: asked }),
    ];
    expect(withoutBands(banded)).not.toEqual(JSON.parse(JSON.stringify(banded)));
    expect(withoutBands(banded)).toEqual(JSON.parse(JSON.stringify(plain)));
  });

  test('leaves a torque that nobody states a blank', async () => {
    const sheet = await sheetTightening(tight('lock-nut'), { more: asked });
    expect(sheet.torqueTable[0]).not.toHaveProperty('primary');
    expect(sheet.torqueTable[0]?.bands).toEqual([
      expect.objectContaining({
        kind: 'band',
        of: 'Computed for M5×0.8, class 8 (strength from ISO 898-1); not the maker’s value; class of the rod end not known; without the prevailing torque',
      }),
    ]);
  });

  test('ends where the proof load is reached, where that comes first at the stated friction', async () => {
    const thread = readThreadDesignation('M6×1').designation;
    if (thread === undefined) throw new Error('M6×1 is a thread');
    const band = torqueBand({
      thread,
      face: faceForThread(thread),
      parts: [{ role: 'bolt', propertyClass: { system: 'ISO 898-1', name: '8.8' } }],
      friction: { kind: 'stated', thread: 0.06, face: 0.06 },
    });
    const [proof, high] = [band?.proof.torque ?? 0, band?.high.torque ?? 0];
    expect(proof).toBeLessThan(high);
    const [[slick] = []] = await bandsOf(tight('slim-bolt'));
    expect(slick).toMatchObject({ primary: expect.stringContaining(` to ${roughNumber(proof)} N·m`) });
    expect(roughNumber(proof)).not.toBe(roughNumber(high));
  });

  test.each([
    ['no thread is stated', tight('two-bolt'), 'no thread stated'],
    ['no class is stated', tight('left-nut'), 'no class stated'],
    ['no table has the class', tight('odd-bolt'), 'class not in the tables'],
    ['an angle follows', '{ tighten: cover-screw, torque: 4 N·m, angle: 60° }', 'an angle follows, and decides'],
    ['the angle is part of the torque', tight('stretch-bolt'), 'an angle follows, and decides'],
  ])('is a dash with the reason where %s', async (_, what, why) => {
    const rows = await bandsOf(what);
    expect(rows.length).toBeGreaterThan(0);
    for (const bands of rows) expect(bands.map((band) => band.kind === 'none' && band.why)).toEqual([why]);
  });

  test('is that of the picked build, and of the outcome where the row is for one', async () => {
    const [onA] = await bandsOf(tight('cap-nut'));
    expect(onA).toHaveLength(1);
    const rows = await bandsOf(tight('cap-nut'), { build: 'k2-b' });
    expect(rows.map((bands) => bands.map((band) => band.kind === 'band' && /class \d+/.exec(band.of)?.[0]))).toEqual([
      ['class 8'],
      ['class 10'],
    ]);
  });

  test('is not printed among what is loose', async () => {
    const { phases } = await sheetTightening(`{ fit: cover-screw }, ${tight('cover-screw')}`, { more: asked });
    expect(JSON.stringify(phases[0]?.looseEnds)).not.toContain('bands');
  });

  test('is a column of the page and of the printed table, with one note below', async () => {
    const sheet = await sheetTightening(`${tight('cover-screw')}, ${tight('left-nut')}`, { more: asked });
    const html = sheetToHtml(sheet, { mode: 'file' });
    const pdf = (await readPdf(await print(sheet))).pages.join(' ').replace(/\s+/gu, ' ');
    for (const page of [html, pdf]) {
      for (const words of ['Computed band', '2.7 to 12.4 N·m', '(24 to 110 lbf·in)', '– (no class stated)']) {
        expect(page).toContain(words);
      }
      expect(page.split('The maker’s value comes first')).toHaveLength(2);
    }
  });

  test('has a note that names the friction it is computed with', () => {
    const { lubricated, asDelivered } = usualFriction;
    expect(labels.computedBandNote).toContain(`${lubricated.toFixed(2)} to ${asDelivered.toFixed(2)}`);
  });
});
