import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { onTestFinished } from 'vitest';

/** A folder with files that is gone when the test is over; its name has a space and a letter outside ASCII. */
export function temporaryFiles(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'witnessmark é '));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(folder, path)), { recursive: true });
    writeFileSync(join(folder, path), text);
  }
  return folder;
}
