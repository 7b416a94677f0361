import type { Rule } from '../defineRule';
import { conditionNeverTrue } from './conditionNeverTrue';
import { documentKindWrong } from './documentKindWrong';
import { documentNotFound } from './documentNotFound';
import { figureMissing } from './figureMissing';
import { figureTextMissing } from './figureTextMissing';
import { idAmbiguous } from './idAmbiguous';
import { idDuplicate } from './idDuplicate';
import { idUnknown } from './idUnknown';
import { keyMissing } from './keyMissing';
import { keyUnknown } from './keyUnknown';
import { notPlainYaml } from './notPlainYaml';
import { notYaml } from './notYaml';
import { textLost } from './textLost';
import { valueShape } from './valueShape';
import { valuesOverlap } from './valuesOverlap';

export const FORM_RULES: readonly Rule[] = [
  notYaml,
  notPlainYaml,
  textLost,
  documentKindWrong,
  keyUnknown,
  keyMissing,
  valueShape,
  idUnknown,
  idDuplicate,
  idAmbiguous,
  documentNotFound,
  valuesOverlap,
  conditionNeverTrue,
  figureMissing,
  figureTextMissing,
];
