import type { Rule } from '../defineRule';
import { threadHandContradicted } from './threadHandContradicted';
import { threadHandMissing } from './threadHandMissing';
import { torqueAboveProof } from './torqueAboveProof';
import { torqueImplausible } from './torqueImplausible';

export const THREAD_RULES: readonly Rule[] = [
  threadHandMissing,
  threadHandContradicted,
  torqueImplausible,
  torqueAboveProof,
];
