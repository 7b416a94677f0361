import type { BuildSet } from '../../builds';
import type { Part } from '../../model/generated/types';
import type { TurnFacts } from '../sentences/language';
import type { Hand, Turn } from '../sheet';
import type { BuildContext } from './buildContext';
import { merged, type ValueCase, valuesIn } from './valuesIn';

export type TurningVerb = 'tighten' | 'loosen';

/** The hand of a part's thread within a set; undefined where nothing says it. A right hand is never assumed. */
export function handCases(part: Part | undefined, where: BuildSet, { procedure }: BuildContext): ValueCase<Hand>[] {
  const stated = valuesIn(part?.hand, where, procedure.space).map((one) => ({ ...one, value: one.value?.value }));
  const cases = stated.flatMap((one) =>
    one.value === undefined ? handsOfThread(part, one.where, procedure.space) : [one],
  );
  return merged(cases, (hand) => hand ?? '');
}

/** A designation may say it: `M5×0.8-LH` (ISO 965-1). */
function handsOfThread(
  part: Part | undefined,
  where: BuildSet,
  space: BuildContext['procedure']['space'],
): ValueCase<Hand>[] {
  return valuesIn(part?.thread, where, space).map((one) => ({
    value: one.value !== undefined && /\bLH\b/u.test(one.value.text) ? 'left' : undefined,
    where: one.where,
  }));
}

/** A right-hand thread is tightened clockwise; a left-hand thread and loosening each turn that round. */
export function turnOf(hand: Hand, verb: TurningVerb): Turn {
  return { hand, direction: (hand === 'right') === (verb === 'tighten') ? 'clockwise' : 'counter-clockwise' };
}

export function turnFacts(cases: readonly ValueCase<Hand>[], verb: TurningVerb): TurnFacts {
  const hands = new Set(cases.map((one) => one.value));
  if (hands.size > 1) return { kind: 'open' };
  const hand = cases[0]?.value;
  return hand === undefined ? { kind: 'unknown' } : { kind: 'known', ...turnOf(hand, verb) };
}
