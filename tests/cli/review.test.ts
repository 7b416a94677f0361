import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import MarkdownIt from 'markdown-it';
import { beforeAll, describe, expect, test } from 'vitest';
import { COMMITS, makeSampleHistory } from '../review/sampleHistory.mjs';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

const ON = ['--on', '2026-11-02'];
const git = (folder: string, ...args: string[]) =>
  execFileSync('git', ['-C', folder, ...args], { stdio: 'pipe' }).toString();

let history = '';
beforeAll(() => {
  history = mkdtempSync(join(tmpdir(), 'witnessmark é '));
  makeSampleHistory(history);
  return () => rmSync(history, { recursive: true, force: true });
});

interface Told {
  readonly class: string;
  readonly kind: string;
  readonly key?: string;
  readonly of: { readonly kind: string };
}

describe('each commit of the sample history', () => {
  test.each(COMMITS.map((commit, index) => [commit.subject, commit.told, COMMITS.length - index] as const))(
    '%s',
    async (_, told, back) => {
      const { out, err } = await ran(
        'review',
        `HEAD~${back}`,
        `HEAD~${back - 1}`,
        '--in',
        history,
        '--format',
        'json',
        ...ON,
      );
      expect(err).toBe('');
      const changes: Told[] = JSON.parse(out).changes;
      expect(changes.map((one) => [one.class, one.kind, one.of.kind, one.key ?? ''])).toEqual(told);
    },
  );
});

test('the whole history is read worst first, with what it reaches and the findings that are new', async () => {
  const { code, out } = await ran('review', 'issue-1', 'HEAD', '--in', history, ...ON);
  expect(code).toBe(1);
  expect(out).toMatch(/^issue-1 → HEAD: 5 files differ\n\nCould hurt \(3\)\n/);
  expect(out).toContain(
    '  Torque of part compressor nut: 5.1 ± 0.3 N·m → 5.6 ± 0.3 N·m\n      families/ostrel-v4.family.yaml:',
  );
  expect(out).toContain('reaches OP-410');
  expect(out).toContain('error torque-contradicts-family procedures/op-415.procedure.yaml:');
  expect(out).toMatch(
    /3 could hurt, 2 fits differently, 1 says it differently, 2 looks different; findings: \d+ new, 0 gone, 0 still there\n$/,
  );
});

test('the exit code is by what shall fail', async () => {
  const codes = [];
  for (const failOn of ['never', 'new-error', 'fits', 'hurt'])
    codes.push((await ran('review', 'HEAD~6', 'HEAD~5', '--in', history, '--fail-on', failOn, ...ON)).code);
  // The third commit words a title anew.
  expect(codes).toEqual([0, 0, 0, 0]);
  expect((await ran('review', 'HEAD~7', 'HEAD~6', '--in', history, '--fail-on', 'fits', ...ON)).code).toBe(1);
  expect((await ran('review', 'HEAD~7', 'HEAD~6', '--in', history, '--fail-on', 'hurt', ...ON)).code).toBe(0);
  expect((await ran('review', 'HEAD~1', 'HEAD', '--in', history, '--fail-on', 'hurt', ...ON)).code).toBe(1);
});

test('A..B is A and B; A...B begins where B did', async () => {
  const told = async (...names: string[]) =>
    (await ran('review', ...names, '--in', history, '--format', 'json', ...ON)).out;
  const plain = JSON.parse(await told('HEAD~2', 'HEAD'));
  expect(JSON.parse(await told('HEAD~2..HEAD')).changes).toEqual(plain.changes);
  expect(JSON.parse(await told('HEAD~2...HEAD')).changes).toEqual(plain.changes);
  expect(JSON.parse(await told('HEAD...HEAD~2')).changes).toEqual([]);
});

