import { afterAll, describe, expect, test } from 'vitest';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import { orderPicture } from '../../server/src/core/sheet/orderPicture';
import type { Instruction, Sheet, SheetLanguage } from '../../server/src/core/sheet/sheet';
import { closePdfEngines } from '../../server/src/node/pdf/pdfEngine';
import { print } from './fixtures/printPdf';
import { readPdf } from './fixtures/readPdf';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { act, clockwise } from './fixtures/write';

afterAll(closePdfEngines);

const left = { direction: 'counter-clockwise', hand: 'left' } as const;
const right = { direction: 'clockwise', hand: 'right' } as const;
const order = ['1', '3', '2', '4'];

/** One instruction for each block that a step can hold. */
const acts: Instruction[] = [
  act('Loosen the nut.', {
    turning: [
      { condition: 'When the hand is left', turn: { direction: 'clockwise', hand: 'left' } },
      { condition: 'When the hand is right', turn: { direction: 'counter-clockwise', hand: 'right' } },
    ],
  }),
  act('Tighten the screws.', {
    torque: {
      fastener: 'Cover screws (4)',
      setting: {
        kind: 'one',
        value: clockwise('9 ± 1 N·m', '80 ± 9 lbf·in', { passes: [{ primary: '4 N·m', secondary: '35 lbf·in' }] }),
      },
      tools: ['torque wrench 2–10 N·m'],
      inOrder: 'In the order 1, 3, 2, 4',
      grid: {
        rows: [{ kind: 'pass', number: 1 }, { kind: 'final' }],
        bands: [{ kind: 'ordered', first: 1, pieces: order }],
        picture: {
          id: 'order',
          alt: 'In the order 1, 3, 2, 4',
          image: { kind: 'svg', svg: orderPicture(order) ?? '' },
        },
      },
    },
  }),
  act('Tighten the nut.', {
    torque: {
      fastener: 'Nut',
      setting: {
        kind: 'byOutcome',
        branches: [
          { condition: 'L', setting: { kind: 'one', value: { primary: '5 N·m', passes: [], turn: left } } },
          { condition: 'R', setting: { kind: 'one', value: { primary: '5 N·m', passes: [], turn: right } } },
        ],
      },
      found: [
        { condition: 'When the hand is left', turn: left },
        { condition: 'When the hand is right', turn: right },
      ],
      tools: [],
      hold: 'Hold the hexagon.',
    },
  }),
  act('Tighten the bolts.', {
    torque: {
      fastener: 'Bolts (3)',
      setting: { kind: 'one', value: clockwise('6 N·m', '53 lbf·in', { angle: '60°' }) },
      tools: [],
      grid: {
        rows: [{ kind: 'torque' }, { kind: 'angle', angle: '60°' }],
        bands: [
          { kind: 'boxes', count: 2 },
          { kind: 'boxes', count: 1 },
        ],
      },
    },
  }),
  act('Measure.', {
    reading: { name: 'End play', unit: 'mm', limits: '0.04 to 0.09 mm', rows: [], places: [], rounds: 3 },
  }),
  act('Calculate.', {
    reading: { name: 'Clearance', unit: 'mm', limits: '0.028 to 0.042 mm', rows: [], places: [] },
    sum: {
      terms: [
        { sign: '+', name: 'Bore', amount: { kind: 'blank', unit: 'mm' } },
        { sign: '−', name: 'Journal', amount: { kind: 'blank', unit: 'mm' } },
        { sign: '−', name: '', amount: { kind: 'stated', text: '0.05 mm' } },
      ],
      result: { name: 'Clearance', unit: 'mm', limits: '0.028 to 0.042 mm' },
      rounds: 1,
    },
  }),
  act('Apply threadlocker.', { times: [{ kind: 'on' }, { kind: 'earliest', after: '24 h' }] }),
  act('Heat the wheel.', {
    times: [{ kind: 'in' }, { kind: 'out' }, { kind: 'temperature', unit: '°C', limits: '110 ± 5 °C' }],
  }),
  act('Find out the hand.', { choices: ['Left', 'Right'] }),
  act('Inspect the wheel.', { renewals: [{ part: 'Compressor wheel' }] }),
];

