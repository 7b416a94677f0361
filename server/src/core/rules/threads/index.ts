import type { Rule } from '../defineRule';
import { threadHandContradicted } from './threadHandContradicted';
import { threadHandMissing } from './threadHandMissing';

export const THREAD_RULES: readonly Rule[] = [threadHandMissing, threadHandContradicted];
