/** Median CPU milliseconds of two calls that take turns, so that whatever else the machine does slows both alike. */
export function cpuPair(call: () => void, peer: () => void, runs = 25, warm = 10): { ms: number; peerMs: number } {
  const times: number[] = [];
  const peerTimes: number[] = [];
  for (let i = 0; i < warm + runs; i++) {
    const one = cpuOf(call);
    const other = cpuOf(peer);
    if (i < warm) continue;
    times.push(one);
    peerTimes.push(other);
  }
  return { ms: median(times), peerMs: median(peerTimes) };
}

function cpuOf(call: () => void): number {
  const before = process.cpuUsage();
  call();
  const used = process.cpuUsage(before);
  return (used.user + used.system) / 1000;
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
