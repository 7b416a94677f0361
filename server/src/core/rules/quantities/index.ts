import type { Rule } from '../defineRule';
import { torqueUnitMissing } from './torqueUnitMissing';

export const QUANTITY_RULES: readonly Rule[] = [torqueUnitMissing];
