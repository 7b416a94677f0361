import type { Rule } from '../defineRule';
import { concessionExpired } from './concessionExpired';
import { concessionUnused } from './concessionUnused';

export const CONTROL_RULES: readonly Rule[] = [concessionExpired, concessionUnused];
