import type { BuildSet } from '../../builds';
import type { Part, TightenInstruction } from '../../model/generated/types';
import type { QuantityValue, Ref } from '../../model/values';
import { plain } from '../sentences/grammar';
import type { HoldFacts } from '../sentences/language';
import type { Hand, SingleSetting, TorqueCallout, TorqueSetting, TorqueValue } from '../sheet';
import { acceptanceOf } from './acceptances';
import type { BuildContext } from './buildContext';
import { pieceGrid } from './pieceGrid';
import { bandCells } from './torqueBands';
import { handCases, turnOf } from './turning';
import { foundTurns } from './turnLines';
import { merged, type ValueCase, valuesIn } from './valuesIn';

/** What one fastener is tightened with in one case. */
interface Tightening {
  readonly torque: QuantityValue | undefined;
  readonly angle: QuantityValue | undefined;
  readonly hand: Hand | undefined;
}

/** The call-out of one fastener. The instruction's own values come first, then the family's; none is ever made up. */
export function torqueCallout(
  one: TightenInstruction,
  ref: Ref,
  where: BuildSet,
  hold: HoldFacts | undefined,
  context: BuildContext,
): TorqueCallout {
  const { names, writing } = context;
  const thing = names.part(ref.id, where);
  const count = one.count?.value ?? thing.count ?? 1;
  const order = inOrderOf(one, context.procedure.family?.part(ref.id));
  const setting = settingOf(one, ref.id, where, context);
  const found = foundTurns(setting);
  const grid = pieceGrid(one, count, order, setting, context);
  return {
    fastener: writing.phrases.piecesOf(thing, count),
    ...(count > 1 ? { pieces: count } : {}),
    setting,
    ...(found === undefined ? {} : { found }),
    ...(grid === undefined ? {} : { grid }),
    tools: (one.with ?? []).flatMap((use) => (use.tool === undefined ? [] : [names.tool(use.tool.id).name])),
    ...(hold === undefined ? {} : { hold: plain(writing.phrases.hold(hold)) }),
    ...(order.length === 0 ? {} : { inOrder: writing.phrases.inOrder(order) }),
  };
}

export function inOrderOf(one: TightenInstruction, part: Part | undefined): string[] {
  return (one.inOrder ?? part?.inOrder ?? []).map((name) => name.text);
}

/** The values that an instruction may bring of its own. */
type OwnValues = Pick<TightenInstruction, 'torque' | 'angle' | 'passes' | 'plus'>;

/** What a fastener is tightened with: the values given first, then the family's. */
export function settingOf(one: OwnValues, id: string, where: BuildSet, context: BuildContext): TorqueSetting {
  const cases = tighteningCases(one, id, where, context);
  const [only] = cases;
  if (cases.length > 1) {
    const branches = cases.map((each) => ({
      condition: branchWords(each.where, where, context),
      setting: singleSetting(each.value, one, id, each.where, context),
    }));
    return { kind: 'byOutcome', branches };
  }
  return singleSetting(only?.value, one, id, where, context);
}

function singleSetting(
  given: Tightening | undefined,
  one: OwnValues,
  id: string,
  where: BuildSet,
  context: BuildContext,
): SingleSetting {
  const value = torqueValue(given, one, context);
  const bands = bandCells(id, given, where, context);
  if (value !== undefined) return { kind: 'one', value, ...bands };
  const hand = given?.hand;
  return { kind: 'blank', ...(hand === undefined ? {} : { turn: turnOf(hand, 'tighten') }), ...bands };
}

function branchWords(branch: BuildSet, where: BuildSet, { conditions, writing }: BuildContext): string {
  const clause = conditions.clause(branch, where);
  return clause === undefined ? '' : writing.phrases.when(clause);
}

/** Every combination of torque, angle and hand that the set leaves open; equal ones are one case. */
function tighteningCases(one: OwnValues, id: string, where: BuildSet, context: BuildContext): ValueCase<Tightening>[] {
  const { space, family } = context.procedure;
  const part = family?.part(id);
  const final = one.passes?.at(-1);
  const torques: ValueCase<QuantityValue>[] =
    one.torque === undefined && final !== undefined
      ? [{ value: final, where }]
      : valuesIn(one.torque ?? part?.torque, where, space);
  const angles = valuesIn(one.angle ?? part?.angle, where, space);
  const hands = handCases(part, where, context);
  const all = torques.flatMap((torque) =>
    angles.flatMap((angle) =>
      hands.map((hand) => ({
        value: { torque: torque.value, angle: angle.value, hand: hand.value },
        where: torque.where.and(angle.where).and(hand.where),
      })),
    ),
  );
  const existing = all.filter((each) => !each.where.isEmpty);
  return merged(existing, (value) => JSON.stringify([value?.torque?.text, value?.angle?.text, value?.hand]));
}

function torqueValue(given: Tightening | undefined, one: OwnValues, context: BuildContext): TorqueValue | undefined {
  // A torque that cannot be read, such as one without a unit, is none: in large type it would be taken for one.
  if (given?.torque?.reading.quantity === undefined) return undefined;
  const { quantities } = context;
  const written = quantities.torque(given.torque);
  const angle = given.angle === undefined ? written.angle : quantities.inTwoUnits(given.angle).primary;
  const before = (one.passes ?? []).slice(0, -1);
  // With a reading added, the torque to set is worked out on the bench.
  const accepts = one.plus === undefined ? acceptanceOf(given.torque, context) : undefined;
  return {
    primary: withReading(written.primary, one, context),
    ...(written.secondary === undefined ? {} : { secondary: written.secondary }),
    ...(angle === undefined ? {} : { angle }),
    ...(accepts === undefined ? {} : { accepts }),
    passes: before.map((pass) => quantities.inTwoUnits(pass)),
    ...(given.hand === undefined ? {} : { turn: turnOf(given.hand, 'tighten') }),
  };
}

/** The torque that is stated, where it is one and the same whatever the bench finds. */
export function statedTorque(
  one: TightenInstruction,
  where: BuildSet,
  context: BuildContext,
): QuantityValue | undefined {
  const id = one.tighten?.[0]?.id;
  const torques = new Set(
    id === undefined ? [] : tighteningCases(one, id, where, context).map(({ value }) => value?.torque),
  );
  const [only] = torques;
  return torques.size === 1 && only?.reading.quantity !== undefined ? only : undefined;
}

function withReading(torque: string, one: OwnValues, { names, writing }: BuildContext): string {
  return one.plus === undefined ? torque : writing.phrases.plus(torque, names.value(one.plus.id).name);
}
