import { isVerb } from '../../model/instructionDef';
import type { Rank } from './rank';
import { partRanking } from './ranking';
import { toolRanking } from './rankingTools';
import { type CompletionScene, instructionScene } from './scene';
import { walkedBefore } from './walkedBefore';

const NONE: ReadonlyMap<string, Rank> = new Map();

/** How well parts fit behind the key of an instruction, by what the walk knows of the unit there. */
export function rankedParts(scene: CompletionScene): ReadonlyMap<string, Rank> {
  const keys = instructionKeys(scene);
  const there = keys === undefined ? undefined : instructionScene(scene);
  if (keys === undefined || there === undefined) return NONE;
  const procedure = walkedBefore(scene, there);
  const step = procedure?.steps[there.stepIndex];
  if (procedure === undefined || step === undefined) return NONE;
  return partRanking(procedure, step, there.index, keys.verb, keys.key);
}

/** How well tools fit an instruction, by what it turns, tightens or measures. */
export function rankedTools(scene: CompletionScene): ReadonlyMap<string, Rank> {
  const there = instructionScene(scene);
  if (there?.instruction === undefined) return NONE;
  const procedure = walkedBefore(scene, there);
  const step = procedure?.steps[there.stepIndex];
  if (procedure === undefined || step === undefined) return NONE;
  return toolRanking(procedure, step, there.instruction);
}

interface InstructionKeys {
  readonly verb: string;
  /** The innermost key that the cursor stands behind. */
  readonly key: string;
}

function instructionKeys({ context, place }: CompletionScene): InstructionKeys | undefined {
  const verb = /^procedure\/verb-(.*)$/.exec(place.def)?.[1];
  const last = context.steps.findLast((step) => step.is === 'key');
  return verb === undefined || last?.is !== 'key' || !isVerb(verb) ? undefined : { verb, key: last.name };
}