const sheetIn = (language: SheetLanguage, instructions = acts): Sheet =>
  smallSheet([oneStep('Work', instructions, { sign: 'inspector' })], { language });

/** The words of the first step, as they are read. */
function wordsOf(html: string): string {
  const from = html.indexOf('<ol class="instructions">');
  return html
    .slice(from, html.indexOf('</section>', from))
    .replace(/<[^>]*>/gu, ' ')
    .replace(/\s+/gu, ' ');
}

const html = (language: SheetLanguage): string => wordsOf(sheetToHtml(sheetIn(language), { mode: 'file' }));
const pdf = async (language: SheetLanguage): Promise<string> =>
  (await readPdf(await print(sheetIn(language)))).pages.join(' ');

/** What must be on paper and on the screen alike, in this order. */
const said = [
  'When the hand is left Turn clockwise LEFT-HAND THREAD',
  'When the hand is right Turn counter-clockwise (right-hand thread)',
  'Cover screws (4) Pass 1 4 N·m (35 lbf·in) Final 9 ± 1 N·m (80 ± 9 lbf·in) Turn clockwise (right-hand thread)',
  'Order 1 2 3 4 Piece 1 3 2 4 Pass 1 Final',
  'Black: order. White: piece. Not to scale.',
  'Nut 5 N·m When the hand is left Turn counter-clockwise LEFT-HAND THREAD When the hand is right Turn clockwise',
  'Hold the hexagon.',
  'then turn 60°',
  'Torque then turn 60°',
  'Limits: 0.04 to 0.09 mm Reading End play 1 mm 2 mm 3 mm',
  'Bore − Journal −',
  '= Clearance Limits: 0.028 to 0.042 mm mm − mm − 0.05 mm = mm',
  'Put on (date, time) Earliest spin or load: 24 h later',
  'Time in Time out Temperature, 110 ± 5 °C °C',
  'Left Right Initials',
  'Compressor wheel: used again renewed new number Initials',
  'HOLD POINT. Stop. Do not go on until signed by: inspector Name Signature Date Time Stamp',
];

function expectInOrder(words: string): void {
  let from = 0;
  for (const piece of said) {
    const at = words.indexOf(piece, from);
    expect(at, `${piece} in ${words.slice(from, from + 400)}`).toBeGreaterThanOrEqual(from);
    from = at + piece.length;
  }
}

describe('the blocks of a step', () => {
  test('are read in one order on the screen', () => expectInOrder(html('en')));

  test('are read in the same order on paper', async () => {
    // The template sets some words apart; only their order counts.
    expectInOrder((await pdf('en')).replace(/\s+/gu, ' '));
  });

  test.each(['de', 'es'] as const)('are printed in %s without a word of English', async (language) => {
    for (const words of [html(language), await pdf(language)]) {
      for (const english of ['LEFT-HAND', 'Order', 'Piece', 'Initials', 'Stamp', 'Put on', 'Time in', 'new number']) {
        expect(words).not.toContain(english);
      }
    }
  });

  test('leave out the order in words where the boxes stand in it', () => {
    expect(html('en')).not.toContain('In the order 1, 3, 2, 4');
  });

  test('give every box a name to read', () => {
    const markup = sheetToHtml(sheetIn('en'), { mode: 'file' });
    for (const name of ['Pass 1 3', 'Final 4', 'Compressor wheel renewed', 'Left', 'then turn 60°']) {
      expect(markup).toContain(`aria-label="☐ ${name}"`);
    }
    expect(markup).toMatch(/<img src="data:image\/svg\+xml;base64,[^"]+" alt="In the order 1, 3, 2, 4">/u);
  });
});

test('a torque stays on one page with its boxes', async () => {
  const torques = acts.slice(1, 3);
  const steps = Array.from({ length: 24 }, (_, index) => ({
    ...oneStep(`Title${index}x`, [act('and so on '.repeat(index * 9)), ...torques]),
    id: `step-${index}`,
    number: index + 1,
  }));
  const { pages } = await readPdf(await print(smallSheet(steps)));
  expect(pages.length).toBeGreaterThan(6);
  for (const text of pages) {
    expect(text.split('Cover screws (4)')).toHaveLength(text.split('Black: order.').length);
    expect(text.split('Hold the hexagon.')).toHaveLength(text.split('5 N·m').length);
  }
});
