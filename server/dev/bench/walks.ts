import { ProcedureView } from '../../src/core/analysis/procedureView';
import { Workspace } from '../../src/core/analysis/workspace';
import { walkOf } from '../../src/core/walk/walkProcedure';
import { procedureOf, SAMPLE_URI, workspaceOfSample } from './procedures';

const ROOT = 'file:///bench';
const STEPS = 50;

/** A unit whose parts come off and go back in 200 steps; some of its parts are there with an option only. */
function family(options: number, used: number): string {
  const list = Array.from({ length: options }, (_, i) => `  option-${i}: { name: option ${i} }`);
  const parts = Array.from({ length: STEPS }, (_, i) => {
    const when = i < used ? `, when: option-${i}` : '';
    return `  part-${i}: { name: part ${i}, sits-on: core, fastened-by: [screw-${i}]${when} }
  screw-${i}: { name: screw ${i}, kind: screw, sits-on: core, thread: M6×1, hand: right, torque: 9 ± 1 N·m${when} }`;
  });
  const optionBlock = options === 0 ? '' : `options:\n${list.join('\n')}\n`;
  return `witnessmark: 1\nfamily: bench\nname: Bench\nvariants:\n  one-a: { name: One }\n${optionBlock}base: core\nparts:\n  core: { name: core }\n${parts.join('\n')}\n`;
}

function procedure(): string {
  const numbers = Array.from({ length: STEPS }, (_, i) => i);
  const step = (kind: string, i: number, act: string): string =>
    `      - step: ${kind}-${i}\n        title: Do it\n        do:\n          - ${act}\n`;
  const strip = numbers.flatMap((i) => [step('loosen', i, `remove: screw-${i}`), step('take', i, `remove: part-${i}`)]);
  const build = numbers.flatMap((i) => [
    step('fit', i, `install: [part-${i}, screw-${i}]`),
    step('tighten', i, `tighten: screw-${i}`),
  ]);
  return `witnessmark: 1\nprocedure: B-1\ntitle: Bench\nrevision: A\nfamily: bench.family.yaml\nphases:\n  - phase: Strip\n    steps:\n${strip.join('')}  - phase: Build\n    steps:\n${build.join('')}`;
}

async function coldWalk(options: number, used: number): Promise<{ ms: number; failures: number }> {
  const workspace = new Workspace([ROOT]);
  workspace.set(`${ROOT}/bench.family.yaml`, { is: 'text', text: family(options, used) });
  workspace.set(`${ROOT}/bench.procedure.yaml`, { is: 'text', text: procedure() });
  const document = workspace.snapshot.document(`${ROOT}/bench.procedure.yaml`);
  const view = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  if (view === undefined) throw new Error('no procedure');
  const before = process.cpuUsage();
  const failures = walkOf(view)?.failures.length ?? -1;
  const used_ = process.cpuUsage(before);
  return { ms: (used_.user + used_.system) / 1000, failures };
}

/** The walk of a 200-step procedure as options grow: what no condition looks at must cost nothing. */
export async function walks(): Promise<void> {
  console.log('\nthe walk of 200 steps, CPU ms, the family and its build space new each time (least of five)');
  for (const [options, used] of [
    [0, 0],
    [2, 2],
    [12, 0],
    [12, 2],
    [12, 12],
    [24, 24],
  ] as const) {
    const runs = [];
    for (let i = 0; i < 5; i++) runs.push(await coldWalk(options, used));
    const ms = Math.min(...runs.map((run) => run.ms));
    const builds = 2 ** options;
    console.log(
      `${`${options} options (${builds} builds), ${used} looked at`.padEnd(52)} ${ms.toFixed(2).padStart(9)} ms   failures ${runs[0]?.failures}`,
    );
  }
  const workspace = await workspaceOfSample();
  workspace.set(SAMPLE_URI, { is: 'text', text: procedureOf(60) });
  const document = workspace.snapshot.document(SAMPLE_URI);
  const times = Array.from({ length: 9 }, () => {
    const view = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
    const before = process.cpuUsage();
    if (view !== undefined) walkOf(view);
    const used = process.cpuUsage(before);
    return (used.user + used.system) / 1000;
  }).sort((a, b) => a - b);
  console.log(
    `${'the whole walk of the 60-step sample, warm'.padEnd(52)} ${(times[4] ?? 0).toFixed(2).padStart(9)} ms`,
  );
}
