import type { Rule } from '../defineRule';
import { fitDisagrees } from './fitDisagrees';
import { grooveOutOfBand } from './grooveOutOfBand';
import { heatTooHigh } from './heatTooHigh';
import { heatTooLow } from './heatTooLow';
import { limitContradictsFamily } from './limitContradictsFamily';
import { limitDisagreesWithStack } from './limitDisagreesWithStack';
import { limitMissing } from './limitMissing';
import { limitNarrowerThanStack } from './limitNarrowerThanStack';
import { squeezeOutOfBand } from './squeezeOutOfBand';
import { tightFitCold } from './tightFitCold';
import { unbalanceAboveGrade } from './unbalanceAboveGrade';

export const LIMIT_RULES: readonly Rule[] = [
  limitMissing,
  limitContradictsFamily,
  limitDisagreesWithStack,
  limitNarrowerThanStack,
  unbalanceAboveGrade,
  fitDisagrees,
  heatTooLow,
  heatTooHigh,
  tightFitCold,
  squeezeOutOfBand,
  grooveOutOfBand,
];
