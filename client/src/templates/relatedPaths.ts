/** The path from a folder to a file, both as `/a/b`, as a document writes it: with `/`, and `..` for each step up. */
export function relativePath(folder: string, file: string): string {
  const from = folder.split('/').filter((part) => part !== '');
  const to = file.split('/').filter((part) => part !== '');
  let shared = 0;
  while (shared < from.length && shared < to.length - 1 && from[shared] === to[shared]) shared += 1;
  return [...from.slice(shared).map(() => '..'), ...to.slice(shared)].join('/');
}

/** A file name that every system takes, with spaces and letters of any script kept. */
export function fileNameFor(id: string): string {
  const name = [...id]
    .map((char) => (char < ' ' || '\\/:*?"<>|'.includes(char) ? '-' : char))
    .join('')
    .replaceAll(/^[ .]+|[ .]+$/g, '');
  return name === '' ? 'new' : name;
}

/** The id of the first part that a family always renews, or else of its first part: what a kit is likely to hold. */
export function kitPartOf(familyText: string): string | undefined {
  const lines = familyText.split(/\r?\n/);
  const start = lines.findIndex((line) => /^parts:\s*(?:#.*)?$/.test(line));
  const after = lines.slice(start + 1);
  const end = after.findIndex((line) => /^[^\s#]/.test(line));
  const block = start < 0 ? [] : after.slice(0, end < 0 ? undefined : end);
  const indent = /^ +/.exec(block.find((line) => /^ +[^\s#]/.test(line)) ?? '')?.[0] ?? '';
  const ids = block.map(
    (line) => (line.startsWith(indent) ? /^([a-z][a-z0-9-]*):/.exec(line.slice(indent.length)) : null)?.[1],
  );
  let current: string | undefined;
  for (const [i, line] of block.entries()) {
    current = ids[i] ?? current;
    if (/\brenew: *always\b/.test(line)) return current;
  }
  return ids.find((id) => id !== undefined);
}
