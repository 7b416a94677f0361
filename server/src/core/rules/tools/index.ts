import type { Rule } from '../defineRule';
import { toolNotListed } from './toolNotListed';

export const TOOL_RULES: readonly Rule[] = [toolNotListed];
