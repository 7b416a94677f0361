/** The names that a mistyped one may have meant, nearest first, at most three; equally near ones in the order given. */
export function nearNames(name: string, known: Iterable<string>): string[] {
  const allowed = Math.max(1, Math.floor(name.length / 3));
  return [...new Set(known)]
    .map((candidate) => ({ candidate, distance: editDistance(name, candidate) }))
    .filter(({ distance }) => distance <= allowed)
    .sort((a, b) => a.distance - b.distance)
    .slice(0, 3)
    .map(({ candidate }) => candidate);
}

/** The same for a name and its value, `nut-hand=left`: the name counts first, then its values. */
export function nearValues(name: string, value: string, known: ReadonlyMap<string, readonly string[]>): string[] {
  const names = known.has(name) ? [name] : nearNames(name, known.keys());
  return names
    .flatMap((near) => nearNames(value, known.get(near) ?? []).map((found) => `${near}=${found}`))
    .slice(0, 3);
}

/** Letters inserted, dropped or changed to get from one text to the other (V. I. Levenshtein, 1966). */
function editDistance(from: string, to: string): number {
  let previous = Array.from({ length: to.length + 1 }, (_, column) => column);
  for (let row = 1; row <= from.length; row += 1) {
    const current = [row];
    for (let column = 1; column <= to.length; column += 1) {
      const changed = (previous[column - 1] ?? 0) + (from[row - 1] === to[column - 1] ? 0 : 1);
      current.push(Math.min(changed, (previous[column] ?? 0) + 1, (current[column - 1] ?? 0) + 1));
    }
    previous = current;
  }
  return previous[to.length] ?? 0;
}
