import { nameIn, type Version } from '../../../core/review/version';
import { linesIn } from '../../../core/reviewPage/places';
import type { Reviewed } from '../../../core/reviewPage/reviewed';
import { type Finding, fullMessage, identityOf } from '../../../core/rules/finding';
import { RULES } from '../../../core/rules/registry';
import { artifactPath, LEVELS, regionOf, sarifLog } from '../sarifLog';

/**
 * The findings that are new, as a SARIF 2.1.0 log (OASIS), each with the baseline state that the standard names; those
 * that are gone are there as `absent`, and what is as it was is left out.
 */
export function reviewSarif({ before, after, findings }: Reviewed, version: string): string {
  const results = [
    ...findings.added.map((one) => resultOf(one, after, 'new')),
    ...findings.gone.map((one) => resultOf(one, before, 'absent')),
  ];
  return sarifLog(results, version);
}

function resultOf(finding: Finding, version: Version, baselineState: 'new' | 'absent'): object {
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
          artifactLocation: { uri: artifactPath(name) },
          region: regionOf(linesIn(version, finding.uri), finding.span),
        },
      },
    ],
    partialFingerprints: { 'witnessmark/v1': identityOf(finding, name) },
  };
}
