import { describe, expect, test } from 'vitest';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { filesWith, procedureWith, STORES, sheetOf, sheetOfFiles } from './fixtures/bench';

const steps = (lines: Record<string, string[]>): string =>
  `phases:\n  - phase: Work\n    steps:\n${Object.entries(lines)
    .map(([id, acts]) => `      - { step: ${id}, title: ${id}, do: [${acts.map((act) => `{ ${act} }`).join(', ')}] }\n`)
    .join('')}`;

describe('the slip for parts sent out', () => {
  test('is one for each place, with every part, what comes back with it, and where it is taken in again', async () => {
    const sheet = await sheetOf(
      steps({
        strip: ['remove: cover-screw', 'remove: cover'],
        out: [
          'send: [cover, core], to: "the shop, to bore it", certificate: a report',
          'send: bearing, to: the coater',
          'receive: cover',
        ],
        back: ['receive: core'],
      }),
    );
    const sent = [{ step: 2, stepId: 'out' }];
    expect(sheet.slips).toEqual([
      {
        to: 'the shop, to bore it',
        lines: [
          { part: 'cover', certificate: 'a report', hasSerial: false, sent, back: sent },
          { part: 'core housing', certificate: 'a report', hasSerial: true, sent, back: [{ step: 3, stepId: 'back' }] },
        ],
      },
      { to: 'the coater', lines: [{ part: 'bearings (2)', hasSerial: false, sent, back: [] }] },
    ]);
  });

  test('a second sending has its own way back', async () => {
    const twice = { one: ['send: cover, to: A'], two: ['receive: cover'], three: ['send: cover, to: B'] };
    const { slips } = await sheetOf(steps(twice));
    expect(slips.map(({ lines }) => lines[0]?.back)).toEqual([[{ step: 2, stepId: 'two' }], []]);
  });

  test('a build that sends nothing has none', async () => {
    const text = steps({ one: ['send: cover, to: A, when: k2-b'] });
    expect((await sheetOf(text, { build: 'k2-a' })).slips).toEqual([]);
    expect((await sheetOf(text, { build: 'k2-b' })).slips).toHaveLength(1);
  });
});

describe('what goes with the unit', () => {
  test('caps are counted from the last step that fits them', async () => {
    const stores = `${STORES}  caps: { name: port caps, kind: plug-cap }\n`;
    const text = procedureWith(
      steps({ one: ['say: Close., using: caps'], two: ['say: Close all., using: [caps, degreaser]'] }),
    );
    const sheet = await sheetOfFiles({ ...filesWith(text), 'stores/bay-1.stores.yaml': stores });
    expect(sheet.portCaps).toEqual([{ name: 'port caps', at: [{ step: 2, stepId: 'two' }] }]);
  });

  test('figures of the document that the build does not show are named', async () => {
    const figures = `figures:
  shown: { file: a.svg, alt: A picture, caption: The one }
  hidden: { file: b.svg, alt: Another picture, caption: The other }
`;
    const text = `${figures}${steps({ one: ['install: cover, figure: shown', 'install: wheel, figure: hidden, when: k2-b'] })}`;
    const captions = async (build: string): Promise<Sheet['figuresNotNeeded']> =>
      (await sheetOf(text, { build })).figuresNotNeeded;
    expect(await captions('k2-a')).toEqual(['The other']);
    expect(await captions('k2-b')).toEqual([]);
  });
});
