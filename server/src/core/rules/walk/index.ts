import type { Rule } from '../defineRule';
import { adjustmentNotLocked } from './adjustmentNotLocked';
import { alignmentMissing } from './alignmentMissing';
import { balanceMissing } from './balanceMissing';
import { buildNotCovered } from './buildNotCovered';
import { checkMissing } from './checkMissing';
import { cleaningForbidden } from './cleaningForbidden';
import { decidedTooLate } from './decidedTooLate';
import { dispositionMissing } from './dispositionMissing';
import { fittedTwice } from './fittedTwice';
import { fittedWhileBlocked } from './fittedWhileBlocked';
import { fittedWithoutSeat } from './fittedWithoutSeat';
import { handNotIdentified } from './handNotIdentified';
import { leftIn } from './leftIn';
import { leftLoose } from './leftLoose';
import { leftOff } from './leftOff';
import { loopBroken } from './loopBroken';
import { markMissing } from './markMissing';
import { notCleaned } from './notCleaned';
import { notHeated } from './notHeated';
import { notInspected } from './notInspected';
import { notLubricated } from './notLubricated';
import { notThreadlocked } from './notThreadlocked';
import { outOfReach } from './outOfReach';
import { removedTwice } from './removedTwice';
import { removedWhileCovered } from './removedWhileCovered';
import { removedWhileFastened } from './removedWhileFastened';
import { resultVoid } from './resultVoid';
import { sealNotRenewed } from './sealNotRenewed';
import { sentWhileFitted } from './sentWhileFitted';
import { setMixed } from './setMixed';
import { singleUseRefitted } from './singleUseRefitted';
import { spunTooSoon } from './spunTooSoon';
import { threadlockerOnOil } from './threadlockerOnOil';
import { tightenedWhileHot } from './tightenedWhileHot';
import { tightenedWhileOff } from './tightenedWhileOff';

export const WALK_RULES: readonly Rule[] = [
  removedWhileFastened,
  removedWhileCovered,
  removedTwice,
  fittedWhileBlocked,
  fittedWithoutSeat,
  fittedTwice,
  outOfReach,
  tightenedWhileOff,
  singleUseRefitted,
  sealNotRenewed,
  notCleaned,
  notInspected,
  notLubricated,
  notThreadlocked,
  threadlockerOnOil,
  cleaningForbidden,
  tightenedWhileHot,
  leftOff,
  leftLoose,
  leftIn,
  checkMissing,
  resultVoid,
  handNotIdentified,
  markMissing,
  alignmentMissing,
  balanceMissing,
  adjustmentNotLocked,
  decidedTooLate,
  dispositionMissing,
  loopBroken,
  notHeated,
  sentWhileFitted,
  spunTooSoon,
  buildNotCovered,
  setMixed,
];
