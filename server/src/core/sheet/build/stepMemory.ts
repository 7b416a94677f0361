import type { StepView } from '../../analysis/procedureView';
import { areSame } from '../../analysis/sameParts';
import { plain } from '../sentences/grammar';
import type { Caution, SheetFinding, SheetStep } from '../sheet';
import type { BuildContext } from './buildContext';
import type { Memory } from './choices';
import type { StepAnswer } from './stepNames';
import type { UntranslatedNote } from './untranslated';

/** What is said of a step alone, whatever its number is and what is found at it. */
export type StepContent = Omit<SheetStep, 'id' | 'number' | 'changed' | 'findings'>;

/** What else is printed at a step, and changes without it. */
export interface AtStep {
  readonly id: string;
  readonly number: number;
  readonly isChanged: boolean;
  /** What its phase warns of, where it is the first. */
  readonly fromPhase: readonly Caution[];
  readonly findings: readonly SheetFinding[];
}

/** A step as it was written last, with all that it depends on beside the ground that it stands on. */
export interface BuiltStep {
  readonly content: StepContent;
  /** Its id, which may be made of its number, and what earlier and later steps make of its instructions. */
  readonly memory: readonly unknown[];
  readonly asked: ReadonlyMap<string, StepAnswer>;
  readonly notes: readonly UntranslatedNote[];
  /** As it was printed last. */
  readonly printed: { readonly at: AtStep; readonly step: SheetStep } | undefined;
}

/**
 * The step as the sheet has it. Where all that it depends on is as it was, it is the object of the last sheet, by which
 * tables and printers tell that they have nothing to do.
 */
export function stepOnSheet(
  view: StepView,
  at: AtStep,
  memory: Memory,
  context: BuildContext,
  write: () => StepContent,
): SheetStep {
  const known = context.ground.steps.get(view);
  const said = memoryOf(at.id, view, memory);
  const holds = known !== undefined && areSame(known.memory, said) && context.stepNames.answersAs(known.asked);
  if (holds) context.untranslated.takeAgain(known.notes);
  const built = holds ? known : written(said, context, write);
  const { printed } = built;
  if (printed !== undefined && isSameAt(printed.at, at)) {
    if (!holds) context.ground.steps.set(view, built);
    return printed.step;
  }
  const step = put(built.content, at);
  context.ground.steps.set(view, { ...built, printed: { at, step } });
  return step;
}

/** Writes a step, and takes down what was asked of other steps and which translations were missed on the way. */
function written(memory: readonly unknown[], context: BuildContext, write: () => StepContent): BuiltStep {
  const { stepNames, untranslated, prose } = context;
  const asked = new Map<string, StepAnswer>();
  const notes = new Map<UntranslatedNote['prose'], UntranslatedNote>();
  stepNames.writeDown(asked);
  untranslated.writeDown(notes);
  const content = write();
  const printed = [...notes.values()].map((note) =>
    note.kind === 'text' ? { ...note, text: plain(prose.read(note.prose)) } : note,
  );
  stepNames.writeDown(undefined);
  untranslated.writeDown(undefined);
  untranslated.takeAgain(printed);
  return { content, memory, asked, notes: printed, printed: undefined };
}

function put(content: StepContent, { id, number, isChanged, fromPhase, findings }: AtStep): SheetStep {
  return {
    id,
    number,
    ...content,
    ...(isChanged ? { changed: true as const } : {}),
    cautions: [...fromPhase, ...content.cautions],
    findings: [...findings],
  };
}

/** Mostly nothing is said of an instruction beside what it says itself. */
function memoryOf(id: string, { instructions }: StepView, { discarded, spunOff, renewals, rounds }: Memory): unknown[] {
  const said: unknown[] = [id];
  for (const { instruction: one } of instructions) {
    const isRemoval = one.verb === 'remove';
    const often = rounds.get(one);
    const renewed = renewals.get(one);
    const spent = isRemoval ? discarded.get(one) : undefined;
    if (often !== undefined) said.push(one, often);
    if (renewed !== undefined) said.push('renewed', one, ...renewed);
    if (spent !== undefined) said.push('spent', one, ...spent);
    if (isRemoval && spunOff.has(one)) said.push('spun off', one);
  }
  return said;
}

function isSameAt(one: AtStep, other: AtStep): boolean {
  return (
    one.id === other.id &&
    one.number === other.number &&
    one.isChanged === other.isChanged &&
    isSameJson(one.fromPhase, other.fromPhase) &&
    isSameJson(one.findings, other.findings)
  );
}

/** Mostly there is nothing in either. */
function isSameJson(some: readonly unknown[], others: readonly unknown[]): boolean {
  return some.length === others.length && (some.length === 0 || JSON.stringify(some) === JSON.stringify(others));
}
