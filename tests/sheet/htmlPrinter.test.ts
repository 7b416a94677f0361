import { describe, expect, test } from 'vitest';
import { sheetToHtml } from '../../server/src/core/sheet/html';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { ostrelSheet } from './fixtures/ostrelSheet';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { act, caution, clockwise } from './fixtures/write';

const file = (sheet: Sheet): string => sheetToHtml(sheet, { mode: 'file' });
const preview = (sheet: Sheet): string => sheetToHtml(sheet, { mode: 'preview' });

/** The markup of the element that `start` opens, up to and with its end tag. */
function part(html: string, start: string, end: string): string {
  const from = html.indexOf(start);
  if (from < 0) throw new Error(`no ${start}`);
  return html.slice(from, html.indexOf(end, from) + end.length);
}

/** What a reader sees: the body without its tags. */
function words(html: string): string {
  return html
    .slice(html.indexOf('<body'))
    .replace(/<[^>]*>/gu, ' ')
    .replace(/\s+/gu, ' ');
}

describe('the HTML sheet', () => {
  test('opens and closes every element in order', () => {
    const open: string[] = [];
    for (const [, end, name = ''] of preview(ostrelSheet).matchAll(/<(\/?)([a-z][a-z0-9]*)(?:\s[^>]*?)?(?<!\/)>/giu)) {
      if (end === '/') expect(open.pop()).toBe(name);
      else if (!['meta', 'img'].includes(name)) open.push(name);
    }
    expect(open).toEqual([]);
  });

  test('numbers steps through the whole sheet', () => {
    const numbers = [...file(ostrelSheet).matchAll(/class="step-number">(\d+)</gu)].map((match) => Number(match[1]));
    expect(numbers).toEqual(Array.from({ length: 22 }, (_, index) => index + 1));
  });

  test('prints a torque with both units, the hand and the direction in words', () => {
    const text = words(file(ostrelSheet));
    expect(text).toContain('5.1 ± 0.3 N·m (45 ± 3 lbf·in) Turn counter-clockwise LEFT-HAND THREAD');
    expect(text).toContain('5.1 ± 0.3 N·m (45 ± 3 lbf·in) Turn clockwise (right-hand thread)');
    expect(text).toContain('Pass 1 4 N·m (35 lbf·in) Pass 2 7 N·m (62 lbf·in) Final 9 ± 1 N·m');
    expect(text).toContain('6 N·m (53 lbf·in) then turn 60°');
  });

  test('prints a caution before its act', () => {
    const text = words(file(ostrelSheet));
    expect(text.indexOf('The ring can fly off')).toBeLessThan(text.indexOf('Loosen the cover retaining ring'));
  });

  test('draws the alert symbol for every signal word but notice', () => {
    for (const word of ['danger', 'warning', 'caution', 'notice'] as const) {
      const html = file(smallSheet([oneStep('Step', [], { cautions: [caution(word, 'Take care.')] })]));
      const panel = part(html, `<div class="panel ${word}"`, 'Take care.');
      expect(panel.includes('<svg')).toBe(word !== 'notice');
      expect(panel).toContain(word.toUpperCase());
    }
  });

  test('gives a box to tick to an outcome, and none to a build', () => {
    const html = file(ostrelSheet);
    expect(part(html, '<section class="step" id="step-remove-nut"', '</section>')).toMatch(
      /class="tick"[^>]*><\/span><strong>Only when the compressor nut is left-hand/u,
    );
    expect(part(html, '<section class="step" id="step-find-hand"', '</section>')).toContain(
      '<p class="condition"><strong>V4-28R only',
    );
  });

  test('heads every table with column heads', () => {
    const tables = file(ostrelSheet).split('<table').slice(1);
    expect(tables.length).toBeGreaterThan(8);
    for (const table of tables) expect(table).toContain('<th scope="col"');
  });

  test('leaves out the parts that have nothing in them', () => {
    const html = file(smallSheet());
    for (const name of ['as-received', 'tools', 'consumables', 'torque-table', 'revisions', 'band']) {
      expect(html).not.toContain(`class="${name}"`);
    }
    expect(html).toContain('come first. If this sheet disagrees with any of them, stop and ask.');
  });

  test('counts one error and many', () => {
    expect(words(file(smallSheet([], { notReleased: { errors: 1 } })))).toContain('NOT RELEASED: 1 error ');
    expect(words(file(smallSheet([], { notReleased: { errors: 3 } })))).toContain('NOT RELEASED: 3 errors ');
  });
});

