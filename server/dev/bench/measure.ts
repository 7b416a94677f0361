/** Median CPU milliseconds of a call, after some calls that warm the engine up. */
export function cpuMs(call: () => void, runs = 25, warm = 10): number {
  for (let i = 0; i < warm; i++) call();
  const times: number[] = [];
  for (let i = 0; i < runs; i++) {
    const before = process.cpuUsage();
    call();
    const used = process.cpuUsage(before);
    times.push((used.user + used.system) / 1000);
  }
  return median(times);
}

export function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? 0;
}

export function line(what: string, ms: number, bare: number): void {
  console.log(
    `${what.padEnd(52)} ${ms.toFixed(2).padStart(9)} ms   bare ${bare.toFixed(2).padStart(8)} ms   ratio ${(ms / bare).toFixed(2)}`,
  );
}
