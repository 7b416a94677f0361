import type { Rule } from '../defineRule';

export const FORM_RULES: readonly Rule[] = [];
