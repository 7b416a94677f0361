import type { Rule } from '../defineRule';

export const KIT_RULES: readonly Rule[] = [];
