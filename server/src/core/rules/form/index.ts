import type { Rule } from '../defineRule';
import { notPlainYaml } from './notPlainYaml';
import { notYaml } from './notYaml';
import { textLost } from './textLost';

export const FORM_RULES: readonly Rule[] = [notYaml, notPlainYaml, textLost];
