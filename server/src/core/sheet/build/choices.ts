import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { capital } from '../sentences/grammar';
import type { TurnFacts } from '../sentences/language';
import type { RenewalBox } from '../sheet';
import type { BuildContext } from './buildContext';
import type { Instruction } from './instructionKeys';
import { findableValues } from './sentenceFacts';
import { handCases, turnFacts } from './turning';

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
  /** How often an instruction comes up, where the work may go back over it. */
  readonly rounds: ReadonlyMap<Instruction, number>;
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

/** Boxes to tick for what is found out. */
export function choicesOf(one: Instruction, context: BuildContext): string[] {
  return one.verb === 'identify'
    ? findableValues(one.identify?.id, context).map((value) => capital(context.writing.phrases.found(value)))
    : [];
}

/** Parts of which it is ticked here whether they are used again. */
export function renewalsOf(one: Instruction, where: BuildSet, memory: Memory, { names }: BuildContext): RenewalBox[] {
  return (memory.renewals.get(one) ?? []).map((ref) => ({ part: capital(names.part(ref.id, where).name) }));
}
