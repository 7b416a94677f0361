export { type BuildCover, type BuildCube, type BuildTerm, coverOf } from './buildCubes';
export type { BuildFacts, BuildFactsProblem } from './buildFacts';
export type { BuildSet } from './buildSet';
export { BuildSpace, type UnitState, type UnknownName } from './buildSpace';
export type { Aspect } from './buildVariables';
export {
  type ConditionAtom,
  type ConditionExpr,
  conditionAtoms,
  conditionAtomText,
  parseConditionText,
  RE_USED,
  RENEWED,
  RESERVED_WORDS,
} from './condition';
export { describeBuilds, type ForkWords } from './describeBuilds';
export { type Build, buildsOf, countBuilds } from './listBuilds';
export { type PickedBuild, pickBuild } from './pickBuild';
export type { PickProblem } from './pickProblems';
export {
  type EntryOverlap,
  type ValueEntry,
  type ValuesByBuild,
  type ValuesByBuildOptions,
  valuesByBuild,
} from './valuesByBuild';
