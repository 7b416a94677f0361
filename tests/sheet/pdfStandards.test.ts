import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { getDocument } from 'pdfjs-dist/legacy/build/pdf.mjs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { Sheet } from '../../server/src/core/sheet/sheet';
import { sha256Hex } from '../../server/src/core/text/sha256';
import { closePdfEngines, type PdfStandard, renderPdf } from '../../server/src/node/pdf/pdfEngine';
import { print } from './fixtures/printPdf';
import { sampleSheet } from './fixtures/sampleSheets';
import { oneStep, smallSheet } from './fixtures/smallSheet';
import { jobOf, refusals } from './fixtures/strictEngine';
import { act } from './fixtures/write';

const samples = ['v4-wheel-44', 'h9-rebuild'];
const drawing = { kind: 'svg', svg: '<svg viewBox="0 0 9 9"><rect width="9" height="9"/></svg>' } as const;

afterAll(closePdfEngines);

describe("the engine's own strict mode", () => {
  test.each(samples)(
    'finds nothing in %s against PDF/UA-1, PDF/A-2a or PDF/A-3a',
    async (name) => {
      const files = jobOf(await sampleSheet(name));
      expect(refusals(files, ['ua-1', 'a-2a', 'a-3a'])).toEqual([]);
    },
    60_000,
  );

  test('does find a drawing without a text, so that its silence means something', () => {
    const files = jobOf(
      smallSheet([oneStep('Look', [], { figures: [{ id: 'ring', alt: 'A ring', image: drawing }] })]),
    );
    expect(refusals(files, ['ua-1'])).toEqual([]);
    const data = JSON.parse(new TextDecoder().decode(files.get('data.json')));
    data.sheet.phases[0].steps[0].figures[0].alt = null;
    files.set('data.json', new TextEncoder().encode(JSON.stringify(data)));
    expect(refusals(files, ['ua-1']).join()).toContain('alt');
  });
});

describe('a printed sheet', () => {
  let sheet: Sheet;
  let files: Record<PdfStandard, Uint8Array>;
  beforeAll(async () => {
    sheet = await sampleSheet('v4-wheel-44');
    const [tagged, ua, archive] = [
      await print(sheet, { standard: 'tagged' }),
      await print(sheet),
      await print(sheet, { standard: 'archive' }),
    ];
    files = { tagged, ua, archive };
  }, 60_000);

  test('names the standards that it is made to, in its properties', async () => {
    expect(await standardsOf(files.tagged)).toEqual([undefined, undefined, undefined]);
    expect(await standardsOf(files.ua)).toEqual(['1', undefined, undefined]);
    expect(await standardsOf(files.archive)).toEqual(['1', '3', 'A']);
  });

  test('differs for each of them, also in its name, while the document keeps one name', () => {
    const ids = Object.values(files).map((bytes) => /\/ID \[(\S+) <([0-9a-f]{32})>\]/u.exec(text(bytes)));
    expect(new Set(ids.map((id) => id?.[1])).size).toBe(1);
    expect(new Set(ids.map((id) => id?.[2])).size).toBe(3);
  });

  test('carries its sources whole: their digests are those that it names', async () => {
    for (const bytes of Object.values(files)) {
      const attached = await attachmentsOf(bytes);
      expect(attached.size).toBeGreaterThan(5);
      expect(attached).toEqual(new Map(sheet.proof?.builtFrom.map(({ name, text }) => [name, text])));
      for (const { name, sha } of sheet.proof?.builtFrom ?? []) expect(sha256Hex(attached.get(name) ?? '')).toBe(sha);
    }
  });

  test('shows its title, and for the archive names its colours', () => {
    for (const bytes of Object.values(files)) expect(text(bytes)).toContain('/DisplayDocTitle true');
    expect(text(files.ua)).not.toContain('/OutputIntents');
    expect(text(files.archive)).toContain('/OutputIntents [');
  });

  test('has a bookmark for each phase and each step', async () => {
    const task = getDocument({ data: files.ua.slice(), verbosity: 0 });
    const outline = await (await task.promise).getOutline();
    const titles = JSON.stringify(outline);
    for (const phase of sheet.phases) {
      expect(titles).toContain(phase.title);
      for (const step of phase.steps) expect(titles).toContain(step.title.replaceAll('"', '\\"'));
    }
    await task.destroy();
  });

  test.runIf(spawnSync('qpdf', ['--version']).status === 0)(
    'has a structure that qpdf finds no fault in',
    () => {
      const folder = mkdtempSync(join(tmpdir(), 'witnessmark-qpdf-'));
      for (const [standard, bytes] of Object.entries(files)) {
        const path = join(folder, `${standard}.pdf`);
        writeFileSync(path, bytes);
        expect(spawnSync('qpdf', ['--check', path], { encoding: 'utf8' }).status).toBe(0);
        const json = spawnSync('qpdf', ['--json', '--json-key=qpdf', path], {
          encoding: 'utf8',
          maxBuffer: 1e9,
        }).stdout;
        for (const entry of ['/Lang', '/MarkInfo', '/StructTreeRoot', '/Outlines', '/AF'])
          expect(json).toContain(entry);
      }
      rmSync(folder, { recursive: true });
    },
    60_000,
  );
});

test('an archived sheet needs a day, and says so', async () => {
  const sheet = smallSheet([oneStep('Look', [act('Look.')])]);
  delete sheet.header.revisionDate;
  const printed = await renderPdf(sheet, new Map(), { standard: 'archive' });
  expect(printed).toEqual({ problem: { kind: 'archiveWithoutDate' } });
  expect(await print(sheet)).toBeInstanceOf(Uint8Array);
});

function text(bytes: Uint8Array): string {
  return Buffer.from(bytes).toString('latin1');
}

/** PDF/UA part, PDF/A part and PDF/A level, as a reader of another make finds them. */
async function standardsOf(bytes: Uint8Array): Promise<(string | undefined)[]> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const { metadata } = await (await task.promise).getMetadata();
  const found = ['pdfuaid:part', 'pdfaid:part', 'pdfaid:conformance'].map((name) => metadata?.get(name) ?? undefined);
  await task.destroy();
  return found as (string | undefined)[];
}

async function attachmentsOf(bytes: Uint8Array): Promise<Map<string, string>> {
  const task = getDocument({ data: bytes.slice(), verbosity: 0 });
  const attached = (await (await task.promise).getAttachments()) as Record<string, { content: Uint8Array }> | null;
  const files = Object.entries(attached ?? {}).map(([key, { content }]) => [key, content] as const);
  const decoder = new TextDecoder();
  await task.destroy();
  return new Map(files.map(([name, content]) => [name, decoder.decode(content)]));
}
