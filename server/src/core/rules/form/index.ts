import type { Rule } from '../defineRule';
import { documentKindWrong } from './documentKindWrong';
import { keyMissing } from './keyMissing';
import { keyUnknown } from './keyUnknown';
import { notPlainYaml } from './notPlainYaml';
import { notYaml } from './notYaml';
import { textLost } from './textLost';
import { valueShape } from './valueShape';

export const FORM_RULES: readonly Rule[] = [
  notYaml,
  notPlainYaml,
  textLost,
  documentKindWrong,
  keyUnknown,
  keyMissing,
  valueShape,
];
