import { readFileSync } from 'node:fs';
import { applyEdits, type TextEdit } from '../core/text/span';
import { pathOfUri, reasonOf, writeWhole } from '../node/nodeFiles';
import { checkPaths } from './checkPaths';
import type { FoundDocuments } from './findDocuments';
import { CommandProblem } from './problem';

/** Fixes may uncover others, but a pair that undo each other must not run for ever. */
const PASSES = 8;

/** Applies every safe fix to the files, each file written whole; gives the number of fixes by path. */
export async function applySafeFixes(found: FoundDocuments, today: string): Promise<Map<string, number>> {
  const applied = new Map<string, number>();
  for (let pass = 0; pass < PASSES; pass++) {
    const edits = await safeEdits(found, today);
    if (edits.size === 0) break;
    for (const [uri, fixes] of edits) {
      const path = pathOfUri(uri);
      rewrite(path, fixes.flat());
      applied.set(path, (applied.get(path) ?? 0) + fixes.length);
    }
  }
  return applied;
}

/** The first safe fix of each finding, by document; one that touches what another one changes waits for the next pass. */
async function safeEdits(found: FoundDocuments, today: string): Promise<Map<string, TextEdit[][]>> {
  const edits = new Map<string, TextEdit[][]>();
  for await (const { uri, result } of checkPaths(found, { today })) {
    const taken: TextEdit[] = [];
    for (const finding of result.findings) {
      const fix = finding.fixes().find((one) => one.safety === 'safe' && one.edits.every((edit) => edit.uri === uri));
      const changes = (fix?.edits ?? []).map((one) => one.edit);
      if (changes.length === 0 || changes.some((one) => taken.some((other) => touches(one, other)))) continue;
      taken.push(...changes);
      edits.set(uri, [...(edits.get(uri) ?? []), changes]);
    }
  }
  return edits;
}

function touches(a: TextEdit, b: TextEdit): boolean {
  return a.span.start <= b.span.end && b.span.start <= a.span.end;
}

function rewrite(path: string, edits: readonly TextEdit[]): void {
  try {
    writeWhole(path, applyEdits(readFileSync(path, 'utf8'), edits));
  } catch (error) {
    throw new CommandProblem(`Cannot write ${path}: ${reasonOf(error)}`);
  }
}
