import type { FamilyView } from '../../analysis/familyView';
import type { Instruction, Part } from '../../model/generated/types';
import type { Ref } from '../../model/values';
import { isThreadedFastener } from './fastenersNamed';

export interface TurnedPart {
  readonly ref: Ref;
  readonly part: Part;
}

/**
 * What an instruction turns. Loosening and tightening turns whatever has a thread; a nut or a screw is also turned as it
 * is removed, fitted or adjusted, while a shaft with a thread on it is not.
 */
export function turnedParts(instruction: Instruction, family: FamilyView): TurnedPart[] {
  const always = instruction.verb === 'loosen' || instruction.verb === 'tighten';
  return refsTurned(instruction).flatMap((ref) => {
    const part = family.part(ref.id);
    if (part === undefined) return [];
    return isThreadedFastener(part) || (always && part.thread !== undefined) ? [{ ref, part }] : [];
  });
}

/** Whether an instruction loosens or tightens what it turns. */
export function turningBy(instruction: Instruction | undefined): 'loosen' | 'tighten' | undefined {
  const verb = instruction?.verb;
  if (verb === 'loosen' || verb === 'remove') return 'loosen';
  return verb === 'tighten' || verb === 'install' ? 'tighten' : undefined;
}

function refsTurned(instruction: Instruction): readonly Ref[] {
  switch (instruction.verb) {
    case 'loosen':
      return instruction.loosen ?? [];
    case 'tighten':
      return instruction.tighten ?? [];
    case 'remove':
      return instruction.remove ?? [];
    case 'install':
      return instruction.install ?? [];
    case 'adjust':
      return instruction.adjust ?? [];
    default:
      return [];
  }
}
