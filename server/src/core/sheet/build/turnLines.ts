import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { capital } from '../sentences/grammar';
import type { TurnFacts } from '../sentences/language';
import type { TorqueSetting, TurnLine } from '../sheet';
import type { BuildContext } from './buildContext';
import type { Instruction } from './instructionKeys';
import { handCases, turnOf } from './turning';

/**
 * Which way to turn, beside the words: wherever a fastener is loosened or taken off, and wherever a left-hand thread is
 * started or adjusted. A torque says it for itself.
 */
export function turnLines(
  one: Instruction,
  refs: readonly Ref[],
  turn: TurnFacts,
  where: BuildSet,
  context: BuildContext,
): TurnLine[] {
  if (one.verb === 'tighten' || turn.kind === 'unknown') return [];
  if (turn.kind === 'known') return [{ turn: { direction: turn.direction, hand: turn.hand } }];
  return refs.flatMap((ref) => linesOf(ref, refs.length > 1, where, context));
}

function linesOf(ref: Ref, isOneOfSeveral: boolean, where: BuildSet, context: BuildContext): TurnLine[] {
  const { names, conditions, writing, procedure } = context;
  const name = capital(names.part(ref.id, where).name);
  return handCases(procedure.family?.part(ref.id), where, context).map((one) => {
    const clause = conditions.clause(one.where, where);
    return {
      ...(isOneOfSeveral || clause === undefined ? { fastener: name } : {}),
      ...(clause === undefined ? {} : { condition: writing.phrases.when(clause) }),
      ...(one.value === undefined ? {} : { turn: turnOf(one.value, 'loosen') }),
    };
  });
}

/**
 * Where the branches of a torque differ in nothing but the hand: a line for each hand that the bench can find, so that
 * the value is printed once.
 */
export function foundTurns(setting: TorqueSetting): TurnLine[] | undefined {
  if (setting.kind !== 'byOutcome') return undefined;
  const [first, ...others] = setting.branches.map((branch) => withoutTurn(branch.setting));
  if (others.some((one) => one !== first)) return undefined;
  return setting.branches.map(({ condition, setting: one }) => {
    const turn = one.kind === 'one' ? one.value.turn : one.turn;
    return turn === undefined ? { condition } : { condition, turn };
  });
}

function withoutTurn(setting: object): string {
  return JSON.stringify(setting, (key, value: unknown) => (key === 'turn' ? undefined : value));
}
