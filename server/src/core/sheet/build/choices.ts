import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { capital, plain } from '../sentences/grammar';
import type { TurnFacts } from '../sentences/language';
import type { Hand } from '../sheet';
import type { BuildContext } from './buildContext';
import type { Instruction } from './instructionKeys';
import { findableValues } from './sentenceFacts';
import { handCases, turnFacts, turnOf } from './turning';

const UNKNOWN_TURN: TurnFacts = { kind: 'unknown' };
/** Kinds that come off by turning; a shaft has a thread too and does not. */
const TURNED_OFF = new Set(['nut', 'bolt', 'screw', 'stud', 'plug', 'fitting', 'sensor']);

/** What the builder has to remember from one instruction to the next. */
export interface Memory {
  readonly discarded: ReadonlyMap<Instruction, readonly Ref[]>;
  /** Removals that need no word about the direction of turn. */
  readonly spunOff: ReadonlySet<Instruction>;
  /** Parts of which an instruction ticks whether they were used again. */
  readonly renewals: ReadonlyMap<Instruction, readonly Ref[]>;
}

/** The fasteners that an instruction turns. */
export function turnedRefs(one: Instruction): readonly Ref[] {
  if (one.verb === 'loosen') return one.loosen ?? [];
  if (one.verb === 'tighten') return one.tighten ?? [];
  if (one.verb === 'remove') return one.remove ?? [];
  if (one.verb === 'install') return one.install ?? [];
  return one.verb === 'adjust' ? (one.adjust ?? []) : [];
}

/** Removing says which way only where the part comes off by turning, and a tool turns or the thread is unusual. */
export function turnWords(
  one: Instruction,
  refs: readonly Ref[],
  where: BuildSet,
  memory: Memory,
  context: BuildContext,
): TurnFacts {
  if (memory.spunOff.has(one)) return UNKNOWN_TURN;
  const parts = refs.map((ref) => context.procedure.family?.part(ref.id));
  const cases = parts.flatMap((part) => handCases(part, where, context));
  const facts = turnFacts(cases, one.verb === 'tighten' || one.verb === 'install' ? 'tighten' : 'loosen');
  if (one.verb === 'loosen' || one.verb === 'tighten') return facts;
  // Started or adjusted by feel: only the unusual hand needs a word, and what the bench finds is asked at the torque.
  const turned = one.verb === 'adjust' || parts.every((part) => TURNED_OFF.has(part?.kind?.value ?? ''));
  if (!turned) return UNKNOWN_TURN;
  if (one.verb !== 'remove') return facts.kind === 'known' && facts.hand === 'left' ? facts : UNKNOWN_TURN;
  const byHand = facts.kind === 'known' && facts.hand === 'right' && (one.with ?? []).length === 0;
  return byHand ? UNKNOWN_TURN : facts;
}

/** Boxes to tick: what is found out, which way to turn where that was found out, and whether a part was renewed. */
export function choicesOf(
  one: Instruction,
  where: BuildSet,
  turned: readonly Ref[],
  turn: TurnFacts,
  memory: Memory,
  context: BuildContext,
): string[] {
  if (one.verb === 'identify') return findableValues(one.identify?.id, context).map(capital);
  if (turn.kind === 'open' && one.verb !== 'tighten') return turnChoices(turned, where, context);
  const renewed = memory.renewals.get(one) ?? [];
  return renewed.flatMap((ref) => context.writing.phrases.renewal(context.names.part(ref.id, where).name));
}

function turnChoices(refs: readonly Ref[], where: BuildSet, context: BuildContext): string[] {
  const { phrases } = context.writing;
  return refs.flatMap((ref) => {
    const thing = context.names.part(ref.id, where);
    return handCases(context.procedure.family?.part(ref.id), where, context).map((one) => {
      const clause = context.conditions.clause(one.where, where);
      const when = [
        ...(refs.length > 1 || clause === undefined ? [capital(thing.name)] : []),
        ...(clause === undefined ? [] : [phrases.when(clause)]),
      ];
      return [...when, directionWords(one.value, context)].join(': ');
    });
  });
}

function directionWords(hand: Hand | undefined, { writing }: BuildContext): string {
  if (hand === undefined) return writing.phrases.notStated;
  const turn = turnOf(hand, 'loosen');
  return plain(writing.phrases.turn(turn.direction, turn.hand));
}
