import type { Rule } from '../defineRule';
import { consumableNamedInProse } from './consumableNamedInProse';
import { consumableNotListed } from './consumableNotListed';
import { consumableUnknown } from './consumableUnknown';
import { consumableUnused } from './consumableUnused';
import { toolNamedInProse } from './toolNamedInProse';
import { toolNotListed } from './toolNotListed';
import { toolUnknown } from './toolUnknown';
import { toolUnused } from './toolUnused';

export const TOOL_RULES: readonly Rule[] = [
  toolNotListed,
  toolUnknown,
  toolUnused,
  toolNamedInProse,
  consumableNotListed,
  consumableUnknown,
  consumableUnused,
  consumableNamedInProse,
];
