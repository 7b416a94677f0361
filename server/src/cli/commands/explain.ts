import type { Rule } from '../../core/rules/defineRule';
import { RULES, ruleById } from '../../core/rules/registry';
import { nearest } from '../../core/text/near';
import { readOptions } from '../options';
import { CommandProblem } from '../problem';
import { plainText } from '../report/plainText';
import { type Terminal, toned } from '../terminal';

export const EXPLAIN_HELP = `witnessmark explain [RULE]

Says what a rule reports, why, and how it is put right; without a rule, lists them all.
`;

const FIXES = {
  safe: 'It offers a fix that check --fix applies.',
  suggestion: 'It offers fixes to choose from in the editor.',
  none: 'What to do is for a person to decide.',
} as const;

/** Runs \`witnessmark explain\`. */
export function explain(terminal: Terminal, args: readonly string[]): number {
  const { positionals } = readOptions('explain', args, {});
  const [id, extra] = positionals;
  if (extra !== undefined) throw new CommandProblem('Name one rule; witnessmark explain lists them all');
  if (id === undefined) {
    terminal.out(`${listing(terminal)}\n`);
    return 0;
  }
  const rule = ruleById(id);
  if (rule === undefined) throw new CommandProblem(unknownRule(id));
  terminal.out(
    `${toned(terminal, 'strong', rule.id)} (${toned(terminal, rule.severity, rule.severity)}, ${rule.group})\n\n`,
  );
  terminal.out(`${plainText(rule)}\n\n${FIXES[rule.fix]}\n`);
  return 0;
}

function unknownRule(id: string): string {
  const near = nearest(
    id,
    RULES.map((rule) => rule.id),
  );
  const hint = near.length === 0 ? '' : `; did you mean ${near.join(' or ')}`;
  return `There is no rule ${id}${hint}; witnessmark explain lists them all`;
}

function listing(terminal: Terminal): string {
  const width = Math.max(...RULES.map((rule) => rule.id.length));
  const groups = [...new Set(RULES.map((rule) => rule.group))];
  const line = (rule: Rule): string => `  ${rule.id.padEnd(width)}  ${rule.severity.padEnd(7)}  ${rule.doc.what}`;
  return groups
    .map((group) =>
      [toned(terminal, 'strong', group), ...RULES.filter((rule) => rule.group === group).map(line)].join('\n'),
    )
    .join('\n\n');
}
