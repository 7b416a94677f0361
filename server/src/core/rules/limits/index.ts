import type { Rule } from '../defineRule';
import { heatTooHigh } from './heatTooHigh';
import { heatTooLow } from './heatTooLow';
import { limitDisagreesWithStack } from './limitDisagreesWithStack';
import { limitMissing } from './limitMissing';
import { limitNarrowerThanStack } from './limitNarrowerThanStack';

export const LIMIT_RULES: readonly Rule[] = [
  limitMissing,
  limitDisagreesWithStack,
  limitNarrowerThanStack,
  heatTooLow,
  heatTooHigh,
];
