import { nameIn, type Version } from '../../../core/review/version';
import { linesIn } from '../../../core/reviewPage/places';
import type { Reviewed } from '../../../core/reviewPage/reviewed';
import type { Rule } from '../../../core/rules/defineRule';
import { type Finding, fullMessage, identityOf } from '../../../core/rules/finding';
import { RULES } from '../../../core/rules/registry';

const LEVELS = { error: 'error', warning: 'warning', info: 'note' } as const;

/**
 * The findings that are new, as a SARIF 2.1.0 log (OASIS), each with the baseline state that the standard names; those
 * that are gone are there as `absent`, and what is as it was is left out.
 */
export function reviewSarif({ before, after, findings }: Reviewed, version: string): string {
  const results = [
    ...findings.added.map((one) => resultOf(one, after, 'new')),
    ...findings.gone.map((one) => resultOf(one, before, 'absent')),
  ];
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
    defaultConfiguration: { level: LEVELS[rule.severity] },
  };
}

function resultOf(finding: Finding, version: Version, baselineState: 'new' | 'absent'): object {
  const lines = linesIn(version, finding.uri);
  const [start, end] = [lines.position(finding.span.start), lines.position(finding.span.end)];
  const name = nameIn(version, finding.uri);
  return {
    ruleId: finding.rule,
    ruleIndex: RULES.findIndex(({ id }) => id === finding.rule),
    level: LEVELS[finding.severity],
    baselineState,
    message: { text: fullMessage(finding) },
    locations: [
      {
        physicalLocation: {
          artifactLocation: { uri: name.split('/').map(encodeURIComponent).join('/') },
          region: {
            startLine: start.line + 1,
            startColumn: start.character + 1,
            endLine: end.line + 1,
            endColumn: end.character + 1,
          },
        },
      },
    ],
    partialFingerprints: { 'witnessmark/v1': identityOf(finding, name) },
  };
}
