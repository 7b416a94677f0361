import type { Rule } from '../defineRule';
import { limitDisagreesWithStack } from './limitDisagreesWithStack';
import { limitMissing } from './limitMissing';
import { limitNarrowerThanStack } from './limitNarrowerThanStack';

export const LIMIT_RULES: readonly Rule[] = [limitMissing, limitDisagreesWithStack, limitNarrowerThanStack];
