import type { Rule } from '../defineRule';
import { amountMissing } from './amountMissing';
import { dualValuesDisagree } from './dualValuesDisagree';
import { quantityDimension } from './quantityDimension';
import { toleranceMissing } from './toleranceMissing';
import { torqueContradictsFamily } from './torqueContradictsFamily';
import { torqueInProseOnly } from './torqueInProseOnly';
import { torqueMissing } from './torqueMissing';
import { torqueUnitMissing } from './torqueUnitMissing';
import { unitAmbiguous } from './unitAmbiguous';
import { unitSpelling } from './unitSpelling';

export const QUANTITY_RULES: readonly Rule[] = [
  torqueUnitMissing,
  torqueMissing,
  torqueInProseOnly,
  torqueContradictsFamily,
  dualValuesDisagree,
  unitAmbiguous,
  quantityDimension,
  toleranceMissing,
  amountMissing,
  unitSpelling,
];
