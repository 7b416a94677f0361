import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { beforeEach, expect, test } from 'vitest';
import { FileChecker } from '../../server/src/cli/checking/checkOne';
import { FileDigests } from '../../server/src/cli/checking/fileDigests';
import { ResultCache } from '../../server/src/cli/checking/resultCache';
import { uriOfPath } from '../../server/src/node/nodeFiles';
import { temporaryFiles } from '../support/temporaryFiles';

const TODAY = '2026-11-01';
const FAMILY =
  'witnessmark: 1\nfamily: one\nname: One\nvariants:\n  a: { name: A }\nparts:\n  core: { name: core }\nbase: core\n';
const PROCEDURE = `witnessmark: 1
procedure: P-1
title: One
revision: A
family: one.family.yaml
phases:
  - phase: Look
    steps:
      - step: look
        title: Look
        do: [{ inspect: core }]
`;

let folder = '';
const file = (name: string): string => join(folder, name);

beforeEach(() => {
  folder = temporaryFiles({ 'one.family.yaml': FAMILY, 'one.procedure.yaml': PROCEDURE });
});

async function checked(): Promise<ResultCache> {
  const cache = new ResultCache(file('cache'), ['program', TODAY], new FileDigests());
  const checker = new FileChecker([uriOfPath(folder)], TODAY);
  cache.keep(uriOfPath(file('one.procedure.yaml')), await checker.check(file('one.procedure.yaml')));
  cache.save();
  return cache;
}

function found(ground = ['program', TODAY]): boolean {
  const cache = new ResultCache(file('cache'), ground, new FileDigests());
  return cache.find(uriOfPath(file('one.procedure.yaml'))) !== undefined;
}

test('what an earlier run found is taken over while the files are the same', async () => {
  await checked();
  expect(found()).toBe(true);
  expect(found(['another program', TODAY])).toBe(false);
});

test('a changed document, a changed family and a file that turns up are each checked again', async () => {
  await checked();
  writeFileSync(file('one.procedure.yaml'), `${PROCEDURE}# one more line\n`);
  expect(found()).toBe(false);
  writeFileSync(file('one.procedure.yaml'), PROCEDURE);
  expect(found()).toBe(true);
  writeFileSync(file('one.family.yaml'), FAMILY.replace('name: core', 'name: body'));
  expect(found()).toBe(false);
  writeFileSync(file('one.family.yaml'), FAMILY);
  writeFileSync(file('witnessmark.yaml'), 'witnessmark: 1\n');
  expect(found()).toBe(false);
  rmSync(file('witnessmark.yaml'));
  expect(found()).toBe(true);
});

test('a text with a byte order mark is known again; what is no text is checked anew each time', async () => {
  writeFileSync(file('one.procedure.yaml'), `\uFEFF${PROCEDURE}# ü\n`);
  await checked();
  expect(found()).toBe(true);
  writeFileSync(file('one.procedure.yaml'), Buffer.concat([Buffer.from(PROCEDURE), Buffer.from([0x23, 0xff, 0x0a])]));
  await checked();
  expect(found()).toBe(false);
});

test('a cache that cannot be read is done without', async () => {
  await checked();
  for (const name of readdirSync(file('cache'))) writeFileSync(join(file('cache'), name), '[["torn');
  expect(found()).toBe(false);
});

/** The bundled program, which alone starts threads and remembers. */
function run(home: string, ...args: string[]): string {
  const { stdout, stderr } = spawnSync(process.execPath, ['server/dist/cli.js', 'check', '--on', TODAY, ...args], {
    encoding: 'utf8',
    env: { ...process.env, XDG_CACHE_HOME: home, LOCALAPPDATA: home, HOME: home, NO_COLOR: '1' },
  });
  return stdout + stderr;
}

test('many documents in several threads, and again from memory, tell the same as one after the other', () => {
  const many = file('many');
  mkdirSync(many);
  writeFileSync(join(many, 'one.family.yaml'), FAMILY);
  const steps = (i: number) => PROCEDURE.replace('inspect: core', i % 3 === 0 ? 'inspect: kore' : 'inspect: core');
  for (let i = 0; i < 130; i++) writeFileSync(join(many, `p${i}.procedure.yaml`), steps(i));
  const home = file('home');
  const atOnce = run(home, many);
  expect(atOnce.match(/error part-unknown/g)).toHaveLength(44);
  expect(run(home, many)).toBe(atOnce);
  expect(run(home, '--no-cache', many)).toBe(atOnce);
  // Few enough for one thread.
  const few = readdirSync(many)
    .slice(0, 20)
    .map((name) => join(many, name));
  for (const text of run(home, '--no-cache', ...few)
    .split('\n\n')
    .slice(0, -1))
    expect(atOnce).toContain(text);
  expect(readFileSync(join(many, 'p3.procedure.yaml'), 'utf8')).toBe(steps(3));
});
