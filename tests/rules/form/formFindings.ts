import type { Example } from '../../../server/src/core/rules/examples';
import type { Finding } from '../../../server/src/core/rules/finding';
import { FORM_RULES } from '../../../server/src/core/rules/form';
import { checkExample } from '../../support/checkText';

const FORM = new Set(FORM_RULES.map((rule) => rule.id));

/** The findings of all rules about form, so that a test sees what one mistake costs. */
export async function formFindings(example: Example): Promise<Finding[]> {
  return (await checkExample(example)).findings.filter((finding) => FORM.has(finding.rule));
}
