import type { Rule } from '../defineRule';
import { threadHandMissing } from './threadHandMissing';

export const THREAD_RULES: readonly Rule[] = [threadHandMissing];
