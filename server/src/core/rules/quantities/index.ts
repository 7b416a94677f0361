import type { Rule } from '../defineRule';
import { dualValuesDisagree } from './dualValuesDisagree';
import { quantityDimension } from './quantityDimension';
import { torqueUnitMissing } from './torqueUnitMissing';
import { unitAmbiguous } from './unitAmbiguous';
import { unitSpelling } from './unitSpelling';

export const QUANTITY_RULES: readonly Rule[] = [
  torqueUnitMissing,
  unitAmbiguous,
  dualValuesDisagree,
  quantityDimension,
  unitSpelling,
];
