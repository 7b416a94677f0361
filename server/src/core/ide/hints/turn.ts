import type { HeldValue } from '../../analysis/heldValues';
import { Names } from '../../analysis/names';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { InstructionView } from '../../analysis/procedureView';
import { type BuildSet, type BuildSpace, describeBuilds } from '../../builds';
import type { Ref } from '../../model/values';
import type { Hand } from '../../rules/support/handOfThread';
import { handsOf } from '../handsOf';
import { describeThing } from '../thingHover';
import type { Scene } from '../things/scene';
import type { HintFinder, InlayHint } from './hint';
import { instructionsWithin } from './instructionsWithin';

/** Which way a fastener is turned, behind what is tightened or loosened, where the family says its hand. */
export const turnHints: HintFinder = (scene, within) =>
  instructionsWithin(scene, within).flatMap((view) => {
    const { instruction } = view;
    if (instruction.verb === 'tighten') return hintsOf(scene, view, 'tighten', instruction.tighten);
    return instruction.verb === 'loosen' ? hintsOf(scene, view, 'loosen', instruction.loosen) : [];
  });

type TurningVerb = 'tighten' | 'loosen';

function hintsOf(
  scene: Scene,
  view: InstructionView,
  verb: TurningVerb,
  refs: readonly Ref[] | undefined,
): InlayHint[] {
  return (refs ?? []).flatMap((ref) => hintOf(scene, view, verb, ref) ?? []);
}

function hintOf(scene: Scene, { where }: InstructionView, verb: TurningVerb, ref: Ref): InlayHint | undefined {
  const { family, space, snapshot, document } = scene;
  const part = family?.part(ref.id);
  if (family === undefined || space === undefined || part === undefined) return undefined;
  const served = where.and(presentBuilds(family, space, ref.id));
  const label = turnLabel(handsOf(part, space, served), verb, served, space);
  if (label === undefined) return undefined;
  return {
    kind: 'turn',
    offset: document.spanOf(ref.range).end,
    label,
    detail: () => {
      const thing = Names.of(snapshot, document).find('part', ref.id);
      return thing && describeThing(snapshot, document, thing);
    },
  };
}

function turnLabel(
  hands: readonly HeldValue<Hand>[],
  verb: TurningVerb,
  served: BuildSet,
  space: BuildSpace,
): string | undefined {
  const [first] = hands;
  if (first === undefined) return undefined;
  if (hands.length === 1 && first.where.equals(served)) return direction(first.value, verb);
  const told = hands.map(({ value, where }) => `${turn(value, verb)} on ${describeBuilds(where, space)}`);
  const isKnown = space.union(hands.map(({ where }) => where)).equals(served);
  // What is usual first and then the exception with its builds: an editor cuts what is long at its end.
  return isKnown && hands.length === 2 ? `${turn('right', verb)}; ${told[1]}` : told.join('; ');
}

function direction(hand: Hand, verb: TurningVerb): string {
  return hand === 'left' ? `${turn(hand, verb)}, left-hand thread` : turn(hand, verb);
}

function turn(hand: Hand, verb: TurningVerb): string {
  return (hand === 'right') === (verb === 'tighten') ? 'clockwise' : 'counter-clockwise';
}
