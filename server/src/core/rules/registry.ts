import { CONTROL_RULES } from './control';
import type { Rule } from './defineRule';
import { FAMILY_RULES } from './family';
import { FORM_RULES } from './form';
import { KIT_RULES } from './kit';
import { LIMIT_RULES } from './limits';
import { QUANTITY_RULES } from './quantities';
import { THREAD_RULES } from './threads';
import { TOOL_RULES } from './tools';
import { WALK_RULES } from './walk';

/** Every rule, in the order of the documentation. */
export const RULES: readonly Rule[] = [
  ...FORM_RULES,
  ...QUANTITY_RULES,
  ...THREAD_RULES,
  ...TOOL_RULES,
  ...KIT_RULES,
  ...FAMILY_RULES,
  ...WALK_RULES,
  ...LIMIT_RULES,
  ...CONTROL_RULES,
];

const byId = new Map(RULES.map((rule) => [rule.id, rule]));

export function ruleById(id: string): Rule | undefined {
  return byId.get(id);
}
