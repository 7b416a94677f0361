// A small git repository with the samples and eight changes as a workshop makes them, for the tests of the review and for
// pictures: node tests/review/sampleHistory.mjs FOLDER
import { execFileSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { fileURLToPath, pathToFileURL } from 'node:url';

const SAMPLES = fileURLToPath(new URL('../../sample-procedures', import.meta.url));
const FAMILY = 'families/ostrel-v4.family.yaml';
const KIT = 'kits/v4-wheel-44.kit.yaml';
const HEAVY = 'procedures/h9-rebuild.procedure.yaml';
const WHEEL = 'procedures/v4-wheel-44.procedure.yaml';

/**
 * @typedef {{ subject: string, change: (files: Files) => void, told: readonly (readonly string[])[] }} Commit `told` is
 *   class, kind, kind of thing and key of every change that a review of it tells.
 * @typedef {{ edit(path: string, from: string | RegExp, to: string | ((...found: string[]) => string)): void, move(from: string, to: string): void }} Files
 */

/** @type {readonly Commit[]} */
export const COMMITS = [
  {
    subject: 'Tighten the compressor nut by the new drawing',
    change: (files) => {
      files.edit(FAMILY, '5.1 ± 0.3 N·m', '5.6 ± 0.3 N·m');
    },
    told: [['hurt', 'changed', 'part', 'torque']],
  },
  {
    subject: 'Take the new O-ring into the kit',
    change: (files) =>
      files.edit(
        KIT,
        /(number: )(OS-\d+)(, quantity: 1 \})/,
        (_all, key, number, rest) => `${key}${number}A${rest.replace(' }', `, replaces: ${number} }`)}`,
      ),
    told: [
      ['fits', 'changed', 'kit line', 'number'],
      ['fits', 'added', 'kit line', 'replaces'],
    ],
  },
  {
    subject: 'Say it shorter',
    change: (files) => files.edit(HEAVY, 'title: Take off the compressor wheel', 'title: Take the wheel off'),
    told: [['says', 'changed', 'step', 'title']],
  },
  {
    subject: 'Leave a remark for the next writer',
    change: (files) => files.edit(HEAVY, /^phases:/m, '# Checked against the unit on the bench.\nphases:'),
    told: [['looks', 'changed', 'procedure', '']],
  },
  {
    subject: 'Find the parts of a step by a better id',
    change: (files) => files.edit(HEAVY, /\bfit-cover-seal\b/g, 'fit-cover-o-ring'),
    told: [['looks', 'renamed', 'step', '']],
  },
  {
    subject: 'Take the ring of the cover before its seal',
    change: (files) =>
      files.edit(HEAVY, /( {6}- step: fit-cover-o-ring[\s\S]*?)( {6}- step: [\s\S]*?)(?= {6}- step: )/, '$2$1'),
    told: [['hurt', 'moved', 'step', '']],
  },
  {
    subject: 'Name the file by its number',
    change: (files) => files.move(WHEEL, 'procedures/op-415.procedure.yaml'),
    told: [['looks', 'renamed', 'procedure', '']],
  },
  {
    subject: 'Leave out what everybody knows',
    change: (files) => files.edit(HEAVY, /^ +(?:warning|caution): [^\n[{|>]+\n/m, ''),
    told: [['hurt', 'removed', 'instruction', 'caution']],
  },
];

/** Makes the repository; the first commit is tagged `issue-1`, each change is one commit more. */
export function makeSampleHistory(folder) {
  mkdirSync(folder, { recursive: true });
  if (existsSync(join(folder, '.git'))) throw new Error(`${folder} is a repository already`);
  cpSync(SAMPLES, folder, { recursive: true });
  rmSync(join(folder, 'faulty'), { recursive: true });
  const git = (...args) =>
    execFileSync('git', ['-C', folder, ...IDENTITY, ...args], { stdio: 'pipe', env: ENVIRONMENT });
  git('init', '-q', '-b', 'main');
  const commit = (subject) => {
    git('add', '-A');
    git('commit', '-q', '-m', subject);
  };
  commit('Release the procedures');
  git('tag', 'issue-1');
  for (const { subject, change } of COMMITS) {
    change(filesIn(folder));
    commit(subject);
  }
}

const IDENTITY = ['-c', 'user.name=Writer', '-c', 'user.email=writer@example.invalid', '-c', 'commit.gpgsign=false'];
const DAY = '2026-11-02T08:00:00Z';
const ENVIRONMENT = { ...process.env, GIT_AUTHOR_DATE: DAY, GIT_COMMITTER_DATE: DAY, GIT_CONFIG_GLOBAL: '/dev/null' };

/** @returns {Files} */
function filesIn(folder) {
  return {
    edit(path, from, to) {
      const text = readFileSync(join(folder, path), 'utf8');
      const next = text.replace(from, to);
      if (next === text) throw new Error(`${path} has no ${from}`);
      writeFileSync(join(folder, path), next);
    },
    move: (from, to) => renameSync(join(folder, from), join(folder, to)),
  };
}

if (process.argv[1] !== undefined && import.meta.url === pathToFileURL(process.argv[1]).href) {
  const [folder] = process.argv.slice(2);
  if (folder === undefined) throw new Error('Say in which folder');
  makeSampleHistory(folder);
}
