import type { Rule } from '../defineRule';
import { nutWeakerThanBolt } from './nutWeakerThanBolt';
import { prevailingTorqueNotAdded } from './prevailingTorqueNotAdded';
import { propertyClassWrong } from './propertyClassWrong';
import { stainlessThreadsDry } from './stainlessThreadsDry';
import { threadHandContradicted } from './threadHandContradicted';
import { threadHandMissing } from './threadHandMissing';
import { threadNotStandard } from './threadNotStandard';
import { threadsDiffer } from './threadsDiffer';
import { torqueAboveProof } from './torqueAboveProof';
import { torqueImplausible } from './torqueImplausible';

export const THREAD_RULES: readonly Rule[] = [
  threadHandMissing,
  threadHandContradicted,
  threadNotStandard,
  threadsDiffer,
  propertyClassWrong,
  nutWeakerThanBolt,
  stainlessThreadsDry,
  torqueImplausible,
  torqueAboveProof,
  prevailingTorqueNotAdded,
];
