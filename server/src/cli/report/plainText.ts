import type { Rule } from '../../core/rules/defineRule';

/** What a rule is about, with its examples, as plain text. */
export function plainText(rule: Rule): string {
  return [
    rule.doc.what,
    rule.doc.why,
    '',
    'Wrong:',
    indented(rule.doc.wrong.shown),
    'Right:',
    indented(rule.doc.right.shown),
  ].join('\n');
}

function indented(text: string): string {
  return text
    .split('\n')
    .map((line) => `    ${line}`)
    .join('\n');
}