test('the working tree is compared where no second version is named, and nothing in the repository is written', async () => {
  const clone = join(temporaryFiles({}), 'a clone');
  git(history, 'clone', '-q', '--depth', '1', pathToFileURL(history).href, clone);
  const path = join(clone, 'procedures/v4-major.procedure.yaml');
  writeFileSync(path, readFileSync(path, 'utf8').replace(/^ +sign: \w+\n/m, ''));
  const before = git(clone, 'status', '--porcelain=v2');
  const index = readFileSync(join(clone, '.git/index'));
  const { out } = await ran('review', 'HEAD', '--in', clone, '--format', 'json', ...ON);
  expect(JSON.parse(out).changes.map((one: Told) => [one.class, one.kind, one.key])).toEqual([
    ['hurt', 'removed', 'sign'],
  ]);
  expect(readFileSync(join(clone, '.git/index')).equals(index)).toBe(true);
  expect(git(clone, 'status', '--porcelain=v2')).toBe(before);
  const shallow = await ran('review', 'HEAD~1', '--in', clone, ...ON);
  expect([shallow.code, shallow.err]).toEqual([2, expect.stringContaining('this clone is shallow')]);
});

test('a submodule, a link and what is in node_modules take no part', async () => {
  const folder = temporaryFiles({
    'procedures/one.procedure.yaml': 'witnessmark: 1\n',
    'node_modules/x/two.kit.yaml': 'a: 1\n',
  });
  const run = (...args: string[]) => git(folder, '-c', 'user.name=W', '-c', 'user.email=w@example.invalid', ...args);
  run('init', '-q', '-b', 'main');
  run('add', 'procedures');
  run('update-index', '--add', '--cacheinfo', `160000,${'1'.repeat(40)},module.kit.yaml`);
  run('commit', '-q', '-m', 'one');
  const { code, out } = await ran('review', 'HEAD', '--in', folder, ...ON);
  expect([code, out]).toEqual([0, expect.stringContaining('Nothing differs')]);
});

test('two folders are compared without git', async () => {
  const folder = temporaryFiles({
    'old/a.stores.yaml': STORES,
    'new/a.stores.yaml': STORES.replace('2..10 N·m', '2..12 N·m'),
  });
  const { code, out, err } = await ran('review', join(folder, 'old'), join(folder, 'new'), ...ON);
  expect(err).toBe('');
  expect(code).toBe(0);
  expect(out).toContain('Range of tool torque wrench: 2..10 N·m → 2..12 N·m (wider)');
});

const STORES =
  'witnessmark: 1\nstores: Bay 9\ntools:\n  torque-wrench-10:\n    name: torque wrench\n    kind: torque-wrench\n    range: 2..10 N·m\n';

test.each([
  ['nothing', [], 'Say what to compare with'],
  ['three versions', ['a', 'b', 'c'], 'Only two versions'],
  ['a revision that is none', ['no-such-branch'], 'There is no revision "no-such-branch"'],
  ['a revision that is an option', ['--', '--output=x'], '"--output=x" is no revision of git'],
])('%s is refused in one line', async (_, names, message) => {
  const { code, err } = await ran('review', '--in', history, ...names);
  expect(code).toBe(2);
  expect(err).toContain(message);
  expect(err.trim().split('\n')).toHaveLength(1);
});

test('a folder outside any repository is told what to do', async () => {
  const { code, err } = await ran('review', 'HEAD', '--in', temporaryFiles({}));
  expect([code, err]).toEqual([2, expect.stringMatching(/is in no git repository; give two folders to compare\n$/)]);
});

