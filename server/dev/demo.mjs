// A short tour: what the command line does with the samples. Everything that it writes goes below .cache/demo.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import process from 'node:process';
import { fromRoot, root } from './tree.mjs';

const procedure = 'sample-procedures/procedures/v4-major.procedure.yaml';

/** Each stop: what is shown, the arguments, and the exit codes that belong to it (1 means that there are findings). */
const stops = [
  { what: 'A whole rebuild, walked through for every build', args: ['check', procedure], exits: [0] },
  { what: 'The faulty samples', args: ['check', 'sample-procedures/faulty'], exits: [1] },
  { what: 'What a finding means', args: ['explain', 'torque-unit-missing'], exits: [0] },
  {
    what: 'The step sheet of one build',
    args: ['sheet', procedure, '--build', 'v4-20', '--out', '.cache/demo/v4-major.pdf'],
    exits: [0],
  },
];

function show({ what, args, exits }) {
  console.log(`\n${what}\n$ witnessmark ${args.join(' ')}`);
  const run = spawnSync(process.execPath, [fromRoot('server/dist/cli.js'), ...args], { cwd: root, stdio: 'inherit' });
  if (exits.includes(run.status)) return true;
  console.log(`demo: this stop ended with exit code ${run.status}, not ${exits.join(' or ')}`);
  return false;
}

rmSync(fromRoot('.cache/demo'), { recursive: true, force: true });
mkdirSync(fromRoot('.cache/demo'), { recursive: true });
process.exitCode = stops.map(show).every((shown) => shown) ? 0 : 1;
