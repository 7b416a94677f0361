import { nearest } from '../text/near';

/** What a mistyped name and value may have meant, `nut-hand=left`: the name counts first, then its values. At most three. */
export function nearValues(name: string, value: string, known: ReadonlyMap<string, readonly string[]>): string[] {
  const names = known.has(name) ? [name] : nearest(name, known.keys());
  return names.flatMap((near) => nearest(value, known.get(near) ?? []).map((found) => `${near}=${found}`)).slice(0, 3);
}
