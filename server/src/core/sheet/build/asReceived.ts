import type { BuildSet } from '../../builds';
import type { ArrivalRow, FoundRow, ReceivedUnit } from '../recordSheet';
import { capital } from '../sentences/grammar';
import type { RecordRow } from '../sheet';
import type { BuildContext } from './buildContext';
import { readingOf } from './readings';
import { findableValues } from './sentenceFacts';
import { serialRows } from './serials';
import { conditioned, type InstructionUse, stepsOf } from './uses';

/**
 * The page that is filled in as the unit comes in: only what the family and the procedure state. Undefined where the
 * work starts from parts, for then no unit comes in.
 */
export function receivedUnit(context: BuildContext): ReceivedUnit | undefined {
  if (context.procedure.value.starts?.id === 'parts') return undefined;
  return {
    variants: variantsHere(context).map(({ id, name }) => (name === '' ? id : name)),
    serials: serialRows(context, 'received'),
    found: foundRows(context),
    measured: measuredBeforeStripping(context),
    arrivals: arrivalRows(context),
  };
}

/** What the bench finds out, each once with every step that asks for it. */
function foundRows(context: BuildContext): FoundRow[] {
  const byId = new Map<string, InstructionUse[]>();
  for (const use of context.uses.of('identify')) {
    const id = use.instruction.verb === 'identify' ? use.instruction.identify?.id : undefined;
    if (id !== undefined) byId.set(id, [...(byId.get(id) ?? []), use]);
  }
  return [...byId].flatMap(([id, uses]) => {
    const where = anyOf(uses, context).and(context.procedure.space.outcomeExists(id));
    if (where.isEmpty) return [];
    const values = findableValues(id, context).map((value) => capital(context.writing.phrases.found(value)));
    return [{ what: capital(context.names.value(id).name), values, ...conditioned(where, context), at: stepsOf(uses) }];
  });
}

/** Nothing is measured "before" where nothing comes off. */
function measuredBeforeStripping(context: BuildContext): RecordRow[] {
  return beforeStripping(context).flatMap(({ instruction, step, stepId, where }) => {
    const reading = instruction.verb === 'measure' ? readingOf(instruction, where, context) : undefined;
    if (reading === undefined) return [];
    const { name, ...facts } = reading;
    return [{ step, stepId, what: name, ...facts, ...conditioned(where, context) }];
  });
}

/** None where nothing is stripped. */
function beforeStripping(context: BuildContext): InstructionUse[] {
  const before: InstructionUse[] = [];
  for (const use of context.uses.inOrder()) {
    if (isStripping(use, context)) return before;
    before.push(use);
  }
  return [];
}

/** A blank that comes out again, such as the one that closes the oil inlet in the wash, strips nothing. */
function isStripping({ instruction: one }: InstructionUse, { procedure }: BuildContext): boolean {
  if (one.verb !== 'remove' && one.verb !== 'loosen') return false;
  const refs = (one.verb === 'remove' ? one.remove : one.loosen) ?? [];
  return refs.some((ref) => procedure.family?.part(ref.id)?.temporary?.value !== true);
}

/** A unit that is not as the sheet expects it needs another sheet, so every option is asked for. */
function arrivalRows(context: BuildContext): ArrivalRow[] {
  const { picked, names, writing } = context;
  const { space } = context.procedure;
  const { phrases } = writing;
  const sameVariants = space.union(variantsHere(context).map(({ id }) => space.set({ kind: 'is', id })));
  return [...space.facts.options.values()].flatMap(({ id }) => {
    const arrives = space.set({ kind: 'arrives', id });
    if (!arrives.overlaps(sameVariants)) return [];
    const what = phrases.arrivedWith(names.option(id));
    return [{ what, values: [phrases.yes, phrases.no], expected: expectedOf(arrives, picked.set) }];
  });
}

/** The variants of the sheet; a family that names none has one without a name, which no plate bears. */
function variantsHere({ procedure, picked }: BuildContext): readonly { id: string; name: string }[] {
  const { space } = procedure;
  return space.facts.variants.filter(({ id }) => space.set({ kind: 'is', id }).overlaps(picked.set));
}

function expectedOf(arrives: BuildSet, set: BuildSet): ArrivalRow['expected'] {
  if (set.isWithin(arrives)) return 'with';
  return set.overlaps(arrives) ? 'either' : 'without';
}

function anyOf(uses: readonly InstructionUse[], { procedure }: BuildContext): BuildSet {
  return procedure.space.union(uses.map(({ where }) => where));
}
