import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { checkArguments } from '../../client/src/checkArguments';
import { inStep } from '../../server/src/core/rules/examples';
import { repoPath } from '../repo/repoFiles';
import { ran } from '../support/captureTerminal';
import { temporaryFiles } from '../support/temporaryFiles';

interface Matcher {
  readonly pattern: readonly { readonly regexp: string; readonly message?: number }[];
}
const [matcher] = JSON.parse(readFileSync(repoPath('package.json'), 'utf8')).contributes.problemMatchers as [Matcher];

/** Reads a report as the editor does: each pattern takes one line, and all must follow each other. */
function problemsIn(report: string): string[][] {
  const [head, message] = matcher.pattern.map(({ regexp }) => new RegExp(regexp));
  const lines = report.split('\n');
  return lines.flatMap((line, i) => {
    const place = head?.exec(line);
    const said = message?.exec(lines[i + 1] ?? '');
    return place && said ? [[...place.slice(1), said[1] ?? '']] : [];
  });
}

interface Reported {
  readonly start: { readonly line: number; readonly column: number };
  readonly severity: string;
  readonly rule: string;
  readonly message: string;
}

test('every finding of the report becomes a problem with its place, severity, rule and message', async () => {
  const { files, at } = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3\n- loosen: no-such-part');
  const folder = temporaryFiles(files);
  const { documents } = JSON.parse((await ran('check', folder, '--format', 'json')).out) as {
    documents: { path: string; findings: Reported[] }[];
  };
  const wanted = documents.flatMap(({ path, findings }) =>
    findings.map(({ start, severity, rule, message }) => [
      path,
      `${start.line}`,
      `${start.column}`,
      severity,
      rule,
      message,
    ]),
  );
  expect(wanted.length).toBeGreaterThan(1);
  expect(wanted.map(([path]) => path)).toContain(join(folder, at));
  expect(problemsIn((await ran('check', folder)).out)).toEqual(wanted);
});

test('a task checks the whole folder, or what it names', () => {
  expect(checkArguments({ type: 'witnessmark' })).toEqual(['check', '.']);
  expect(checkArguments({ type: 'witnessmark', path: 'new procedures', atLeast: 'error' })).toEqual([
    'check',
    'new procedures',
    '--at-least',
    'error',
  ]);
});
