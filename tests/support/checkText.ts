import { type CheckResult, checkDocument } from '../../server/src/core/rules/checkDocument';
import type { Example } from '../../server/src/core/rules/examples';
import { type Finding, fullMessage } from '../../server/src/core/rules/finding';
import { applyEdits } from '../../server/src/core/text/span';
import { MemoryFiles, openFiles } from './memoryFiles';

export const TODAY = '2026-11-01';

/** Checks the document of an example among its files. */
export async function checkExample(example: Example, today = TODAY): Promise<CheckResult> {
  const { workspace, document } = await openFiles(example.files, example.at);
  return checkDocument(workspace.snapshot, document, { today, released: () => example.released });
}

/** The findings of one rule in an example, as `what is underlined: message (builds)`. */
export async function reported(example: Example, rule: string, today = TODAY): Promise<string[]> {
  const text = example.files[example.at] ?? '';
  const { findings } = await checkExample(example, today);
  return findings
    .filter((finding) => finding.rule === rule)
    .map((finding) => `${underlined(text, finding)}: ${fullMessage(finding)}`);
}

function underlined(text: string, finding: Finding): string {
  return text.slice(finding.span.start, finding.span.end);
}

/** The titles of the fixes that a rule offers in an example. */
export async function offered(example: Example, rule: string): Promise<string[]> {
  const { findings } = await checkExample(example);
  return findings
    .filter((finding) => finding.rule === rule)
    .flatMap((finding) => finding.fixes().map((fix) => fix.title));
}

/** The example with the fix of a title applied; throws where there is none, so that a test cannot pass by seeing nothing. */
export async function fixed(example: Example, rule: string, title?: string): Promise<Example> {
  const { findings } = await checkExample(example);
  const fixes = findings.filter((finding) => finding.rule === rule).flatMap((finding) => finding.fixes());
  const fix = title === undefined ? fixes[0] : fixes.find((one) => one.title === title);
  if (fix === undefined)
    throw new Error(`No fix ${title ?? ''} of ${rule}; there are: ${fixes.map((one) => one.title).join('; ')}`);
  const files = { ...example.files };
  const uris = new Set(fix.edits.map((edit) => edit.uri));
  for (const uri of uris) {
    const path = uri.slice(MemoryFiles.ROOT.length + 1);
    files[path] = applyEdits(
      files[path] ?? '',
      fix.edits.filter((edit) => edit.uri === uri).map((edit) => edit.edit),
    );
  }
  return { ...example, files };
}
