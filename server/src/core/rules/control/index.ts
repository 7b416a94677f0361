import type { Rule } from '../defineRule';
import { concessionExpired } from './concessionExpired';
import { concessionUnused } from './concessionUnused';
import { releasedWithErrors } from './releasedWithErrors';
import { revisionNotRaised } from './revisionNotRaised';
import { samePersonApproves } from './samePersonApproves';

export const CONTROL_RULES: readonly Rule[] = [
  concessionExpired,
  concessionUnused,
  samePersonApproves,
  revisionNotRaised,
  releasedWithErrors,
];
