import { conditionOf } from '../../analysis/familyView';
import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { writeSentence } from '../sentences';
import { closed, join } from '../sentences/grammar';
import type { HoldFacts } from '../sentences/language';
import type { Instruction as SheetInstruction, TorqueCallout, TorqueSetting } from '../sheet';
import type { BuildContext } from './buildContext';
import { cautionsOf } from './cautions';
import { choicesOf, type Memory, renewalsOf, turnedRefs, turnWords } from './choices';
import { ifNotOf } from './ifNot';
import { type Instruction, ifNotValue } from './instructionKeys';
import { checkFor, figureFor, readingFor, recordFor } from './particulars';
import { holdFacts, sentenceFacts } from './sentenceFacts';
import { sumFor } from './sums';
import { timeBlanks } from './timeBlanks';
import { torqueCallout } from './torque';
import { turnLines } from './turnLines';

export type { Memory } from './choices';

/** One instruction as the sheet shows it: mostly one, and one for each fastener where several are tightened at once. */
export function instructionsFor(
  one: Instruction,
  outer: BuildSet,
  memory: Memory,
  context: BuildContext,
): SheetInstruction[] {
  const where = whereOf(one, outer, context);
  if (where.isEmpty) return [];
  const all = oneForEachFastener(one).map((each) => singleInstruction(each, where, outer, memory, context));
  // What warns of the act, and what follows it, is said once.
  return all.map((each, place) => ({ ...each, cautions: place === 0 ? each.cautions : [] }));
}

function whereOf(one: Instruction, outer: BuildSet, { procedure }: BuildContext): BuildSet {
  const free = procedure.family === undefined || (one.when === undefined && one.unless === undefined);
  return free ? outer : outer.and(procedure.space.set(conditionOf(one)));
}

/** Fasteners tightened by one instruction may differ in torque and hand, so each gets a call-out of its own. */
function oneForEachFastener(one: Instruction): Instruction[] {
  if (one.verb !== 'tighten' || (one.tighten ?? []).length < 2) return [one];
  return (one.tighten ?? []).map((ref) => ({ ...one, tighten: [ref] }));
}

function singleInstruction(
  one: Instruction,
  where: BuildSet,
  outer: BuildSet,
  memory: Memory,
  context: BuildContext,
): SheetInstruction {
  const turned = turnedRefs(one);
  const hold = holdOf(one, turned, context);
  const torque = torqueFor(one, where, hold, context);
  const turn = turnWords(one, turned, where, memory, context);
  const decided = { where, turn, hold, torque: saidTorque(torque), discarded: memory.discarded.get(one) ?? [] };
  const sentence = writeSentence(one, sentenceFacts(one, decided, context), context.writing);
  const rounds = memory.rounds.get(one) ?? 1;
  const reading = readingFor(one, where, rounds, context);
  return {
    text: closedSentence(one, sentence),
    cautions: cautionsOf(one, context),
    notes: [],
    ...defined('condition', context.conditions.condition(where, outer)),
    ...defined('torque', torque),
    ...filled('turning', turnLines(one, turned, turn, where, context)),
    ...defined('reading', reading),
    ...defined('sum', sumFor(one, reading, where, rounds, context)),
    ...filled('times', timeBlanks(one, context)),
    ...filled('choices', choicesOf(one, context)),
    ...filled('renewals', renewalsOf(one, where, memory, context)),
    ...defined('check', checkFor(one, where, context)),
    ...defined('record', recordFor(one, where, context)),
    ...defined('figure', figureFor(one, context)),
    ...defined('ifNot', ifNotFor(one, where, memory, context)),
  };
}

/** A fastener is held as the family says even where the instruction does not; a part that is lifted off is not. */
function holdOf(one: Instruction, turned: readonly Ref[], context: BuildContext): HoldFacts | undefined {
  if (one.verb !== 'tighten' && one.verb !== 'loosen' && one.verb !== 'remove') return undefined;
  return one.verb === 'remove' && one.hold === undefined ? undefined : holdFacts(one.hold, turned, context);
}

/** Where only the hand is open, the words say the value, and the boxes which way to turn. */
function saidTorque(torque: TorqueCallout | undefined): TorqueSetting | undefined {
  if (torque?.found === undefined || torque.setting.kind !== 'byOutcome') return torque?.setting;
  return torque.setting.branches[0]?.setting;
}

function torqueFor(one: Instruction, where: BuildSet, hold: HoldFacts | undefined, context: BuildContext) {
  const fastener = one.verb === 'tighten' ? one.tighten?.[0] : undefined;
  if (one.verb !== 'tighten' || fastener === undefined) return undefined;
  return torqueCallout(one, fastener, where, hold, context);
}

function closedSentence(one: Instruction, text: SheetInstruction['text']): SheetInstruction['text'] {
  return text.length === 0 ? join(one.verb === 'say' ? '…' : one.verb) : closed(text);
}

/** An optional key is absent, never undefined, so that equal sheets are equal bytes. */
function defined<Key extends keyof SheetInstruction>(
  key: Key,
  value: SheetInstruction[Key] | undefined,
): Partial<SheetInstruction> {
  return value === undefined ? {} : { [key]: value };
}

function filled<Key extends 'turning' | 'times' | 'choices' | 'renewals'>(
  key: Key,
  value: NonNullable<SheetInstruction[Key]>,
): Partial<SheetInstruction> {
  return value.length === 0 ? {} : { [key]: value };
}

function ifNotFor(one: Instruction, where: BuildSet, memory: Memory, context: BuildContext): SheetInstruction['ifNot'] {
  const value = ifNotValue(one);
  if (value === undefined) return undefined;
  const further = (value.do ?? []).flatMap((nested) => instructionsFor(nested, where, memory, context));
  return ifNotOf(value, one, where, further, context);
}
