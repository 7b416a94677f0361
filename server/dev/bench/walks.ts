import { ProcedureView } from '../../src/core/analysis/procedureView';
import { Workspace } from '../../src/core/analysis/workspace';
import { walkOf } from '../../src/core/walk/walkProcedure';

const ROOT = 'file:///bench';
const PROCEDURE = `${ROOT}/bench.procedure.yaml`;

/** A unit whose parts come off and go back, four steps for each; some of its parts are there with an option only. */
function family(options: number, used: number, count: number): string {
  const list = Array.from({ length: options }, (_, i) => `  option-${i}: { name: option ${i} }`);
  const parts = Array.from({ length: count }, (_, i) => {
    const when = i < used ? `, when: option-${i}` : '';
    return `  part-${i}: { name: part ${i}, sits-on: core, fastened-by: [screw-${i}]${when} }
  screw-${i}: { name: screw ${i}, kind: screw, sits-on: core, thread: M6×1, hand: right, torque: 9 ± 1 N·m${when} }`;
  });
  const optionBlock = options === 0 ? '' : `options:\n${list.join('\n')}\n`;
  return `witnessmark: 1\nfamily: bench\nname: Bench\nvariants:\n  one-a: { name: One }\n${optionBlock}base: core\nparts:\n  core: { name: core }\n${parts.join('\n')}\n`;
}

function procedure(count: number): string {
  const numbers = Array.from({ length: count }, (_, i) => i);
  const step = (kind: string, i: number, act: string): string =>
    `      - step: ${kind}-${i}\n        title: Do it\n        do:\n          - ${act}\n`;
  const strip = numbers.flatMap((i) => [step('loosen', i, `remove: screw-${i}`), step('take', i, `remove: part-${i}`)]);
  const build = numbers.flatMap((i) => [
    step('fit', i, `install: [part-${i}, screw-${i}]`),
    step('tighten', i, `tighten: screw-${i}`),
  ]);
  return `witnessmark: 1\nprocedure: B-1\ntitle: Bench\nrevision: A\nfamily: bench.family.yaml\nphases:\n  - phase: Strip\n    steps:\n${strip.join('')}  - phase: Build\n    steps:\n${build.join('')}`;
}

async function opened(options: number, used: number, count: number): Promise<Workspace> {
  const workspace = new Workspace([ROOT]);
  workspace.set(`${ROOT}/bench.family.yaml`, { is: 'text', text: family(options, used, count) });
  workspace.set(PROCEDURE, { is: 'text', text: procedure(count) });
  return workspace;
}

interface Measured {
  readonly ms: number;
  readonly carriedOut: number;
  readonly failures: number;
}

function walkNow(workspace: Workspace): Measured {
  const document = workspace.snapshot.document(PROCEDURE);
  const view = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  if (view === undefined) throw new Error('no procedure');
  const before = process.cpuUsage();
  const trace = walkOf(view);
  const { user, system } = process.cpuUsage(before);
  return { ms: (user + system) / 1000, carriedOut: trace?.carriedOut ?? -1, failures: trace?.failures.length ?? -1 };
}

function row(title: string, { ms, carriedOut, failures }: Measured, whole?: Measured): void {
  const ratio = whole === undefined ? '' : `   ratio ${(ms / whole.ms).toFixed(2)}`;
  const counts = `carried out ${String(carriedOut).padStart(4)}   failures ${failures}`;
  console.log(`${title.padEnd(52)} ${ms.toFixed(2).padStart(9)} ms   ${counts}${ratio}`);
}

function least(runs: readonly Measured[]): Measured {
  return runs.reduce((best, run) => (run.ms < best.ms ? run : best));
}

/** The walk of a 200-step procedure as options grow: what no condition looks at must cost nothing. */
export async function walks(): Promise<void> {
  console.log('\nthe walk of 200 steps, CPU ms, the family and its build space new each time (least of five)');
  let one: Measured | undefined;
  for (const [options, used] of [
    [0, 0],
    [2, 2],
    [4, 2],
    [8, 2],
    [12, 0],
    [12, 2],
    [12, 12],
    [24, 24],
  ] as const) {
    const runs: Measured[] = [];
    for (let i = 0; i < 5; i++) runs.push(walkNow(await opened(options, used, 50)));
    const best = least(runs);
    one ??= best;
    row(`${options} options (${2 ** options} builds), ${used} looked at`, best, one);
  }
  await keystrokes();
}

/** An instruction changes early, in the middle or late: what reads nothing of it is taken over. */
async function keystrokes(): Promise<void> {
  console.log('\na changed instruction in 300 steps, 12 options of which 2 are looked at (least of nine)');
  const workspace = await opened(12, 2, 75);
  const text = procedure(75);
  const whole = walkNow(workspace);
  row('the whole walk', whole);
  for (const [name, from, to] of [
    ['early: a screw is only loosened', 'remove: screw-3\n', 'loosen: screw-3\n'],
    ['in the middle: a part is not fitted', 'install: [part-1, screw-1]', 'install: screw-1'],
    ['late: a screw gets a torque of its own', 'tighten: screw-70', 'tighten: screw-70\n            torque: 9 N·m'],
  ] as const) {
    const runs: Measured[] = [];
    for (let i = 0; i < 9; i++) {
      workspace.set(PROCEDURE, { is: 'text', text: text.replace(from, to) });
      runs.push(walkNow(workspace));
      workspace.set(PROCEDURE, { is: 'text', text });
      walkNow(workspace);
    }
    row(name, least(runs), whole);
  }
}
