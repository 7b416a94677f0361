import { describe, expect, test } from 'vitest';
import { DEFAULT_SETTINGS } from '../../server/src/core/analysis/settings';
import { buildsOf } from '../../server/src/core/builds';
import { buildSheet } from '../../server/src/core/sheet/buildSheet';
import type { LooseEnd, Sheet } from '../../server/src/core/sheet/sheet';
import { FAMILY, filesWith, PATH, procedureWith, type SheetWish, sheetOfFiles, viewOf } from './fixtures/bench';
import { printedOnly } from './fixtures/printedOnly';

const MORE_PARTS = `  blank: { name: oil blank, quantity: 2, temporary: true, sits-on: core }
  pin: { name: guide pin, temporary: true, sits-on: core }
  insert: { name: cover insert, sits-on: core, when: big-wheel }
  rod-end:`;

/** A sheet of phases, each with steps written as id and instructions. */
function sheetFrom(phases: Record<string, Record<string, string[]>>, wish: SheetWish = {}, head = ''): Promise<Sheet> {
  const lines = Object.entries(phases).flatMap(([phase, steps]) => [
    `  - phase: ${phase}`,
    '    steps:',
    ...Object.entries(steps).flatMap(([id, acts]) => [
      `      - { step: ${id}, title: ${id}, do: [${acts.map((act) => (act.startsWith('{') ? act : `{ ${act} }`)).join(', ')}] }`,
    ]),
  ]);
  const files = filesWith(procedureWith(`${head}phases:\n${lines.join('\n')}\n`));
  const family = FAMILY.replace('  rod-end:', MORE_PARTS);
  return sheetOfFiles({ ...files, 'families/pellow-k2.family.yaml': family }, wish);
}

const looseAfter = (sheet: Sheet, phase: number): LooseEnd[] => sheet.phases[phase]?.looseEnds ?? [];

const fatesIn = (sheet: Sheet): Record<string, string[]> =>
  Object.fromEntries(
    sheet.fates.map(({ kind, lines }) => [
      kind,
      lines.map(({ part, condition }) => (condition === undefined ? part : `${part}: ${condition.text}`)),
    ]),
  );

const OFF = ['loosen: cover-ring', 'remove: cover-screw', 'remove: cover', 'remove: cover-seal'];
const ON = ['install: cover-seal', 'install: cover', 'install: cover-screw'];

