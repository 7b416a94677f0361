import { objectIds } from '../../../analysis/instructions';
import type { Candidate } from './candidate';
import { insert, moveInstruction, moveStep } from './edits';
import type { Place, Scene } from './scene';

/** The hand of a thread is found out before the fastener is turned. */
export function identifyFixes(scene: Scene): Candidate[] {
  return knownFirst(scene, scene.other, scene.showing);
}

/** What an instruction depends on is decided, found out, measured or chosen later: that goes before it. */
export function decidingFixes(scene: Scene): Candidate[] {
  const { about, other, family, failure, showing } = scene;
  const beside = showing ?? firstOfPlace(scene);
  const isOutcome = family.value.identify?.some(({ id }) => id.id === about) === true;
  if (failure.cause === 'undecided-yet' && isOutcome) return knownFirst(scene, about, beside);
  const wanted = failure.cause === 'not-measured' ? other : about;
  const deciding = scene.first((one) => decides(one, wanted, failure.cause), (beside?.index ?? 0) - 1);
  return sooner(scene, deciding, beside, `Move "${deciding?.view.instruction.verb}: ${wordsOf(deciding)}" before this`);
}

function knownFirst(scene: Scene, outcome: string, beside: Place | undefined): Candidate[] {
  const known = scene.first(
    ({ view: { instruction } }) => instruction.verb === 'identify' && instruction.identify?.id === outcome,
    beside?.index,
  );
  const title = `Identify ${scene.the(outcome)} first`;
  const before = stepBefore(scene, beside);
  return [
    ...sooner(scene, known, beside, title),
    ...(scene.showing !== undefined
      ? insert(scene, title, 'before', beside, [[`identify: ${outcome}`]], 'failing')
      : []),
    ...insert(scene, title, 'behind', before, [[`identify: ${outcome}`]], 'failing'),
  ];
}

function sooner(scene: Scene, moved: Place | undefined, beside: Place | undefined, title: string): Candidate[] {
  // The condition of a step must be known before its first instruction.
  const alone = scene.showing === undefined ? [] : moveInstruction(scene, title, moved, 'before', beside);
  const behind = stepBefore(scene, beside);
  return [
    ...alone,
    ...moveStep(scene, moved, 'before', beside),
    ...(scene.showing === undefined ? moveInstruction(scene, title, moved, 'behind', behind) : []),
  ];
}

/** The last instruction before the step. */
function stepBefore(scene: Scene, place: Place | undefined): Place | undefined {
  return place === undefined ? undefined : scene.last(({ step }) => step !== place.step, place.index);
}

/** Where the condition is that of a step or phase: its first instruction. */
function firstOfPlace({ failure, places }: Scene): Place | undefined {
  const item = failure.at?.item;
  return places.find(({ step }) => step.step.node.item === item || step.phase.node.item === item);
}

function decides({ view: { instruction } }: Place, wanted: string, cause: string): boolean {
  if (cause === 'not-measured')
    return ['measure', 'calculate'].includes(instruction.verb) && objectIds(instruction).includes(wanted);
  if (cause === 'size-not-chosen') return instruction.verb === 'choose' && objectIds(instruction).includes(wanted);
  if (!('ifNot' in instruction) || instruction.ifNot === undefined) return false;
  const replaced = (instruction.ifNot.replace ?? []).map(({ id }) => id);
  return replaced.includes(wanted) || (instruction.verb === 'inspect' && objectIds(instruction).includes(wanted));
}

function wordsOf(place: Place | undefined): string {
  return place === undefined ? '' : objectIds(place.view.instruction).join(', ');
}
