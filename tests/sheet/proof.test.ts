import { createHash } from 'node:crypto';
import jsQR from 'jsqr';
import { describe, expect, test } from 'vitest';
import { Workspace } from '../../server/src/core/analysis/workspace';
import { proofOf } from '../../server/src/core/sheet/build/proof';
import { qrCodeSvg } from '../../server/src/core/sheet/proofCode';
import { codeText, proofText, readProofText } from '../../server/src/core/sheet/proofText';
import { MemoryFiles, openFiles } from '../support/memoryFiles';
import { smallSheet } from './fixtures/smallSheet';

const files = {
  'procedures/rebuild.procedure.yaml':
    'procedure: OP-1\nfamily: ../families/one.family.yaml\nstores: [../stores/bench.stores.yaml]\nphases: []\n',
  'families/one.family.yaml': 'family: one\nfigures:\n  ring: { file: ../figures/ring.svg, alt: A ring }\n',
  'stores/bench.stores.yaml': 'tools: {}\n',
  'figures/ring.svg': '<svg/>\n',
  'witnessmark.yaml': 'paper: letter\n',
  'procedures/other.procedure.yaml': 'procedure: OP-2\n',
};

async function proof(given: Readonly<Record<string, string>>) {
  const { workspace, document } = await openFiles(given, 'procedures/rebuild.procedure.yaml');
  return proofOf(workspace.snapshot, document.uri);
}

describe('the proof of origin', () => {
  test('names every source by its path from the folder of all, sorted, and no file beside them', async () => {
    expect((await proof(files)).builtFrom.map(({ name }) => name)).toEqual([
      'families/one.family.yaml',
      'figures/ring.svg',
      'procedures/rebuild.procedure.yaml',
      'stores/bench.stores.yaml',
      'witnessmark.yaml',
    ]);
  });

  test('is the SHA-256 of a checksum list that another program makes too', async () => {
    const { digest, short, builtFrom } = await proof(files);
    const sha = (text: string) => createHash('sha256').update(text).digest('hex');
    const list = builtFrom.map(({ name }) => `${sha(files[name as keyof typeof files])}  ${name}\n`).join('');
    expect(digest).toBe(sha(list));
    expect(short).toBe(`${digest.slice(0, 4)} ${digest.slice(4, 8)} ${digest.slice(8, 12)}`);
  });

  test('is the same for other line ends and with a byte order mark', async () => {
    const checkedOut = Object.fromEntries(
      Object.entries(files).map(([name, text]) => [name, `\uFEFF${text.replaceAll('\n', '\r\n')}`]),
    );
    expect((await proof(checkedOut)).digest).toBe((await proof(files)).digest);
  });

  test('is another one when any one of the sources is', async () => {
    const { digest, builtFrom } = await proof(files);
    for (const { name } of builtFrom) {
      const changed = { ...files, [name]: `${files[name as keyof typeof files]}# changed\n` };
      expect((await proof(changed)).digest, name).not.toBe(digest);
    }
    expect((await proof({ ...files, 'procedures/other.procedure.yaml': 'procedure: OP-3\n' })).digest).toBe(digest);
  });

  test('does not depend on where the folder lies', async () => {
    const root = 'file:///elsewhere/deep';
    const workspace = new Workspace([root]);
    const uri = `${root}/procedures/rebuild.procedure.yaml`;
    const memory = new MemoryFiles(files);
    await workspace.loadLinked(uri, { read: (at) => memory.read(at.replace(root, MemoryFiles.ROOT)) });
    expect(proofOf(workspace.snapshot, uri)).toEqual(await proof(files));
  });

  test('leaves out what is missing, and a procedure alone is named by its file', async () => {
    const { builtFrom } = await proof({ 'procedures/rebuild.procedure.yaml': 'family: ../families/one.family.yaml\n' });
    expect(builtFrom.map(({ name }) => name)).toEqual(['rebuild.procedure.yaml']);
  });
});

describe('what a sheet says of itself', () => {
  const digest = 'ab'.repeat(32);
  const header = { ...smallSheet().header, document: 'OP-410', revision: 'C', buildId: 'v4-28r,cover-44' };

  test('is read back whole from the properties, with half the digest from the code', () => {
    const said = { document: 'OP-410', revision: 'C', build: 'v4-28r,cover-44' };
    expect(proofText(header, digest)).toBe(`WITNESSMARK;OP-410;C;v4-28r,cover-44;${digest}`);
    expect(readProofText(proofText(header, digest))).toEqual({ ...said, digest });
    expect(readProofText(codeText(header, digest))).toEqual({ ...said, digest: 'ab'.repeat(16) });
  });

  test('may hold any character', () => {
    const odd = { ...header, document: 'A;B%41 "ü"\n\u202E', revision: '%', buildId: '螺' };
    const read = readProofText(proofText(odd, digest));
    expect(read).toEqual({ document: odd.document, revision: '%', build: '螺', digest });
    expect(proofText(odd, digest)).not.toMatch(/[\n\u202E]/u);
  });

  test('leaves a very long build out of the code, so that its squares stay large', () => {
    const long = { ...header, buildId: 'option,'.repeat(30) };
    expect(readProofText(codeText(long, digest))).toMatchObject({ document: 'OP-410', build: '' });
  });

  test.each(['', 'OP-410', 'WITNESSMARK;a;b;c;abc', `WITNESSMARK;a;b;c;d;${digest}`])(
    '%j is nothing of ours',
    (text) => {
      expect(readProofText(text)).toBeUndefined();
    },
  );

  test('stands in a code that a reader of another make reads', () => {
    for (const text of [codeText(header, digest), 'a', proofText(header, digest)]) {
      const { pixels, size } = drawn(qrCodeSvg(text), 4);
      expect(jsQR(pixels, size, size)?.data).toBe(text);
    }
  });

  test('is drawn in squares of a third of a millimetre or more on 16 mm', () => {
    const squares = Number(/viewBox="0 0 (\d+)/u.exec(qrCodeSvg(codeText(header, digest)))?.[1]);
    expect(16 / squares).toBeGreaterThanOrEqual(0.33);
  });
});

/** The drawing as pixels, black on white; it holds nothing but upright rectangles. */
function drawn(svg: string, scale: number): { pixels: Uint8ClampedArray; size: number } {
  const size = Number(/viewBox="0 0 (\d+)/u.exec(svg)?.[1]) * scale;
  const pixels = new Uint8ClampedArray(size * size * 4).fill(255);
  for (const [, x, y, width] of svg.matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/gu)) {
    for (let row = Number(y) * scale; row < (Number(y) + 1) * scale; row += 1) {
      const start = (row * size + Number(x) * scale) * 4;
      for (let at = 0; at < Number(width) * scale; at += 1) pixels.set([0, 0, 0, 255], start + at * 4);
    }
  }
  return { pixels, size };
}
