import { timeLabel } from '../filledLabels';
import { plain } from '../sentences/grammar';
import type { Instruction, RenewalBox, SheetPhase, SheetStep, TimeBlank } from '../sheet';
import { type Asking, type FieldPlace, withNames } from './asking';
import { nameLooseEnds } from './backFields';
import { always, never } from './formField';
import { nameReadings } from './readingFields';
import { type ActualFields, nameTorque, nameTurns } from './torqueFields';

/** What tables and forms ask for again, in the order in which the steps ask for it. */
export interface AskedInSteps {
  readonly torques: (ActualFields & { readonly at: FieldPlace })[];
  readonly readings: {
    readonly stepId: string;
    readonly name: string;
    readonly applies?: string;
    readonly blanks: readonly string[];
  }[];
  readonly found: { readonly stepId: string; readonly fields: readonly string[] }[];
  readonly renewals: {
    readonly stepId: string;
    readonly part: string;
    readonly choices: readonly string[];
    readonly number: string;
  }[];
  /** The hold points by the id of their step. */
  readonly holds: Map<string, SignFields>;
}

export function namePhases(
  phases: readonly SheetPhase[],
  asking: Asking,
): { phases: SheetPhase[]; asked: AskedInSteps } {
  const asked: AskedInSteps = { torques: [], readings: [], found: [], renewals: [], holds: new Map() };
  const named = phases.map((phase, index) => {
    const at: FieldPlace = { path: ['phase', index + 1], words: phase.title, need: always };
    const condition = asking.condition(at, phase.condition);
    const steps = phase.steps.map((step) => nameStep(step, condition.at, asked, asking));
    const looseEnds = nameLooseEnds(phase.looseEnds, at, asking);
    return { ...phase, ...condition.entry, steps, looseEnds };
  });
  return { phases: named, asked };
}

function nameStep(step: SheetStep, inPhase: FieldPlace, asked: AskedInSteps, asking: Asking): SheetStep {
  const words = `${asking.labels.step} ${step.number}`;
  const need = step.optional ? never : inPhase.need;
  const condition = asking.condition({ path: [step.id], words, stepId: step.id, need }, step.condition);
  const { at, field } = condition;
  const instructions = step.instructions.map((one, index) =>
    nameInstruction(one, String(index + 1), { at, applies: field }, asked, asking),
  );
  const signFields = step.sign === undefined ? undefined : nameHoldPoint(step.sign, at, asking);
  if (signFields !== undefined) asked.holds.set(step.id, signFields);
  const hold = signFields === undefined ? {} : { signFields };
  return withNames({ ...step, ...condition.entry, instructions }, hold);
}

/** The names of the blanks of a signature. */
export interface SignFields {
  readonly name: string;
  readonly signature: string;
  readonly date: string;
  readonly time: string;
}

function nameHoldPoint(who: string, at: FieldPlace, asking: Asking): SignFields {
  const { labels } = asking;
  const place = { ...at, path: [...at.path, 'hold'] };
  const what = (word: string) => `${labels.holdPoint}, ${who}: ${word}`;
  return {
    name: asking.text(place, 'name', what(labels.name)),
    signature: asking.field(place, ['signature'], { kind: 'signature', what: what(labels.signature) }),
    date: asking.text(place, 'date', what(labels.date)),
    time: asking.text({ ...place, need: never }, 'time', what(labels.time)),
  };
}

/** Where an instruction stands, and the box that says that it is done at all. */
interface Within {
  readonly at: FieldPlace;
  readonly applies: string | undefined;
}

