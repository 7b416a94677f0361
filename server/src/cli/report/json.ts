import type { Finding } from '../../core/rules/finding';
import type { LineIndex } from '../../core/text/lineIndex';
import type { CheckedDocument } from '../checkPaths';
import { shown } from './text';

/** The findings as JSON: lines and columns from 1, columns in UTF-16 units. */
export function jsonReport(documents: readonly CheckedDocument[]): string {
  const report = {
    tool: 'witnessmark',
    documents: documents.map((document) => ({
      path: shown(document.path),
      findings: document.result.findings.map((finding) => findingJson(document.lines, finding)),
      conceded: document.result.conceded.map(({ finding, concession }) => ({
        ...findingJson(document.lines, finding),
        concession: { because: concession.because?.text, by: concession.by?.text, until: concession.until?.day },
      })),
    })),
  };
  return `${JSON.stringify(report, null, 2)}\n`;
}

function findingJson(lines: LineIndex, finding: Finding): object {
  const start = lines.position(finding.span.start);
  const end = lines.position(finding.span.end);
  return {
    rule: finding.rule,
    severity: finding.severity,
    message: finding.message,
    builds: finding.builds,
    about: finding.about,
    step: finding.step,
    start: { line: start.line + 1, column: start.character + 1 },
    end: { line: end.line + 1, column: end.character + 1 },
    fixes: finding.fixes().map((fix) => ({ title: fix.title, safety: fix.safety })),
    working: finding.working(),
  };
}