describe('what is loose as a phase ends', () => {
  test('a fastener that was started has the torque that a later step gives it, and says where', async () => {
    const sheet = await sheetFrom({
      Strip: { strip: OFF },
      Build: { build: ON },
      Close: { close: ['tighten: cover-screw', 'seat: cover-ring'] },
    });
    expect(printedOnly(looseAfter(sheet, 1))).toEqual([
      {
        what: 'Cover screws (4)',
        need: {
          kind: 'torque',
          setting: { kind: 'one', value: { primary: '9 ± 1 N·m', secondary: '80 ± 9 lbf·in', passes: [] } },
        },
        at: [{ step: 3, stepId: 'close' }],
      },
      { what: 'Cover ring', need: { kind: 'seat' }, at: [{ step: 3, stepId: 'close' }] },
    ]);
    expect(looseAfter(sheet, 2)).toEqual([]);
  });

  test('only the pieces that are not tight are counted', async () => {
    const sheet = await sheetFrom({
      Strip: { strip: OFF },
      Build: { build: [...ON, '{ tighten: cover-screw, count: 3 }'] },
      Close: { close: ['{ tighten: cover-screw, count: 1 }'] },
    });
    expect(looseAfter(sheet, 1).map((end) => end.what)).toEqual(['Cover screws (1 of 4)', 'Cover ring']);
  });

  test('a pass leaves it loose, and what it needs is the last one', async () => {
    const sheet = await sheetFrom({
      Strip: { strip: OFF },
      Build: { build: [...ON, '{ tighten: cover-screw, passes: [3 ± 1 N·m] }'] },
      Close: { close: ['{ tighten: cover-screw, passes: [5 ± 1 N·m, 9 ± 1 N·m] }'] },
    });
    expect(looseAfter(sheet, 1)[0]).toMatchObject({
      need: { setting: { value: { primary: '9 ± 1 N·m', passes: [] } } },
      at: [{ step: 3 }],
    });
  });

  test('what comes off again needs no torque', async () => {
    const sheet = await sheetFrom({
      Loosen: { loosen: ['loosen: cover-screw'] },
      Strip: { strip: ['remove: cover-screw'] },
    });
    expect(looseAfter(sheet, 0)).toEqual([
      { what: 'Cover screws (4)', need: { kind: 'off' }, at: [{ step: 2, stepId: 'strip' }] },
    ]);
  });

  test('what no later step makes tight has the torque of the family and no step', async () => {
    const sheet = await sheetFrom({ Loosen: { loosen: ['loosen: cover-screw', 'loosen: bare-nut'] } });
    expect(looseAfter(sheet, 0)).toMatchObject([
      { what: 'Cover screws (4)', need: { setting: { value: { primary: '9 ± 1 N·m' } } }, at: [] },
    ]);
  });

  test('a fastener without a torque counts once the work tightens it, and its torque stays blank', async () => {
    const sheet = await sheetFrom({
      Loosen: { loosen: ['loosen: bare-nut'] },
      Close: { close: ['tighten: bare-nut'] },
    });
    expect(looseAfter(sheet, 0)).toEqual([
      {
        what: 'Bare nut',
        need: { kind: 'torque', setting: { kind: 'blank' } },
        at: [{ step: 2, stepId: 'close' }],
      },
    ]);
  });

  test('a torque that the bench decides has a value for each outcome; the hand alone makes no difference', async () => {
    const sheet = await sheetFrom(
      {
        Look: { look: ['identify: nut-hand', '{ inspect: wheel, if-not: { replace: wheel } }'] },
        Loosen: { loosen: ['loosen: two-bolt', 'loosen: cap-nut'] },
        Close: { close: ['tighten: two-bolt', 'tighten: cap-nut'] },
      },
      { build: 'k2-b' },
    );
    expect(looseAfter(sheet, 1).map(({ what, need }) => [what, need])).toEqual([
      [
        'Cap nut',
        { kind: 'torque', setting: { kind: 'one', value: expect.objectContaining({ primary: '5.1 ± 0.3 N·m' }) } },
      ],
      [
        'Bolts of the outlet (2)',
        {
          kind: 'torque',
          setting: {
            kind: 'byOutcome',
            branches: [
              { condition: 'When the wheel is used again', setting: expect.objectContaining({ kind: 'one' }) },
              { condition: 'When the wheel is renewed', setting: expect.objectContaining({ kind: 'one' }) },
            ],
          },
        },
      ],
    ]);
  });

  test('what is loose for one outcome only says for which', async () => {
    const sheet = await sheetFrom(
      {
        Look: { look: ['identify: nut-hand', '{ loosen: cover-screw, when: nut-hand=left }'] },
        Close: { close: ['{ tighten: cover-screw, when: nut-hand=left }'] },
      },
      { build: 'k2-b' },
    );
    expect(looseAfter(sheet, 0)).toMatchObject([
      { what: 'Cover screws (4)', condition: { kind: 'outcome', text: 'Only when the hand of the cap nut is left' } },
    ]);
  });

  test('a way on which the unit is rejected leaves nothing to hand over; a way that goes on is named', async () => {
    const failing = (end: string) =>
      sheetFrom({
        Look: { look: [`{ measure: end-play, if-not: { do: [{ loosen: cover-screw }]${end} } }`] },
        Close: { close: ['tighten: cover-screw'] },
      });
    expect(looseAfter(await failing(', reject: true'), 0)).toEqual([]);
    expect(looseAfter(await failing(''), 0)).toMatchObject([
      { condition: { text: 'Only when the end play of the rotor is not right' } },
    ]);
  });

  test('what an optional step makes tight is loose where that step is left out', async () => {
    const sheet = await sheetOfFiles(
      filesWith(
        procedureWith(`phases:
  - phase: Loosen
    steps:
      - { step: loosen, title: Loosen, do: [{ loosen: cover-screw }] }
      - { step: nip, title: Nip it up, optional: true, do: [{ tighten: cover-screw }] }
  - phase: Close
    steps:
      - { step: close, title: Close, do: [{ tighten: cover-screw }] }
`),
      ),
    );
    expect(looseAfter(sheet, 0)).toMatchObject([
      { condition: { kind: 'outcome', text: 'Only when step “Nip it up” is left out' }, at: [{ step: 3 }] },
    ]);
  });

  test('another build has its own', async () => {
    const phases = { Loosen: { loosen: ['{ loosen: cover-screw, when: k2-b }', 'loosen: left-nut'] } };
    const whats = async (build: string) => looseAfter(await sheetFrom(phases, { build }), 0).map((end) => end.what);
    expect(await whats('k2-a')).toEqual(['Left nut']);
    expect(await whats('k2-b')).toEqual(['Cover screws (4)', 'Left nut']);
  });
});

