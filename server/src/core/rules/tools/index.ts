import type { Rule } from '../defineRule';
import { angleToolMissing } from './angleToolMissing';
import { calibrationOverdue } from './calibrationOverdue';
import { consumableNamedInProse } from './consumableNamedInProse';
import { consumableNotListed } from './consumableNotListed';
import { consumableUnknown } from './consumableUnknown';
import { consumableUnused } from './consumableUnused';
import { counterHoldMissing } from './counterHoldMissing';
import { extensionNotCorrected } from './extensionNotCorrected';
import { gaugeTooCoarse } from './gaugeTooCoarse';
import { readingTooCoarse } from './readingTooCoarse';
import { socketMissing } from './socketMissing';
import { squareMismatch } from './squareMismatch';
import { toolNamedInProse } from './toolNamedInProse';
import { toolNotListed } from './toolNotListed';
import { toolUnknown } from './toolUnknown';
import { toolUnused } from './toolUnused';
import { toolWrongSize } from './toolWrongSize';
import { torqueToolMissing } from './torqueToolMissing';
import { torqueToolOneWay } from './torqueToolOneWay';
import { torqueToolOutOfRange } from './torqueToolOutOfRange';
import { torqueToolTooCoarse } from './torqueToolTooCoarse';
import { torqueWrenchToLoosen } from './torqueWrenchToLoosen';

export const TOOL_RULES: readonly Rule[] = [
  toolNotListed,
  toolUnknown,
  toolUnused,
  toolNamedInProse,
  torqueToolMissing,
  toolWrongSize,
  socketMissing,
  torqueToolOutOfRange,
  torqueToolTooCoarse,
  torqueToolOneWay,
  extensionNotCorrected,
  squareMismatch,
  torqueWrenchToLoosen,
  angleToolMissing,
  gaugeTooCoarse,
  readingTooCoarse,
  calibrationOverdue,
  consumableNotListed,
  consumableUnknown,
  consumableUnused,
  consumableNamedInProse,
  counterHoldMissing,
];
