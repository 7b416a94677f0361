import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { bareParse, procedureOf } from './procedures';

/** Makes a folder of so many different procedures of 60 steps with all that they link to, and removes it again. */
export async function withManyProcedures(count: number, use: (folder: string) => Promise<void> | void): Promise<void> {
  const folder = mkdtempSync(join(tmpdir(), 'witnessmark-bench-'));
  try {
    for (const part of ['families', 'kits', 'stores', 'figures', 'witnessmark.yaml']) {
      cpSync(join('sample-procedures', part), join(folder, part), { recursive: true });
    }
    mkdirSync(join(folder, 'procedures'));
    const base = procedureOf(60);
    for (let i = 0; i < count; i++) {
      const text = base.replaceAll(/-n(\d+)/g, `-k${i}n$1`).replace(/^procedure: \S+/m, `procedure: OP-${i}`);
      writeFileSync(join(folder, 'procedures', `p-${i}.procedure.yaml`), text);
    }
    await use(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** `check` of the folder from a cold start and once more, beside a bare parse of the same files in one thread. */
export async function checkOfFolder(count: number): Promise<void> {
  await withManyProcedures(count, (folder) => {
    const bare = cost(() => {
      for (const name of readdirSync(join(folder, 'procedures'))) {
        bareParse(readFileSync(join(folder, 'procedures', name), 'utf8'));
      }
    });
    const cold = checked(folder);
    const again = checked(folder);
    const show = (what: string, one: Cost) =>
      console.log(
        `${what.padEnd(44)} CPU ${one.cpu.toFixed(2)} s, wall ${one.wall.toFixed(2)} s   ratio to bare: CPU ${(one.cpu / bare.cpu).toFixed(2)}, wall ${(one.wall / bare.wall).toFixed(2)}`,
      );
    console.log(`\nbare parse of ${count} files: CPU ${bare.cpu.toFixed(2)} s, wall ${bare.wall.toFixed(2)} s`);
    show(`check of ${count} procedures, cold (aim 1.3 / 0.8)`, cold);
    show('the same once more (aim 0.1)', again);
  });
}

interface Cost {
  /** Seconds. */
  readonly cpu: number;
  readonly wall: number;
}

function cost(work: () => void): Cost {
  const began = performance.now();
  const before = process.cpuUsage();
  work();
  const used = process.cpuUsage(before);
  return { cpu: (used.user + used.system) / 1e6, wall: (performance.now() - began) / 1000 };
}

/** The whole process, all its threads included; it tells its own CPU time as it ends. */
function checked(folder: string): Cost {
  const program = join(folder, 'run.cjs');
  writeFileSync(
    program,
    `process.on('exit', () => { const used = process.cpuUsage(); process.stderr.write('CPU ' + (used.user + used.system)); });
    require(${JSON.stringify(join(process.cwd(), 'server/dist/cli.js'))}).run({ out() {}, err() {}, colours: false }, ['check', ${JSON.stringify(folder)}]);`,
  );
  const began = performance.now();
  const env = { ...process.env, XDG_CACHE_HOME: join(folder, '.cache'), LOCALAPPDATA: join(folder, '.cache') };
  const { stderr } = spawnSync(process.execPath, [program], { encoding: 'utf8', env });
  const wall = (performance.now() - began) / 1000;
  return { cpu: Number(/CPU (\d+)/.exec(stderr)?.[1] ?? Number.NaN) / 1e6, wall };
}
