import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, onTestFinished, test } from 'vitest';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { readProofText } from '../../server/src/core/sheet/proofText';
import { type Ran, ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const given = inStep('- tighten: compressor-nut').files;
const procedure = EXAMPLE_PATHS.procedure;
const dated = (revision: string, date: string): string =>
  `revision: ${revision}\nrevisions:\n  - { revision: ${revision}, date: ${date}, what: Issued }\n`;
const text = (given[procedure] ?? '').replace(/^revision: .*\n/mu, '');
const files: Record<string, string> = { ...given, [procedure]: `${text}${dated('A', '2026-01-02')}` };
const number = /^procedure: (\S+)/mu.exec(text)?.[1] ?? '';

async function printTo(target: string, folder: string, ...more: string[]): Promise<void> {
  const { code, err } = await ran('sheet', join(folder, procedure), '--build', 'k1-a', '-o', target, ...more);
  expect([code, err]).toEqual([0, '']);
}

let once: Buffer | undefined;

/** A folder with documents and a sheet printed from them, which is the same wherever they lie. */
async function printed(): Promise<{ folder: string; sheet: string }> {
  const folder = temporaryFiles(files);
  const sheet = join(folder, 'sheet.pdf');
  if (once === undefined) await printTo(sheet, folder);
  once ??= readFileSync(sheet);
  writeFileSync(sheet, once);
  return { folder, sheet };
}

function change(folder: string, path: string, more = '# changed\n'): void {
  writeFileSync(join(folder, path), `${readFileSync(join(folder, path), 'utf8')}${more}`);
}

function git(folder: string, ...args: string[]): void {
  const identity = ['-c', 'user.name=Nobody', '-c', 'user.email=nobody@example.invalid', '-c', 'commit.gpgsign=false'];
  const { status, stderr } = spawnSync('git', [...identity, ...args], { cwd: folder, encoding: 'utf8' });
  expect(stderr.includes('fatal') || status !== 0, stderr).toBe(false);
}

/** Outside a repository even where the temporary folder lies in one. */
function withoutGit(folder: string): void {
  const before = process.env.GIT_CEILING_DIRECTORIES;
  process.env.GIT_CEILING_DIRECTORIES = dirname(folder);
  onTestFinished(() => {
    if (before === undefined) delete process.env.GIT_CEILING_DIRECTORIES;
    else process.env.GIT_CEILING_DIRECTORIES = before;
  });
}

describe('a sheet of the current text', () => {
  test('is current, and it is said that this finds no forgery', async () => {
    const { folder, sheet } = await printed();
    const { code, out, err } = await ran('verify', sheet, folder);
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Current: it is made from');
    expect(out).toContain(`${number} revision`);
    expect(out).toContain('no forgery');
  });

  test('stays so with other line ends, in another folder, and for its archive and its form', async () => {
    const { folder, sheet } = await printed();
    const [archive, form] = [join(folder, 'archive.pdf'), join(folder, 'form.pdf')];
    await printTo(archive, folder, '--archive');
    await printTo(form, folder, '--fillable');
    const elsewhere = temporaryFiles(
      Object.fromEntries(Object.entries(files).map(([path, content]) => [path, content.replaceAll('\n', '\r\n')])),
    );
    for (const file of [sheet, archive, form]) expect((await ran('verify', file, elsewhere)).code).toBe(0);
  });

  test('can be told by the code at the foot of a page alone', async () => {
    const { folder, sheet } = await printed();
    const whole = /WITNESSMARK;\S+?[0-9a-f]{64}/u.exec(readFileSync(sheet, 'latin1'))?.[0] ?? '';
    expect(readProofText(whole)?.document).toBe(number);
    expect((await ran('verify', '--code', whole.slice(0, -32), folder)).code).toBe(0);
    change(folder, procedure);
    expect((await ran('verify', '--code', whole.slice(0, -32), folder)).code).toBe(1);
  });
});

describe('a sheet of another text', () => {
  test.each(Object.keys(files).filter((path) => path !== 'witnessmark.yaml'))(
    'is not current once %s changes',
    async (path) => {
      const { folder, sheet } = await printed();
      withoutGit(folder);
      change(folder, path);
      const { code, out } = await ran('verify', sheet, folder);
      // Of the example's documents only those that the procedure names are its sources.
      const isSource = /changed/u.test(out);
      expect(code).toBe(isSource ? 1 : 0);
      if (path === procedure || path === EXAMPLE_PATHS.family) expect(isSource).toBe(true);
      if (isSource) expect(out).toContain(`changed ${path}`);
      if (isSource) expect(out).toContain('is in no git repository');
    },
  );

  test('is found in the history, whatever branch it is on and wherever the procedure lies now', async () => {
    const { folder, sheet } = await printed();
    git(folder, 'init', '-q', '-b', 'main');
    git(folder, 'add', '.');
    git(folder, 'commit', '-q', '-m', 'First issue\u001B[31m');
    change(folder, EXAMPLE_PATHS.family);
    git(folder, 'commit', '-q', '-a', '-m', 'Second issue');
    change(folder, procedure);
    git(folder, 'commit', '-q', '-a', '-m', 'Third issue');
    const { code, out } = await ran('verify', sheet, folder);
    expect(code).toBe(1);
    expect(out).toMatch(/It is the text of commit [0-9a-f]{10} of \d{4}-\d\d-\d\d, revision .*: First issue \[31m/u);
    rmSync(join(folder, procedure));
    git(folder, 'commit', '-q', '-a', '-m', 'Dropped');
    const gone = await ran('verify', sheet, folder);
    expect(gone.code).toBe(1);
    expect(gone.out).toContain(`No procedure in`);
    expect(gone.out).toContain('First issue');
  });

  test('that was never committed is told as such', async () => {
    const { folder, sheet } = await printed();
    change(folder, procedure);
    git(folder, 'init', '-q', '-b', 'main');
    git(folder, 'add', '.');
    git(folder, 'commit', '-q', '-m', 'Only this');
    const { code, out } = await ran('verify', sheet, folder);
    expect(code).toBe(1);
    expect(out).toContain('No commit has its text (1 searched)');
  });

  test('is told as such where git is not installed', async () => {
    const { folder, sheet } = await printed();
    change(folder, procedure);
    const path = process.env.PATH;
    process.env.PATH = '';
    const { code, out } = await ran('verify', sheet, folder);
    process.env.PATH = path;
    expect(code).toBe(1);
    expect(out).toContain('Its history could not be searched: the git program cannot be run');
  });

  test('is found among the released sheets, with the one that came after it', async () => {
    const { folder, sheet } = await printed();
    mkdirSync(join(folder, 'released'));
    renameSync(sheet, join(folder, 'released', 'first.pdf'));
    const first = join(folder, 'released', 'first.pdf');
    expect((await ran('verify', first, '--released', join(folder, 'released'))).out).toContain('Released: it is made');
    writeFileSync(join(folder, procedure), `${text}${dated('Z', '2027-01-01')}`);
    await printTo(join(folder, 'released', 'second.pdf'), folder);
    const { code, out } = await ran('verify', first, '--released', join(folder, 'released'));
    expect(code).toBe(1);
    expect(out).toMatch(/Superseded: .*first\.pdf.*; the newest is .*second\.pdf \(revision Z of 2027-01-01\)/u);
    expect((await ran('verify', first, folder, '--released', join(folder, 'released'))).out).toContain('Not current');
  });

  test('whose attached sources were exchanged is told as changed', async () => {
    const { folder, sheet } = await printed();
    const bytes = readFileSync(sheet);
    const at = bytes.indexOf('tighten: compressor-nut');
    expect(at).toBeGreaterThan(0);
    bytes.write('loosens', at);
    writeFileSync(sheet, bytes);
    const { code, out } = await ran('verify', sheet, folder);
    expect(code).toBe(1);
    expect(out).toContain('Changed after printing');
  });
});

describe('what cannot be verified', () => {
  const refused = async (...args: string[]): Promise<Ran> => {
    const answer = await ran('verify', ...args);
    expect(answer.code).toBe(2);
    return answer;
  };

  test('says why, each in a line', async () => {
    const folder = temporaryFiles({ 'text.pdf': 'hello', 'torn.pdf': '%PDF-1.7\n1 0 obj\n<<', 'empty.pdf': '' });
    expect((await refused(join(folder, 'none.pdf'))).err).toContain('there is no such file');
    expect((await refused(folder)).err).toContain('is not a file');
    expect((await refused(join(folder, 'text.pdf'))).err).toContain('is no PDF');
    expect((await refused(join(folder, 'empty.pdf'))).err).toContain('is no PDF');
    expect((await refused(join(folder, 'torn.pdf'))).err).toContain('is broken');
    expect((await refused()).err).toContain('Name one printed sheet');
    expect((await refused('a.pdf', 'b', 'c')).err).toContain('Name one printed sheet');
    expect((await refused('--code', 'hello')).err).toContain('begins with WITNESSMARK');
    expect(readdirSync(folder)).toHaveLength(3);
  });

  test('a sheet without the documents', async () => {
    const { sheet } = await printed();
    const empty = temporaryFiles({ 'other.procedure.yaml': 'procedure: OTHER\n' });
    withoutGit(empty);
    const { out } = await refused(sheet, empty);
    expect(out).toContain(`is ${number}.`);
    expect((await refused(sheet, '--released', empty)).out).toContain('holds no sheet of');
    expect((await refused(sheet, join(empty, 'nowhere'))).err).toContain('Cannot read');
  });

  test('a PDF that says nothing of its sources, and one that is locked', async () => {
    const { folder, sheet } = await printed();
    const plain = readFileSync(sheet, 'latin1').replaceAll('WITNESSMARK;', 'SOMETHING-A;');
    writeFileSync(join(folder, 'plain.pdf'), plain, 'latin1');
    expect((await refused(join(folder, 'plain.pdf'))).err).toContain('no step sheet of ours');
    if (spawnSync('qpdf', ['--version']).status !== 0) return;
    const locked = join(folder, 'locked.pdf');
    spawnSync('qpdf', ['--encrypt', 'user', 'owner', '256', '--', sheet, locked]);
    expect((await refused(locked)).err).toContain('locked with a password');
    // What another program wrote anew, compressed, still says what it said.
    const packed = join(folder, 'packed.pdf');
    spawnSync('qpdf', ['--object-streams=generate', '--recompress-flate', sheet, packed]);
    expect((await ran('verify', packed, folder)).code).toBe(0);
  });

  test('a folder that is called like an option of git', async () => {
    const { folder, sheet } = await printed();
    change(folder, procedure);
    mkdirSync(join(folder, '--upload-pack=touch x'));
    const { code } = await ran('verify', sheet, join(folder, '--upload-pack=touch x'));
    expect(code).toBe(2);
  });
});
