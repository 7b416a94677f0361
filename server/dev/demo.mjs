// A short tour: what the command line does with the samples. Everything that it writes goes below .cache/demo.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import process from 'node:process';
import { fromRoot, root } from './tree.mjs';

const procedure = 'sample-procedures/procedures/v4-major.procedure.yaml';
const sheet = (extension) => ['sheet', procedure, '--build', 'v4-20', '--out', `.cache/demo/v4-major.${extension}`];

/** Each stop: what is shown, the arguments, and the exit codes that belong to it (1 means that there are findings). */
const stops = [
  {
    what: 'Three whole procedures, walked through for every build that they cover',
    args: ['check', 'sample-procedures/procedures'],
    exits: [0],
  },
  {
    what: 'A procedure in which a torque has no unit',
    args: ['check', 'sample-procedures/faulty/torque-without-a-unit.procedure.yaml'],
    exits: [1],
  },
  {
    what: 'All the faulty samples; only the last line is shown',
    args: ['check', 'sample-procedures/faulty'],
    exits: [1],
    lines: 1,
  },
  { what: 'What a finding means', args: ['explain', 'torque-unit-missing'], exits: [0] },
  { what: 'The step sheet of one build, to print', args: sheet('pdf'), exits: [0] },
  { what: 'The same sheet as a page for a browser', args: sheet('html'), exits: [0] },
];

function show({ what, args, exits, lines }) {
  console.log(`\n${what}\n$ witnessmark ${args.join(' ')}`);
  const run = spawnSync(process.execPath, [fromRoot('server/dist/cli.js'), ...args], {
    cwd: root,
    stdio: ['ignore', lines === undefined ? 'inherit' : 'pipe', 'inherit'],
    encoding: 'utf8',
  });
  if (lines !== undefined) console.log(run.stdout.trimEnd().split('\n').slice(-lines).join('\n'));
  if (exits.includes(run.status)) return true;
  console.log(`demo: this stop ended with exit code ${run.status}, not ${exits.join(' or ')}`);
  return false;
}

rmSync(fromRoot('.cache/demo'), { recursive: true, force: true });
mkdirSync(fromRoot('.cache/demo'), { recursive: true });
const shown = stops.map(show);
const ended = shown.filter((one) => one).length;
console.log(`\ndemo: ${ended} of ${stops.length} stops went as they should; the sheets lie in .cache/demo`);
process.exitCode = ended === stops.length ? 0 : 1;
