import { namedRefs, objectIds } from '../../../analysis/instructions';
import type { Place, Scene } from './scene';

const FITS: ReadonlySet<string> = new Set(['install', 'press']);
const TURNS: ReadonlySet<string> = new Set([...FITS, 'loosen', 'remove', 'seat', 'tighten', 'adjust']);

/** Whether an instruction does one of these things to a part. */
export function does({ view: { instruction } }: Place, verbs: readonly string[], part: string): boolean {
  return verbs.includes(instruction.verb) && objectIds(instruction).includes(part);
}

export function fits(place: Place, part: string): boolean {
  return does(place, [...FITS], part);
}

/** Whether an instruction turns, moves, fits or takes off one of these parts. */
export function touches({ view: { instruction } }: Place, parts: ReadonlySet<string>): boolean {
  return TURNS.has(instruction.verb) && objectIds(instruction).some((id) => parts.has(id));
}

/** The parts that make a result of the family worthless, or that a check comes after. */
export function partsOf({ relations }: Scene, result: string): Set<string> {
  return new Set(relations.ids.filter((id) => relations.resultsOn(id).includes(result)));
}

/** Whether a part is all that an instruction names. */
export function isAlone({ view: { instruction } }: Place): boolean {
  return objectIds(instruction).length === 1;
}

export function names({ view: { instruction } }: Place, part: string): boolean {
  return namedRefs(instruction).some(({ id }) => id === part);
}

/** The first instruction from a place on that stands in a step which serves all builds of the failure. */
export function wideFrom(scene: Scene, from: Place | undefined): Place | undefined {
  if (from === undefined) return undefined;
  return scene.first(({ step }) => scene.failure.where.isWithin(step.where), from.index - 1);
}

/** The last instruction of all. */
export function theEnd(scene: Scene): Place | undefined {
  return scene.last(() => true);
}

export function later(one: Place | undefined, other: Place | undefined): Place | undefined {
  if (one === undefined || other === undefined) return one ?? other;
  return one.index < other.index ? other : one;
}

/** The first of the instructions that put something on a part since it came off. */
export function treatedFirst(scene: Scene, part: string): Place | undefined {
  const { cause, showing } = scene;
  const treated = scene.first((one) => one.view.instruction.verb === 'apply' && names(one, part), cause?.index);
  return treated !== undefined && showing !== undefined && treated.index < showing.index ? treated : undefined;
}
