import { execFile, spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { delimiter, dirname, join } from 'node:path';
import { expect, test } from 'vitest';
import { temporaryFiles } from '../support/temporaryFiles';

const root = join(import.meta.dirname, '../..');
const NAME = 'torque-without-a-unit.procedure.yaml';
const LINKED = ['wexley-w1.family.yaml', 'wexley-w1.kit.yaml', 'wexley.stores.yaml'];

/** Neovim is a client that we have not written; where it is not installed, our own in the other tests has to do. */
const isInstalled = process.platform !== 'win32' && spawnSync('nvim', ['--version']).status === 0;
if (!isInstalled) console.info('tests/lsp/neovim.test.ts is left out: there is no nvim on the path');

interface Seen {
  readonly failed?: string;
  readonly root: string;
  readonly findings: readonly unknown[];
  readonly hover: readonly string[];
  readonly fixes: readonly string[];
  readonly fixed: string;
  readonly left: readonly unknown[];
  readonly offered: readonly string[];
  readonly taken: string;
  readonly text: string;
  readonly told: readonly string[];
}

function sample(name: string): string {
  return readFileSync(join(root, 'sample-procedures/faulty', name), 'utf8');
}

/** The block of the readme that somebody copies into their init.lua. */
function blockOfReadme(): string {
  const block = /^```lua\n([\s\S]*?)^```$/m.exec(readFileSync(join(root, 'README.md'), 'utf8'))?.[1];
  if (block === undefined) throw new Error('The readme shows nothing for Neovim');
  return block;
}

/** A home with the block as `init.lua`, the command as an installation links it, and a folder with the procedure and what it links to. */
function folderOfWork(): string {
  const folder = temporaryFiles({
    'home/init.lua': blockOfReadme(),
    'work/witnessmark.yaml': 'witnessmark: 1\n',
    ...Object.fromEntries([NAME, ...LINKED].map((name) => [`work/faulty/${name}`, sample(name)])),
  });
  mkdirSync(join(folder, 'bin'));
  symlinkSync(join(root, 'server/dist/cli.js'), join(folder, 'bin/witnessmark'));
  return folder;
}

/** Runs Neovim without a screen, started elsewhere than in the folder of the documents, and gives what the script printed. */
function seenInNeovim(folder: string): Promise<Seen> {
  const home = join(folder, 'home');
  const PATH = [join(folder, 'bin'), dirname(process.execPath), process.env.PATH].join(delimiter);
  const folders = {
    HOME: home,
    XDG_CONFIG_HOME: home,
    XDG_DATA_HOME: home,
    XDG_STATE_HOME: home,
    XDG_CACHE_HOME: home,
  };
  const script = `luafile ${join(import.meta.dirname, 'neovim.lua')}`;
  const args = ['--headless', '--clean', '-u', 'init.lua', join(folder, 'work/faulty', NAME), '-c', script];
  // Neovim that waits for what never comes must not outlive the test.
  const options = { cwd: home, env: { ...process.env, ...folders, PATH }, timeout: 150_000 };
  return new Promise((resolve, reject) => {
    const neovim = execFile('nvim', args, options, (failure, stdout, stderr) => {
      if (stdout === '') reject(new Error(`Neovim has printed nothing: ${stderr}`, { cause: failure }));
      else resolve(JSON.parse(stdout) as Seen);
    });
    neovim.stdin?.end();
  });
}

test.skipIf(!isInstalled)(
  'in Neovim, set up as the readme says, a finding is shown, explained and fixed, a name completed and the text formatted',
  async () => {
    const folder = folderOfWork();
    const seen = await seenInNeovim(folder);
    expect(seen.failed).toBeUndefined();
    expect(seen.root).toBe(join(folder, 'work'));
    const message = 'The torque 5 ± 0.5 has no unit; write the one that the maker states';
    expect(seen.findings).toEqual([{ line: 54, column: 21, severity: 1, message }]);
    expect(seen.hover[0]).toContain('Torque of the cover bolt');
    expect(seen.hover.join('\n')).toContain('5.90 ± 0.59 lbf·ft');
    expect(seen.fixes.slice(0, 3)).toEqual(['Write N·m', 'Write lbf·ft', 'Write lbf·in']);
    expect(seen.fixed).toBe('torque: 5 ± 0.5 N·m');
    expect(seen.left).toEqual([]);
    expect(seen.offered).toEqual(expect.arrayContaining(['wheel-nut', 'cover-bolt']));
    expect(seen.taken).toBe('- tighten: wheel-nut');
    // The name was taken out and completed, the torque untidied and formatted: no more than the fix is left.
    expect(seen.text).toBe(sample(NAME).replace(/(torque: 5 ± 0\.5)$/m, '$1 N·m'));
    expect(seen.told).toEqual([]);
  },
  180_000,
);
