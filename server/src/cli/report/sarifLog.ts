import type { Rule } from '../../core/rules/defineRule';
import { RULES } from '../../core/rules/registry';
import type { LineIndex } from '../../core/text/lineIndex';
import type { Span } from '../../core/text/span';
import { plainText } from './plainText';

/** What SARIF calls our severities. */
export const LEVELS = { error: 'error', warning: 'warning', info: 'note' } as const;

/** Results as a SARIF 2.1.0 log (OASIS), with every rule described. */
export function sarifLog(results: readonly object[], version: string): string {
  const log = {
    version: '2.1.0',
    $schema: 'https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json',
    runs: [
      {
        tool: { driver: { name: 'Witnessmark', version, rules: RULES.map(descriptorOf) } },
        columnKind: 'utf16CodeUnits',
        results,
      },
    ],
  };
  return `${JSON.stringify(log, null, 2)}\n`;
}

function descriptorOf(rule: Rule): object {
  return {
    id: rule.id,
    shortDescription: { text: rule.doc.what },
    fullDescription: { text: `${rule.doc.what} ${rule.doc.why}` },
    help: { text: plainText(rule) },
    defaultConfiguration: { level: LEVELS[rule.severity] },
  };
}

/** A span as SARIF counts: lines and columns from 1. */
export function regionOf(lines: LineIndex, span: Span): object {
  const start = lines.position(span.start);
  const end = lines.position(span.end);
  return {
    startLine: start.line + 1,
    startColumn: start.character + 1,
    endLine: end.line + 1,
    endColumn: end.character + 1,
  };
}

/** A path in a log: percent-encoded, with forward slashes. */
export function artifactPath(path: string): string {
  return path.replaceAll('\\', '/').split('/').map(encodeURIComponent).join('/');
}
