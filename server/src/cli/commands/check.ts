import { applySafeFixes } from '../applyFixes';
import { type AtLeast, type CheckedDocument, checkPaths, isAtLeast } from '../checkPaths';
import { type FoundDocuments, findDocuments } from '../findDocuments';
import { dayOption, oneOf, readOptions } from '../options';
import { CommandProblem } from '../problem';
import { jsonReport } from '../report/json';
import { type Counts, countText, findingText, plural, shown } from '../report/text';
import type { Terminal } from '../terminal';
import { version } from '../version';

export const CHECK_HELP = `witnessmark check PATH… [options]

Checks documents; folders are walked.

  --format text|json|sarif         how the findings are written (text)
  --at-least error|warning|info    the least severity that is shown and counts for the exit code (warning)
  --fix                            apply the fixes that are safe, then check
  --changed-since BASE             check only what a difference from a revision of git can reach
  --no-cache                       check every document, also what an earlier run found nothing new in
  --working                        show the calculation that a finding rests on (JSON and SARIF always hold it)
  --on DATE                        judge dates as of this day, for example 2026-10-12 (today)

Exit code: 0 nothing found, 1 findings, 2 could not run.
`;

/** Runs \`witnessmark check\`. */
export async function check(terminal: Terminal, args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions('check', args, {
    format: { type: 'string' },
    'at-least': { type: 'string' },
    fix: { type: 'boolean' },
    working: { type: 'boolean' },
    'no-cache': { type: 'boolean' },
    on: { type: 'string' },
    'changed-since': { type: 'string' },
  });
  if (positionals.length === 0)
    throw new CommandProblem('Say which files or folders to check; see witnessmark check --help');
  const format = oneOf('format', values.format, ['text', 'json', 'sarif'], 'text');
  const least = oneOf('at-least', values['at-least'], ['error', 'warning', 'info'], 'warning');
  const today = dayOption(values.on);
  const found = await narrowed(findDocuments(positionals), values['changed-since']);
  const options = { today, remember: values['no-cache'] !== true };
  if (values.fix === true) reportFixes(terminal, await applySafeFixes(found, today));
  if (format === 'text') return checkAsText(terminal, checkPaths(found, options), least, values.working === true);
  const documents: CheckedDocument[] = [];
  for await (const document of checkPaths(found, options)) documents.push(atLeast(document, least));
  terminal.out(format === 'json' ? jsonReport(documents) : (await checker()).sarifReport(documents, version()));
  return documents.some((document) => document.result.findings.length > 0) ? 1 : 0;
}

/** A folder in which nothing is reached is clean. */
async function narrowed(found: FoundDocuments, revision: string | boolean | undefined): Promise<FoundDocuments> {
  return typeof revision === 'string' ? (await checker()).changedSince(found, revision) : found;
}

/** What checks, and what few runs need: where nothing has changed, it need not be loaded. */
function checker(): Promise<typeof import('../checking/checker')> {
  return import('../checking/checker');
}

/** Writes findings as they come, so that a long run shows what it does. */
async function checkAsText(
  terminal: Terminal,
  documents: AsyncIterable<CheckedDocument>,
  least: AtLeast,
  working: boolean,
): Promise<number> {
  const counts = { documents: 0, error: 0, warning: 0, info: 0, conceded: 0 } satisfies Counts;
  let hidden = 0;
  for await (const document of documents) {
    counts.documents++;
    counts.conceded += document.result.conceded.length;
    for (const finding of document.result.findings) {
      if (!isAtLeast(finding, least)) hidden++;
      else {
        counts[finding.severity]++;
        terminal.out(`${findingText(terminal, document, finding, working)}\n`);
      }
    }
  }
  if (hidden > 0) terminal.out(`${plural(hidden, 'finding')} below ${least} not shown; --at-least info shows all\n`);
  terminal.out(countText(terminal, counts));
  return counts.error + counts.warning + counts.info > 0 ? 1 : 0;
}

function atLeast(document: CheckedDocument, least: AtLeast): CheckedDocument {
  const findings = document.result.findings.filter((finding) => isAtLeast(finding, least));
  return { ...document, result: { ...document.result, findings } };
}

/** Said on the error stream, so that a report on the other one stays a report. */
function reportFixes(terminal: Terminal, applied: ReadonlyMap<string, number>): void {
  for (const [path, count] of applied) terminal.err(`Fixed ${plural(count, 'finding')} in ${shown(path)}\n`);
}
