/** The name of a key in code: `fastened-by` becomes `fastenedBy`. */
export function camel(key: string): string {
  const known = names.get(key);
  if (known !== undefined) return known;
  const name = key.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  names.set(key, name);
  return name;
}

const names = new Map<string, string>();