function nameInstruction(
  one: Instruction,
  number: string,
  within: Within,
  asked: AskedInSteps,
  asking: Asking,
): Instruction {
  const step = within.at;
  const where = { ...step, path: [step.stepId ?? '', ...number.split('.')], words: `${step.words}.${number}` };
  const condition = asking.condition(where, one.condition);
  const { at } = condition;
  const applies = condition.field ?? within.applies;
  const sentence = plain(one.text);
  const field = asking.tick(at, 'done', `${asking.labels.done}: ${sentence}`);
  const named = nameBlanks({ ...one, ...condition.entry }, at, sentence, asked, asking);
  return withNames({ ...named, ...nameValues(one, at, applies, asked, asking), ...further() }, { field });

  // Only what went wrong is done over, and nobody knows that beforehand.
  function further(): Pick<Instruction, 'ifNot'> {
    if (one.ifNot === undefined) return {};
    const inside = { at: { ...step, need: never }, applies };
    const instructions = one.ifNot.instructions.map((each, index) =>
      nameInstruction(each, `${number}.${index + 1}`, inside, asked, asking),
    );
    return { ifNot: { ...one.ifNot, instructions } };
  }
}

/** The values that the tables behind the steps ask for again. */
function nameValues(
  one: Instruction,
  at: FieldPlace,
  applies: string | undefined,
  asked: AskedInSteps,
  asking: Asking,
): Partial<Instruction> {
  const again = applies === undefined ? {} : { applies };
  const values: Partial<Instruction> = {};
  if (one.torque !== undefined) {
    const { torque, rows } = nameTorque(one.torque, at, applies, asking);
    values.torque = torque;
    asked.torques.push(...rows.map((row) => ({ ...row, at })));
  }
  if (one.reading !== undefined) {
    const { blanks, final } = nameReadings(one.reading, one.sum, at, asking);
    asked.readings.push({ stepId: at.stepId ?? '', name: one.reading.name, ...again, blanks: final });
    return { ...values, ...blanks };
  }
  return values;
}

function nameBlanks(
  one: Instruction,
  at: FieldPlace,
  sentence: string,
  asked: AskedInSteps,
  asking: Asking,
): Instruction {
  const { turning, times, choices, renewals, record } = one;
  return {
    ...one,
    ...(turning && { turning: nameTurns(turning, sentence, at, asking) }),
    ...(times && { times: times.map((time, index) => nameTime(time, index, at, asking)) }),
    ...(choices && nameChoices(choices, at, sentence, asked, asking)),
    ...(renewals && { renewals: renewals.map((box, index) => nameRenewal(box, index, at, asked, asking)) }),
    ...(record && {
      record: withNames(record, {
        fields: record.labels.map((label, index) => recordBlank(label, index, at, sentence, asking)),
      }),
    }),
  };
}

function nameChoices(
  choices: readonly string[],
  at: FieldPlace,
  sentence: string,
  asked: AskedInSteps,
  asking: Asking,
): object {
  const choiceFields = asking.choice(at, 'found', choices, sentence);
  asked.found.push({ stepId: at.stepId ?? '', fields: choiceFields });
  return { choiceFields, initialsField: asking.text({ ...at, need: never }, 'found-by', asking.labels.initials) };
}

function recordBlank(label: string, index: number, at: FieldPlace, sentence: string, asking: Asking): string {
  return asking.field(at, ['record', index + 1], { kind: 'text', lines: 'one', what: label === '' ? sentence : label });
}

function nameTime(time: TimeBlank, index: number, at: FieldPlace, asking: Asking): TimeBlank {
  const what = timeLabel(asking.labels, time);
  const parts = ['time', index + 1];
  const field =
    time.kind === 'temperature'
      ? asking.field(at, parts, { kind: 'value', unit: time.unit, accepts: [], what })
      : asking.field(at, parts, { kind: 'text', lines: 'one', what });
  return withNames(time, { field });
}

function nameRenewal(box: RenewalBox, index: number, at: FieldPlace, asked: AskedInSteps, asking: Asking): RenewalBox {
  const { labels } = asking;
  const part = `part-${index + 1}`;
  const choices = asking.choice(at, part, [labels.fateBenchUsed, labels.fateBenchRenewed], box.part);
  const [used, renewed] = choices;
  const place = { ...at, path: [...at.path, part], need: never };
  const number = asking.text(place, 'number', `${box.part}: ${labels.newNumber}`);
  const initials = asking.text(place, 'initials', `${box.part}: ${labels.initials}`);
  asked.renewals.push({ stepId: at.stepId ?? '', part: box.part, choices, number });
  return withNames(box, { fields: { used, renewed, number, initials } });
}
