import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { repoRoot } from './repoFiles';

test('what is generated from the schemas is fresh', () => {
  const run = spawnSync(process.execPath, ['server/dev/run.mjs', 'generate', '--check'], {
    cwd: repoRoot,
    encoding: 'utf8',
  });
  expect(run.stdout + run.stderr).toBe('');
  expect(run.status).toBe(0);
});