describe('a comment', () => {
  /** Names that would be markup, a link, a mention or a heading if they were taken for it. */
  const NAMES = [
    '*a* <b>@all</b> [x](y) `z`',
    '# not a heading',
    '- not a list',
    '1. nor this',
    '![p](q) | a | b |',
    '<!-- gone',
    '&amp; ~~s~~ __u__',
  ];

  test.each(NAMES)('shows %s as it is written', async (name) => {
    const folder = temporaryFiles({
      'old/a.stores.yaml': STORES,
      'new/a.stores.yaml': STORES.replace('name: torque wrench', `name: ${JSON.stringify(name)}`),
    });
    const { out } = await ran('review', join(folder, 'old'), join(folder, 'new'), '--format', 'md', ...ON);
    const shown = readMarkdown(out);
    expect(shown.text).toContain(name.replaceAll(/\s+/g, ' '));
    expect(shown.elements).not.toEqual(expect.arrayContaining(['a', 'img', 'table', 's']));
    expect(shown.elements.filter((one) => /^h[1-6]$/.test(one))).toEqual(['h3']);
  });

  test('has its parts folded where nothing could hurt, and says the same as the terminal', async () => {
    const { out } = await ran('review', 'issue-1', 'HEAD', '--in', history, '--format', 'md', ...ON);
    const { text } = readMarkdown(out);
    expect(text).toContain('Torque of part compressor nut: 5.1 ± 0.3 N·m → 5.6 ± 0.3 N·m');
    expect(text).toContain(
      'caution of “Lift the unit to the bench with the <hoist>.” removed'.replace('caution', 'Caution'),
    );
    expect(out.match(/<details>/g)?.length).toBe(out.match(/<\/details>/g)?.length);
  });
});

test('SARIF holds the new findings with their state', async () => {
  const { out } = await ran('review', 'HEAD~8', 'HEAD~7', '--in', history, '--format', 'sarif', ...ON);
  const [run] = JSON.parse(out).runs;
  expect(run.results.map((one: { baselineState: string; ruleId: string }) => [one.baselineState, one.ruleId])).toEqual([
    ['new', 'torque-contradicts-family'],
    ['new', 'torque-contradicts-family'],
  ]);
});

test('the page shows the changed steps of the sheets side by side, each place under a name of its own', async () => {
  const { out } = await ran(
    'review',
    'HEAD~1',
    'HEAD',
    '--in',
    history,
    '--format',
    'html',
    '--fail-on',
    'never',
    ...ON,
  );
  expect(out).toMatch(/^<!DOCTYPE html>\n<html lang="en">/);
  expect(out).toContain('default-src &#39;none&#39;');
  expect(out).not.toMatch(/<script|src="http/);
  const [before = '', after = ''] = out.split('class="side after"');
  expect(before).toContain('The unit weighs 34 kg. Do not lift it by hand.</p>');
  expect(after).not.toContain('The unit weighs 34 kg');
  const ids = [...out.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test('a step that prints as before is not shown twice', async () => {
  const { out } = await ran(
    'review',
    'HEAD~8',
    'HEAD~7',
    '--in',
    history,
    '--format',
    'html',
    '--fail-on',
    'never',
    ...ON,
  );
  expect(out).toContain('The sheet prints this step as before.');
  expect(out).not.toContain('class="side after"');
});

test('a broken document on either side is told and nothing stops', async () => {
  const folder = temporaryFiles({ 'old/a.stores.yaml': STORES, 'new/a.stores.yaml': 'tools: [\n' });
  mkdirSync(join(folder, 'empty'));
  const { code, out } = await ran('review', join(folder, 'old'), join(folder, 'new'), '--fail-on', 'hurt', ...ON);
  expect(code).toBe(1);
  expect(out).toContain('Tool torque wrench removed');
  const gone = await ran('review', join(folder, 'old'), join(folder, 'empty'), ...ON);
  expect(gone.out).toContain('Stores Bay 9 removed');
});

/** What a reader of Markdown makes of it: the words, and the elements around them. */
function readMarkdown(markdown: string): { readonly text: string; readonly elements: readonly string[] } {
  const tokens = new MarkdownIt({ html: true }).parse(markdown, {});
  const inline = tokens.flatMap((token) => [token, ...(token.children ?? [])]);
  const elements = inline.filter(({ nesting, tag }) => nesting >= 0 && tag !== '').map(({ tag }) => tag);
  const text = inline
    .filter(({ type }) => ['text', 'code_inline', 'text_special'].includes(type))
    .map(({ content }) => content);
  return { text: text.join(''), elements };
}