describe('what becomes of the parts', () => {
  test('only parts that the work takes off or fits are named, each with what it comes to', async () => {
    const sheet = await sheetFrom({
      Strip: { strip: [...OFF, 'remove: cap-nut', 'remove: wheel', '{ inspect: wheel, if-not: { replace: wheel } }'] },
      Build: { build: ['install: wheel', 'install: cap-nut', 'tighten: cap-nut', ...ON, 'tighten: cover-screw'] },
    });
    expect(fatesIn(sheet)).toEqual({
      used: ['cover', 'cover screws (4)'],
      bench: ['wheel'],
      renewed: ['cover O-ring', 'cap nut'],
    });
  });

  test('what leaves the bench says whom to and in which step', async () => {
    const sheet = await sheetFrom({
      Strip: {
        strip: [...OFF, 'remove: rod-end'],
        clear: ['{ return: cover, to: the owner }', 'discard: cover-screw', '{ send: rod-end, to: the plater }'],
      },
    });
    expect(sheet.fates).toEqual([
      { kind: 'returned', lines: [{ part: 'cover', to: 'the owner', at: [{ step: 2, stepId: 'clear' }] }] },
      { kind: 'sent', lines: [{ part: 'rod end', to: 'the plater', at: [{ step: 2, stepId: 'clear' }] }] },
      {
        kind: 'discarded',
        lines: [
          { part: 'cover screws (4)', at: [{ step: 2, stepId: 'clear' }] },
          { part: 'cover O-ring', at: [{ step: 1, stepId: 'strip' }] },
        ],
      },
    ]);
  });

  test('a part that nothing is said of is off; one that comes back is used again', async () => {
    const sheet = await sheetFrom({
      Strip: { strip: ['remove: rod-end', 'remove: pinned', 'send: rod-end', 'receive: rod-end', 'install: rod-end'] },
    });
    expect(fatesIn(sheet)).toEqual({ used: ['rod end'], off: ['seal plate'] });
  });

  test('a part of an option is new where the unit came without it', async () => {
    const phases = { Build: { build: ['{ install: insert, unless: arrives=big-wheel }'] } };
    const head = 'covers: { variants: [k2-b], options: [big-wheel] }\nadds: [big-wheel]\n';
    const added = await sheetFrom(phases, { build: 'k2-b,big-wheel' }, head);
    expect(fatesIn(added)).toEqual({ new: ['cover insert: Only when the unit arrived without the big wheel'] });
    expect(added.asReceived?.arrivals).toEqual([
      { what: 'The unit arrived with the big wheel', values: ['Yes', 'No'], expected: 'either' },
    ]);
    expect(fatesIn(await sheetFrom(phases, { build: 'k2-b,arrives=big-wheel' }, head))).toEqual({});
    expect(fatesIn(await sheetFrom(phases, { build: 'k2-b' }, head))).toEqual({});
  });

  test('a part that an outcome decides alone stands under both, each with its condition', async () => {
    const sheet = await sheetFrom(
      {
        Strip: {
          strip: [
            'identify: nut-hand',
            'remove: pinned',
            '{ discard: pinned, when: nut-hand=left }',
            'install: pinned',
          ],
        },
      },
      { build: 'k2-b' },
    );
    expect(fatesIn(sheet)).toEqual({
      used: ['seal plate: Only when the hand of the cap nut is right'],
      renewed: ['seal plate: Only when the hand of the cap nut is left'],
    });
  });
});

describe('the tally of temporary parts', () => {
  test('counts what goes in, with the steps in and out, and leaves out what is never used', async () => {
    const sheet = await sheetFrom({
      Work: {
        open: ['{ install: blank, count: 1 }'],
        more: ['{ install: blank, count: 1 }'],
        close: ['remove: blank'],
      },
    });
    expect(sheet.temporaries).toEqual([
      {
        part: 'oil blank',
        count: 2,
        in: [
          { step: 1, stepId: 'open' },
          { step: 2, stepId: 'more' },
        ],
        out: [{ step: 3, stepId: 'close' }],
      },
    ]);
    expect(sheet.fates).toEqual([]);
  });

  test('a blank that goes in twice is counted twice, and one that stays in has no step out', async () => {
    const sheet = await sheetFrom({
      Work: { one: ['install: pin', 'remove: pin'], two: ['install: pin', 'install: blank'], three: ['remove: pin'] },
    });
    expect(sheet.temporaries.map(({ part, count, out }) => [part, count, out.map(({ step }) => step)])).toEqual([
      ['oil blank', 2, []],
      ['guide pin', 2, [1, 3]],
    ]);
  });

  test('what goes in for one outcome only says for which, and what is done over again is not counted again', async () => {
    const sheet = await sheetFrom(
      {
        Work: {
          open: ['identify: nut-hand', '{ install: pin, when: nut-hand=left }'],
          close: ['{ remove: pin, when: nut-hand=left }', '{ measure: end-play, if-not: { go-to: open, at-most: 2 } }'],
        },
      },
      { build: 'k2-b' },
    );
    expect(sheet.temporaries).toMatchObject([
      { part: 'guide pin', count: 1, condition: { text: 'Only when the hand of the cap nut is left' } },
    ]);
  });
});

test('without its family nothing is known of any part', async () => {
  const rest = 'phases: [{ phase: Work, steps: [{ step: s, title: S, do: [{ loosen: cover-screw }] }] }]\n';
  const view = await viewOf({ [PATH]: procedureWith(rest) });
  const set = view.space.everything;
  const [build] = buildsOf(set, view.space, 1);
  if (build === undefined) throw new Error('There is no build at all');
  const options = { findings: [], settings: DEFAULT_SETTINGS, language: 'en', paper: 'a4' } as const;
  const sheet = buildSheet(view, { build, set }, options);
  expect([sheet.phases[0]?.looseEnds, sheet.temporaries, sheet.fates]).toEqual([[], [], []]);
});
