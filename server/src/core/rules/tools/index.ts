import type { Rule } from '../defineRule';
import { consumableNamedInProse } from './consumableNamedInProse';
import { consumableNotListed } from './consumableNotListed';
import { consumableUnknown } from './consumableUnknown';
import { consumableUnused } from './consumableUnused';
import { counterHoldMissing } from './counterHoldMissing';
import { toolNamedInProse } from './toolNamedInProse';
import { toolNotListed } from './toolNotListed';
import { toolUnknown } from './toolUnknown';
import { toolUnused } from './toolUnused';
import { torqueToolMissing } from './torqueToolMissing';

export const TOOL_RULES: readonly Rule[] = [
  toolNotListed,
  toolUnknown,
  toolUnused,
  toolNamedInProse,
  torqueToolMissing,
  consumableNotListed,
  consumableUnknown,
  consumableUnused,
  consumableNamedInProse,
  counterHoldMissing,
];
