import type { Rule } from '../defineRule';
import { balancedAlone } from './balancedAlone';
import { baseNotReached } from './baseNotReached';
import { carriedInACircle } from './carriedInACircle';
import { namesItself } from './namesItself';
import { needNeverMet } from './needNeverMet';
import { neverComesOff } from './neverComesOff';
import { neverGoesOn } from './neverGoesOn';
import { partInNoBuild } from './partInNoBuild';
import { partNeverWith } from './partNeverWith';

/** Rules on the family alone: whether what it says of the unit can be so. */
export const FAMILY_RULES: readonly Rule[] = [
  namesItself,
  carriedInACircle,
  baseNotReached,
  neverComesOff,
  neverGoesOn,
  partNeverWith,
  partInNoBuild,
  needNeverMet,
  balancedAlone,
];
