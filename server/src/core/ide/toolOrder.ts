/** The order of ids in a sorted list: `socket-8` before `socket-10`. Negative where the first one comes first. */
export function compareIds(one: string, other: string): number {
  const [a, b] = [partsOf(one), partsOf(other)];
  for (let i = 0; i < Math.min(a.length, b.length); i += 1) {
    const order = compareParts(a[i] ?? '', b[i] ?? '');
    if (order !== 0) return order;
  }
  return a.length - b.length;
}

function partsOf(id: string): string[] {
  return id.match(/\d+|\D+/g) ?? [];
}

function compareParts(one: string, other: string): number {
  const difference = Number(one) - Number(other);
  if (!Number.isNaN(difference)) return difference;
  return one < other ? -1 : one > other ? 1 : 0;
}
