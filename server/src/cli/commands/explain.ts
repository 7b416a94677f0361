import type { Rule } from '../../core/rules/defineRule';
import { RULES, ruleById } from '../../core/rules/registry';
import { nearest } from '../../core/text/near';
import { dayOption, readOptions } from '../options';
import { CommandProblem } from '../problem';
import { plainText } from '../report/plainText';
import { type Terminal, toned } from '../terminal';
import { explainAt } from './explainAt';

export const EXPLAIN_HELP = `witnessmark explain [RULE]
witnessmark explain --at FILE:LINE[:COLUMN] [options]

Says what a rule reports, why, and how it is put right; without a rule, lists them all.
With --at, shows how the quantities at a place are worked out, with the numbers and the sources.

  --at FILE:LINE[:COLUMN]   a place of a document; without a column, everything on the line
  --build BUILD             only what holds on this build, for example v4-28r,cover-44
  --on DATE                 judge dates as of this day, for example 2026-10-12 (today)
`;

const FIXES = {
  safe: 'It offers a fix that check --fix applies.',
  suggestion: 'It offers fixes to choose from in the editor.',
  none: 'What to do is for a person to decide.',
} as const;

/** Runs \`witnessmark explain\`. */
export async function explain(terminal: Terminal, args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions('explain', args, {
    at: { type: 'string' },
    build: { type: 'string' },
    on: { type: 'string' },
  });
  const { at, build } = values;
  if (typeof at === 'string') {
    if (positionals.length > 0) throw new CommandProblem('Name a rule or a place, not both');
    return explainAt(terminal, at, typeof build === 'string' ? build : undefined, dayOption(values.on));
  }
  if (build !== undefined) throw new CommandProblem('--build goes with --at, which says where');
  return explainRule(terminal, positionals);
}

function explainRule(terminal: Terminal, [id, extra]: readonly string[]): number {
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
