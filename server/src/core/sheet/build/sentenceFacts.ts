import type { BuildSet } from '../../builds';
import type { QuantityValue, Ref, SignedTerm, Prose as WrittenProse } from '../../model/values';
import { join } from '../sentences/grammar';
import type { HoldFacts, SentenceFacts, TurnFacts } from '../sentences/language';
import type { Prose, TorqueSetting } from '../sheet';
import type { BuildContext } from './buildContext';
import type { Hold, Instruction } from './instructionKeys';
import { limitOf, placesOf } from './readings';
import { inOrderOf } from './torque';

/** What was already decided about an instruction before its sentence is written. */
export interface Decided {
  readonly where: BuildSet;
  readonly turn: TurnFacts;
  readonly hold: HoldFacts | undefined;
  readonly torque: TorqueSetting | undefined;
  readonly discarded: readonly Ref[];
}

export function sentenceFacts(one: Instruction, decided: Decided, context: BuildContext): SentenceFacts {
  const { names, quantities, prose, procedure } = context;
  const { where } = decided;
  return {
    part: (ref) => names.part(ref.id, where),
    tool: (use) => names.tool(use.tool?.id ?? '', use.count?.value ?? 1),
    consumable: (ref) => names.consumable(ref.id),
    value: (ref) => names.value(ref.id),
    quantity: (value) => quantities.inBrackets(value),
    prose: (written) => prose.read(written),
    term: (term) => termWords(term, context),
    alwaysRenewed: (ref) => procedure.family?.part(ref.id)?.renew?.value === 'always',
    turn: decided.turn,
    hold: decided.hold,
    orient: placing(one, 'orient', context),
    locate: placing(one, 'locate', context),
    torque: decided.torque,
    inOrder: one.verb === 'tighten' ? inOrderOf(one, procedure.family?.part(one.tighten?.[0]?.id ?? '')) : [],
    places: one.verb === 'measure' ? placesOf(one, limitOf(one.measure?.id ?? '', context), context) : [],
    from: one.verb === 'calculate' ? (one.from ?? limitOf(one.calculate?.id ?? '', context)?.from ?? []) : [],
    sizes: sizesOf(one, context),
    findable: one.verb === 'identify' ? findableValues(one.identify?.id, context) : [],
    check: checkWords(one, context),
    grade: gradeOf(one, context),
    cure: cureOf(one, context),
    discarded: decided.discarded,
  };
}

export function findableValues(id: string | undefined, { procedure }: BuildContext): string[] {
  const found = procedure.family?.value.identify?.find((entry) => entry.id.id === id)?.value;
  return (found?.values ?? []).map((value) => value.text);
}

/** What is held: the instruction says it, else the family. */
export function holdFacts(hold: Hold | undefined, refs: readonly Ref[], context: BuildContext): HoldFacts | undefined {
  const family = refs.map((ref) => context.procedure.family?.part(ref.id)?.hold).find((one) => one !== undefined);
  const at: WrittenProse | undefined = hold?.at ?? family;
  if (at === undefined) return undefined;
  const uses = (hold?.with ?? []).filter((use) => use.tool !== undefined);
  return {
    at: context.prose.read(at),
    with: uses.map((use) => context.names.tool(use.tool?.id ?? '', use.count?.value ?? 1)),
  };
}

function termWords({ sign, term }: SignedTerm, { names, quantities, writing }: BuildContext) {
  if (!('id' in term)) return { sign, name: [{ kind: 'quantity' as const, text: quantities.inBrackets(term) }] };
  const thing = names.value(term.id);
  return { sign, name: thing.name === term.id ? join(term.id) : writing.grammar.the(thing) };
}

/** How a part faces and what it locates on matters to whoever fits it, wherever it is written. */
function placing(one: Instruction, key: 'orient' | 'locate', context: BuildContext): Prose | undefined {
  if (one.verb !== 'install' && one.verb !== 'press') return undefined;
  const refs = (one.verb === 'install' ? one.install : one.press) ?? [];
  const written =
    one[key] ?? (refs.length === 1 ? context.procedure.family?.part(refs[0]?.id ?? '')?.[key] : undefined);
  return written === undefined ? undefined : context.prose.read(written);
}

function sizesOf(one: Instruction, { procedure, quantities }: BuildContext): SentenceFacts['sizes'] {
  const part = one.verb === 'choose' ? procedure.family?.part(one.choose?.id ?? '') : undefined;
  if (part?.sizes === undefined) return undefined;
  const step = part.sizeStep && quantities.inTwoUnits(part.sizeStep).primary;
  return { range: quantities.inTwoUnits(part.sizes).primary, step };
}

function checkWords(one: Instruction, { procedure, prose }: BuildContext): Prose | undefined {
  if (one.verb !== 'check' || one.check?.is !== 'ref') return undefined;
  const { id } = one.check.ref;
  const say = procedure.family?.value.checks?.find((entry) => entry.id.id === id)?.value.say;
  return say === undefined ? join(id) : prose.read(say);
}

function gradeOf(one: Instruction, { procedure }: BuildContext): string | undefined {
  if (one.verb !== 'balance') return undefined;
  const group = procedure.family?.value.balanceGroups?.find((entry) => entry.id.id === one.balance?.id);
  return (one.grade ?? group?.value.grade)?.text;
}

function cureOf(one: Instruction, context: BuildContext): string | undefined {
  if (one.verb !== 'wait' || one.wait?.word !== 'cure') return undefined;
  const longest = longestCure(one.of ?? [], context);
  return longest && context.quantities.inTwoUnits(longest).primary;
}

/** The longest time that any of the stuff needs; undefined where any of it states none. */
export function longestCure(of: readonly Ref[], { names }: BuildContext): QuantityValue | undefined {
  const cures = of.map((ref) => names.consumableItem(ref.id)?.entry.value.cure);
  const [first] = cures;
  if (first === undefined || cures.some((cure) => cure === undefined)) return undefined;
  return cures.reduce((a, b) => (hours(b) > hours(a) ? b : a), first);
}

function hours(value: Parameters<BuildContext['quantities']['inTwoUnits']>[0] | undefined): number {
  const quantity = value?.reading.quantity;
  if (quantity === undefined) return 0;
  return (quantity.form === 'range' ? quantity.high.value : quantity.number.value) * quantity.unit.factor;
}
