import type { BuildSet } from '../../builds';
import type { QuantityValue } from '../../model/values';
import { formatPropertyClass } from '../../standards/propertyClasses';
import { weakestPart } from '../../standards/torqueBand';
import { type FastenerJoint, jointsOf } from '../../workings/joint';
import { bandOf } from '../../workings/torqueJudgement';
import type { NoBand } from '../sentences/language';
import type { ComputedBand } from '../sheet';
import type { BuildContext } from './buildContext';

/** What the fastener is tightened with, as far as its band depends on it. */
interface Tightening {
  readonly torque: QuantityValue | undefined;
  readonly angle: QuantityValue | undefined;
}

/** The computed bands of a fastener where they are asked for, else nothing. Never taken for a stated torque. */
export function bandCells(
  id: string,
  given: Tightening | undefined,
  where: BuildSet,
  context: BuildContext,
): { bands?: ComputedBand[] } {
  return context.options.torqueBands === 'computed' ? { bands: bandsOf(id, given, where, context) } : {};
}

/** One band, or one for each joint that the bench can find; joints that come to the same words are one. */
function bandsOf(
  id: string,
  given: Tightening | undefined,
  where: BuildSet,
  context: BuildContext,
): [ComputedBand, ...ComputedBand[]] {
  const { family, space } = context.procedure;
  const joints = family === undefined ? [] : jointsOf(family, space, id);
  const byWords = new Map<string, { readonly band: ComputedBand; readonly on: BuildSet }>();
  for (const joint of joints) {
    const on = joint.where.and(where);
    if (on.isEmpty) continue;
    const band = bandOfJoint(joint, given, where, context);
    const words = JSON.stringify(band);
    byWords.set(words, { band, on: byWords.get(words)?.on.or(on) ?? on });
  }
  const [first, ...others] = [...byWords.values()].map(({ band, on }) => withCondition(band, on, where, context));
  return first === undefined ? [none('no-thread', context)] : [first, ...others];
}

function withCondition(
  band: ComputedBand,
  on: BuildSet,
  where: BuildSet,
  { conditions, writing }: BuildContext,
): ComputedBand {
  const clause = conditions.clause(on, where);
  return clause === undefined ? band : { ...band, when: writing.phrases.when(clause) };
}

function bandOfJoint(
  one: FastenerJoint,
  given: Tightening | undefined,
  where: BuildSet,
  context: BuildContext,
): ComputedBand {
  const { joint, facts, members, prevailing } = one;
  if (isTurnedOn(given)) return none('angle', context);
  if (joint === undefined || facts.thread === undefined) {
    return none(facts.thread === undefined ? 'no-thread' : 'odd-thread', context);
  }
  // The band of all classes at once is good for a check, and far too wide to be printed beside a torque.
  if (joint.parts.length === 0) {
    return none(members.some(({ written }) => written !== undefined) ? 'odd-class' : 'no-class', context);
  }
  const band = bandOf(joint);
  const weakest = weakestPart(joint);
  if (band === undefined || weakest === undefined) return none('no-strength', context);
  const { names, quantities, writing } = context;
  // With little friction stated, the proof load comes before what tables give.
  const high = Math.min(band.high.torque, band.proof.torque);
  const of = writing.phrases.bandOf({
    thread: facts.thread.value.text.trim(),
    propertyClass: formatPropertyClass(weakest.part.propertyClass),
    standard: weakest.strength.standard,
    unknown: members.flatMap(({ propertyClass, id: member }) =>
      propertyClass === undefined ? [names.part(member, where)] : [],
    ),
    hasPrevailing: prevailing !== undefined,
  });
  return { kind: 'band', ...quantities.torqueRange(band.low.torque, high, given?.torque), of };
}

/** A torque that an angle follows only snugs the joint, and no band is that of a snug torque. */
function isTurnedOn(given: Tightening | undefined): boolean {
  return given?.angle !== undefined || given?.torque?.reading.quantity?.form === 'torque-angle';
}

function none(why: NoBand, { writing }: BuildContext): ComputedBand {
  return { kind: 'none', why: writing.phrases.noBand(why) };
}