describe('the two modes', () => {
  test('the preview says where each step comes from', () => {
    const sheet = smallSheet([oneStep('Step', [])], {
      source: { uri: 'file:///a%20b/x.procedure.yaml', offsets: [412] },
    });
    expect(preview(sheet)).toContain('data-source-uri="file:///a%20b/x.procedure.yaml" data-source-offset="412"');
    expect(file(sheet)).not.toContain('a%20b');
  });

  test('the preview shows findings at their step, a file shows none', () => {
    const step = part(preview(ostrelSheet), '<section class="step" id="step-fit-compressor-nut"', '</section>');
    expect(words(`<body>${step}`)).toContain('Warning: The wrench reads to 4 %, the tolerance is 6 %');
    expect(file(ostrelSheet)).not.toContain('The wrench reads to 4 %');
  });

  test('a nonce is the only way for the style and the script to run', () => {
    const html = sheetToHtml(smallSheet(), {
      mode: 'preview',
      cspNonce: 'n0nce',
      previewScript: 'https://x.test/p.js',
    });
    expect(html).toContain('default-src &#39;none&#39;; style-src &#39;nonce-n0nce&#39;;');
    expect(html).toContain('<style nonce="n0nce">');
    expect(html).toContain('<script nonce="n0nce" src="https://x.test/p.js"></script></body>');
    expect(html).not.toContain('unsafe-inline');
  });

  test('a file runs no script and asks for nothing outside', () => {
    const html = file(ostrelSheet);
    expect(html).not.toMatch(/<script|\son[a-z]+=|\sstyle=|https?:\/\/(?!www\.w3\.org\/2000\/svg)/u);
    expect(html).toContain('default-src &#39;none&#39;');
  });
});

describe('hostile text', () => {
  const hostile = `"><script>alert('x')</script>&amp;<img src=x onerror="y">`;

  test('is shown as text wherever it stands', () => {
    const everywhere = JSON.parse(
      JSON.stringify(ostrelSheet, (key, value) => (typeof value === 'string' && !names.has(key) ? hostile : value)),
    ) as Sheet;
    const html = preview(everywhere);
    expect(html).not.toMatch(/<script|onerror="/u);
    expect(html.match(/&lt;script&gt;/gu)?.length).toBeGreaterThan(200);
  });

  const names = new Set([
    'kind',
    'word',
    'direction',
    'hand',
    'signalWord',
    'status',
    'severity',
    'language',
    'paper',
    'svg',
  ]);

  test('controls and marks that turn the reading order around are shown', () => {
    expect(file(smallSheet([oneStep('a\u202Eb\u0000c', [])]))).toContain('a\uFFFDb\uFFFDc');
  });

  test('a drawing is an image, so that no script in it runs', () => {
    const svg = '<svg viewBox="0 0 1 1"><script>alert(1)</script><text>⌀ é</text></svg>';
    const figures = [{ id: 'drawing', alt: 'A "quoted" drawing', image: { kind: 'svg', svg } as const }];
    const html = file(smallSheet([oneStep('Step', [], { figures })]));
    const [, data = ''] =
      /<img src="data:image\/svg\+xml;base64,([^"]*)" alt="A &quot;quoted&quot; drawing">/u.exec(html) ?? [];
    expect(Buffer.from(data, 'base64').toString('utf8')).toBe(
      svg.replace('<svg', '<svg xmlns="http://www.w3.org/2000/svg"'),
    );
  });
});

test('one tightening, as it is written', () => {
  const tighten = act('Tighten the [nut].', {
    torque: {
      fastener: 'Nut',
      setting: { kind: 'one', value: clockwise('9 ± 1 N·m', '80 ± 9 lbf·in') },
      tools: ['wrench'],
    },
    notes: [
      [
        { kind: 'text', text: 'See ' },
        { kind: 'stepLink', text: 'step 1', step: 'only-step' },
      ],
    ],
  });
  const html = file(smallSheet([oneStep('Tighten the nut', [tighten], { sign: 'inspector' })]));
  const step = part(html, '<section class="step"', '</section>');
  expect(step.replace(/<svg.*?<\/svg>/gu, '<svg/>').replaceAll('><', '>\n<')).toMatchSnapshot();
});

describe('what the walk tells', () => {
  const text = words(file(ostrelSheet));

  test('what is loose stands below its phase, with what it needs and where', () => {
    const at = text.indexOf('Finger-tight or loose after phase 2.');
    expect(at).toBeGreaterThan(text.indexOf('Phase 2 Strip'));
    expect(at).toBeLessThan(text.indexOf('Phase 3'));
    expect(text).toContain('Cover retaining ring To be seated 20');
    expect(text).toContain('6 N·m (53 lbf·in) , then turn 60° 21');
    expect(text).toContain('Oil inlet union Torque not stated: ask before you tighten none: ask');
    expect(text).toContain('When the clamp is renewed: 9 N·m 19');
    expect(text).toContain('Dummy bolt Nothing: it comes off again 10');
    expect(text.split('Finger-tight or loose after phase 2.').length).toBe(2);
  });

  test('there is a box for each temporary part, and room to write where there are many', () => {
    const section = part(file(ostrelSheet), '<section class="temporaries"', '</section>');
    expect(section.match(/☐ oil port blank/gu)).toHaveLength(2);
    expect(section).not.toContain('☐ guide pin');
    expect(words(`<body${section}`)).toContain('of 16');
  });

  test('each fate names its parts; what the bench decides is ticked in the record', () => {
    const section = part(file(ostrelSheet), '<section class="fates"', '</section>');
    expect(section).toContain('compressor cover, flange bolts (4)');
    expect(section).toContain('compressor wheel, to the customer');
    expect(section).toContain('seal plate');
    expect(section).not.toContain('☐ seal plate');
    for (const fate of ['Used again', 'Renewed', 'New to the unit', 'Given back', 'Sent out', 'Thrown away'])
      expect(section).toContain(`<strong>${fate}`);
  });
});
