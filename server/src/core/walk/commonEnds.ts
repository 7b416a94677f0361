/** How many at the beginning and at the end of two lists are the same, none of them counted twice. */
export function commonEnds<T>(
  some: readonly T[],
  others: readonly T[],
  isSame: (one: T | undefined, other: T | undefined) => boolean = (one, other) => one === other,
): [number, number] {
  const most = Math.min(some.length, others.length);
  let same = 0;
  while (same < most && isSame(some[same], others[same])) same++;
  let behind = 0;
  while (behind < most - same && isSame(some[some.length - 1 - behind], others[others.length - 1 - behind])) behind++;
  return [same, behind];
}
