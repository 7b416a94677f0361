import type { Rule } from '../defineRule';

export const CONTROL_RULES: readonly Rule[] = [];
