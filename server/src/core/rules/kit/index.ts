import type { Rule } from '../defineRule';
import { kitForOtherFamily } from './kitForOtherFamily';
import { kitLineSuperseded } from './kitLineSuperseded';
import { kitLineUnused } from './kitLineUnused';
import { kitQuantityShort } from './kitQuantityShort';
import { partNotInKit } from './partNotInKit';
import { partUnknown } from './partUnknown';

export const KIT_RULES: readonly Rule[] = [
  partUnknown,
  partNotInKit,
  kitQuantityShort,
  kitLineUnused,
  kitLineSuperseded,
  kitForOtherFamily,
];
