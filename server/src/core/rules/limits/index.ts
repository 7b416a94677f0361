import type { Rule } from '../defineRule';
import { grooveOutOfBand } from './grooveOutOfBand';
import { heatTooHigh } from './heatTooHigh';
import { heatTooLow } from './heatTooLow';
import { limitDisagreesWithStack } from './limitDisagreesWithStack';
import { limitMissing } from './limitMissing';
import { limitNarrowerThanStack } from './limitNarrowerThanStack';
import { squeezeOutOfBand } from './squeezeOutOfBand';
import { unbalanceAboveGrade } from './unbalanceAboveGrade';

export const LIMIT_RULES: readonly Rule[] = [
  limitMissing,
  limitDisagreesWithStack,
  limitNarrowerThanStack,
  unbalanceAboveGrade,
  heatTooLow,
  heatTooHigh,
  squeezeOutOfBand,
  grooveOutOfBand,
];
