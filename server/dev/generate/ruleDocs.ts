import type { Rule } from '../../src/core/rules/defineRule';
import { RULES } from '../../src/core/rules/registry';

/** The page about all rules, made from the rules themselves; the examples in it run as tests. */
export function ruleDocs(): string {
  const groups = [...new Set(RULES.map((rule) => rule.group))];
  const index = groups.map(
    (group) =>
      `* **${group}**: ${RULES.filter((rule) => rule.group === group)
        .map((rule) => `[\`${rule.id}\`](#${rule.id})`)
        .join(', ')}`,
  );
  return [
    '# Rules',
    '',
    'Made from the rules by `npm run generate`; do not edit. `witnessmark explain RULE` shows the same.',
    '',
    ...index,
    '',
    ...RULES.map(ruleSection),
  ].join('\n');
}

const FIXES = { safe: 'a safe fix', suggestion: 'fixes to choose from', none: 'no fix' } as const;

function ruleSection(rule: Rule): string {
  return `## ${rule.id}

*${rule.severity}, ${FIXES[rule.fix]}, since ${rule.since}*

${rule.doc.what} ${rule.doc.why}

Wrong:

${yaml(rule.doc.wrong.shown)}

Right:

${yaml(rule.doc.right.shown)}
`;
}

function yaml(text: string): string {
  return `\`\`\`yaml\n${text.trimEnd()}\n\`\`\``;
}
