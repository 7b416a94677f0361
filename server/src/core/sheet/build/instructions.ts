import { conditionOf } from '../../analysis/familyView';
import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { writeSentence } from '../sentences';
import { capital, closed, join } from '../sentences/grammar';
import type { TurnFacts } from '../sentences/language';
import type { SheetFigure, Instruction as SheetInstruction } from '../sheet';
import type { BuildContext } from './buildContext';
import { cautionsOf } from './cautions';
import { figuresOf } from './figures';
import { ifNotOf } from './ifNot';
import { type Instruction, ifNotValue } from './instructionKeys';
import { limitOf, limitsText, readingOf, unbalanceOf } from './readings';
import { findableValues, holdFacts, sentenceFacts } from './sentenceFacts';
import { torqueCallout } from './torque';
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
  const hold =
    'hold' in one || one.verb === 'tighten' || one.verb === 'loosen'
      ? holdFacts('hold' in one ? one.hold : undefined, turned, context)
      : undefined;
  const [fastener] = one.verb === 'tighten' ? (one.tighten ?? []) : [];
  const torque =
    one.verb === 'tighten' && fastener !== undefined ? torqueCallout(one, fastener, where, hold, context) : undefined;
  const turn = memory.spunOff.has(one) ? UNKNOWN_TURN : turnWords(one, turned, where, context);
  const facts = sentenceFacts(
    one,
    { where, turn, hold, torque: torque?.setting, discarded: memory.discarded.get(one) ?? [] },
    context,
  );
  const choices = choicesOf(one, where, turned, turn, memory, context);
  return {
    text: closedSentence(one, writeSentence(one, facts, context.writing)),
    cautions: cautionsOf(one, context),
    notes: [],
    ...defined('condition', context.conditions.condition(where, outer)),
    ...defined('torque', torque),
    ...defined('reading', readingFor(one, where, context)),
    ...defined('choices', choices.length === 0 ? undefined : choices),
    ...defined('check', checkFor(one, where, context)),
    ...defined('record', recordFor(one, where, context)),
    ...defined('figure', figureFor(one, context)),
    ...defined('ifNot', ifNotFor(one, where, memory, context)),
  };
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

/** The fasteners that an instruction turns. */
function turnedRefs(one: Instruction): readonly Ref[] {
  if (one.verb === 'loosen') return one.loosen ?? [];
  if (one.verb === 'tighten') return one.tighten ?? [];
  return one.verb === 'remove' ? (one.remove ?? []) : [];
}

/** Removing says which way only where the part comes off by turning, and a tool turns or the thread is unusual. */
function turnWords(one: Instruction, refs: readonly Ref[], where: BuildSet, context: BuildContext): TurnFacts {
  const parts = refs.map((ref) => context.procedure.family?.part(ref.id));
  const cases = parts.flatMap((part) => handCases(part, where, context));
  const facts = turnFacts(cases, one.verb === 'tighten' ? 'tighten' : 'loosen');
  if (one.verb !== 'remove') return facts;
  if (!parts.every((part) => TURNED_OFF.has(part?.kind?.value ?? ''))) return UNKNOWN_TURN;
  const byHand = facts.kind === 'known' && facts.hand === 'right' && (one.with ?? []).length === 0;
  return byHand ? UNKNOWN_TURN : facts;
}

/** Boxes to tick: what is found out, which way to turn where that was found out, and whether a part was renewed. */
function choicesOf(
  one: Instruction,
  where: BuildSet,
  turned: readonly Ref[],
  turn: TurnFacts,
  memory: Memory,
  context: BuildContext,
): string[] {
  if (one.verb === 'identify') return findableValues(one.identify?.id, context).map(capital);
  if (turn.kind === 'open' && one.verb !== 'tighten') return turned.flatMap((ref) => turnChoices(ref, where, context));
  const renewed = memory.renewals.get(one) ?? [];
  return renewed.flatMap((ref) => context.writing.phrases.renewal(context.names.part(ref.id, where).name));
}

function turnChoices(ref: Ref, where: BuildSet, context: BuildContext): string[] {
  const { phrases } = context.writing;
  return handCases(context.procedure.family?.part(ref.id), where, context).map((one) => {
    const clause = context.conditions.clause(one.where, where) ?? '';
    const turn = one.value === undefined ? undefined : turnOf(one.value, 'loosen');
    const words =
      turn === undefined
        ? phrases.notStated
        : phrases
            .turn(turn.direction, turn.hand)
            .map((run) => run.text)
            .join('');
    return `${phrases.when(clause)}: ${words}`;
  });
}

function readingFor(one: Instruction, where: BuildSet, context: BuildContext): SheetInstruction['reading'] {
  if (one.verb === 'measure' || one.verb === 'calculate') return readingOf(one, where, context);
  return one.verb === 'balance' ? unbalanceOf(one, where, context) : undefined;
}

function checkFor(one: Instruction, where: BuildSet, context: BuildContext): SheetInstruction['check'] {
  if (one.verb !== 'check' && one.verb !== 'adjust') return undefined;
  const { check } = one.verb === 'check' ? one : { check: undefined };
  const family = context.procedure.family?.value.checks;
  const known = check?.is === 'ref' ? family?.find((entry) => entry.id.id === check.ref.id)?.value : undefined;
  const accept = limitsText(one.accept ?? known?.accept, where, context);
  if (accept !== undefined) return { accept };
  return one.verb === 'check' ? {} : undefined;
}

function recordFor(one: Instruction, where: BuildSet, { names, writing }: BuildContext): SheetInstruction['record'] {
  const { phrases } = writing;
  switch (one.verb) {
    case 'record': {
      const labels = (one.serial ?? []).map((ref) =>
        phrases.serialNumberOf({ ...names.part(ref.id, where), count: 1 }),
      );
      return { label: labels.join('; ') };
    }
    case 'tighten':
      return one.plus === undefined ? undefined : { label: phrases.torqueToSet };
    case 'choose':
      return { label: phrases.sizeChosen };
    case 'wait':
      return one.wait?.word === 'cure' ? { label: phrases.started } : undefined;
    default:
      return undefined;
  }
}

/** The instruction's own figure, else that of what it finds out, checks or measures. */
function figureFor(one: Instruction, context: BuildContext): SheetFigure | undefined {
  const family = context.procedure.family?.value;
  const own = one.figure?.[0];
  const found =
    one.verb === 'identify'
      ? family?.identify?.find((entry) => entry.id.id === one.identify?.id)?.value.figure
      : undefined;
  const measured =
    one.verb === 'measure' && one.measure !== undefined ? limitOf(one.measure.id, context)?.figure : undefined;
  const check = one.verb === 'check' && one.check?.is === 'ref' ? one.check.ref.id : undefined;
  const checked = family?.checks?.find((entry) => entry.id.id === check)?.value.figure;
  return figuresOf([own ?? found ?? measured ?? checked], context)[0];
}

function ifNotFor(one: Instruction, where: BuildSet, memory: Memory, context: BuildContext): SheetInstruction['ifNot'] {
  const value = ifNotValue(one);
  if (value === undefined) return undefined;
  const further = (value.do ?? []).flatMap((nested) => instructionsFor(nested, where, memory, context));
  return ifNotOf(value, one, where, further, context);
}
