import { spawnSync } from 'node:child_process';
import { median } from './measure';

/** CPU seconds of the whole command, from its start to its end, for one file. */
export function coldCheck(): void {
  const program = `
    process.on('exit', () => { const used = process.cpuUsage(); process.stderr.write('CPU ' + (used.user + used.system)); });
    process.argv.splice(1, 0, 'witnessmark');
    require('./server/dist/cli.js').run({ out() {}, err() {}, colours: false }, ['check', 'sample-procedures/procedures/v4-major.procedure.yaml']);`;
  const times = Array.from({ length: 7 }, () => {
    const { stderr } = spawnSync(process.execPath, ['-e', program], { encoding: 'utf8' });
    return Number(/CPU (\d+)/.exec(stderr)?.[1] ?? Number.NaN) / 1e6;
  });
  const empty = Array.from({ length: 7 }, () => {
    const { stderr } = spawnSync(
      process.execPath,
      [
        '-e',
        "process.on('exit', () => { const used = process.cpuUsage(); process.stderr.write('CPU ' + (used.user + used.system)); })",
      ],
      { encoding: 'utf8' },
    );
    return Number(/CPU (\d+)/.exec(stderr)?.[1] ?? Number.NaN) / 1e6;
  });
  console.log(
    `${'cold check of one file, whole process'.padEnd(52)} ${median(times).toFixed(2).padStart(9)} s    Node alone ${median(empty).toFixed(2)} s`,
  );
}
