import type { Example } from '../../../server/src/core/rules/examples';
import type { Finding } from '../../../server/src/core/rules/finding';
import { checkExample, fixed, offered } from '../../support/checkText';

/** A fix invents no amount; that one is missing then is told by its own rule. */
const ALLOWED: ReadonlySet<string> = new Set(['amount-missing']);

/** What a finding is about, wherever it stands. */
export function kindOf({ rule, about }: Finding): string {
  return [rule, ...about].join(' ');
}

/** What is found after a change and was not found before, besides what a fix may leave open. */
export function added(before: readonly Finding[], after: readonly Finding[]): string[] {
  const left = before.map(kindOf);
  return after.flatMap((finding) => {
    const at = left.indexOf(kindOf(finding));
    if (at >= 0) left.splice(at, 1);
    return at >= 0 || ALLOWED.has(finding.rule) ? [] : [kindOf(finding)];
  });
}

/** How often a rule finds something. */
function times(findings: readonly Finding[], rule: string): number {
  return findings.filter((finding) => finding.rule === rule).length;
}

/**
 * The instructions of the only step once the fix of a title, or else the first, is applied. Throws where the finding is
 * still there or another one came, so that no test takes a text for mended that is not.
 */
export async function mended(example: Example, rule: string, title?: string): Promise<string> {
  const { findings: before } = await checkExample(example);
  const changed = await fixed(example, rule, title);
  const { findings: after } = await checkExample(changed);
  if (times(after, rule) >= times(before, rule)) throw new Error(`${rule} is still found`);
  const more = added(before, after);
  if (more.length > 0) throw new Error(`The fix brings ${more.join('; ')}`);
  return instructionsOf(changed);
}

/** The entries of `do` in the only step, without their indent. */
export function instructionsOf(example: Example): string {
  const text = example.files[example.at] ?? '';
  return text
    .slice(text.indexOf('do:') + 'do:'.length)
    .split('\n')
    .map((line) => line.slice(10))
    .join('\n')
    .trim();
}

export { offered };
