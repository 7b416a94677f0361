import type { FamilyView } from '../../analysis/familyView';
import { heldValues, whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { BuildSet } from '../../builds';
import type { Text } from '../../model/values';
import { designationProblemWords } from '../../standards/designationProblemWords';
import { judgePitch, type PitchJudgement } from '../../standards/standardPitch';
import {
  type DesignationProblem,
  readThreadDesignation,
  type ThreadDesignation,
} from '../../standards/threadDesignation';
import { sourceRange } from '../../syntax/scalarSource';
import type { Span } from '../../text/span';
import { threadWorking } from '../../workings/threadWorking';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { shortened } from '../support/phrases';
import {
  diameterChoices,
  nearestDiameters,
  pitchChoices,
  sizeText,
  standardPitches,
  type ThreadChange,
} from '../support/standardThreads';

const messages = {
  unread: (thread: string, name: string, why: string) =>
    `The thread ${thread} of the ${name} cannot be read as it stands: ${why}`,
  pitch: (thread: string, name: string, size: string, pitches: string) =>
    `The pitch of the thread ${thread} of the ${name} is not standard; ${size} has ${pitches}`,
  diameter: (thread: string, name: string, sizes: string) =>
    `The diameter of the thread ${thread} of the ${name} is not standard; next to it are ${sizes}`,
};

type Context = RuleContext<typeof messages>;

const ODD_PITCH =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.7, hand: right, torque: 4.6 ± 0.3 N·m }';

export const threadNotStandard = defineRule({
  id: 'thread-not-standard',
  group: 'threads',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A thread designation cannot be read, or names a diameter or a pitch that the standard series do not have (ISO 261, ASME B1.1).',
    why: 'Nobody finds a tap or a spare with that thread, and nothing can be reckoned with it: most often a digit is wrong.',
    wrong: inFamily(ODD_PITCH),
    right: inFamily(ODD_PITCH.replace('M5×0.7', 'M5×0.8')),
  },
  messages,
  check: {
    part({ id, value }, ctx) {
      const { family } = ctx;
      if (family === undefined || value.thread === undefined) return;
      const served = presentBuilds(family, family.space, id.id);
      for (const one of heldValues(value.thread, family.space, served).held) {
        check({ family, id: id.id, thread: one.value, where: one.where, served }, ctx);
      }
    },
  },
});

interface Place {
  readonly family: FamilyView;
  readonly id: string;
  readonly thread: Text;
  readonly where: BuildSet;
  readonly served: BuildSet;
}

function check(place: Place, ctx: Context): void {
  const { designation, problems } = readThreadDesignation(place.thread.text);
  const [problem] = problems;
  if (problem !== undefined) tellUnread(place, problem, designation, ctx);
  else if (designation !== undefined) tellOdd(place, designation, ctx);
}

/** A thread of another system is standard in its own, and an empty text is told by its shape. */
function tellUnread(
  place: Place,
  problem: DesignationProblem,
  designation: ThreadDesignation | undefined,
  ctx: Context,
): void {
  if (problem.kind === 'other-system' || problem.kind === 'empty') return;
  const { thread } = place;
  const words = designationProblemWords(problem);
  const why = /^[A-Z][a-z]/.test(words) ? words.charAt(0).toLowerCase() + words.slice(1) : words;
  ctx.report(rangeOf(thread, problem.span), 'unread', [textOf(thread), nameOf(place), why], {
    ...details(place),
    fixes: () => pitchChoices(thread.text, problem, designation).map((change) => fixOf(thread, change)),
  });
}

function tellOdd(place: Place, designation: ThreadDesignation, ctx: Context): void {
  // Constant-pitch and special threads are outside the series by what they say themselves.
  if (designation.system === 'unified' && (designation.series === 'UN' || designation.series === 'UNS')) return;
  const judgement = judgePitch(designation);
  if (judgement.kind === 'pitch-not-standard') tellPitch(place, designation, judgement.nearest, ctx);
  else if (judgement.kind === 'diameter-not-standard') tellDiameter(place, designation, judgement, ctx);
}

function tellPitch(place: Place, designation: ThreadDesignation, nearest: readonly number[], ctx: Context): void {
  const { thread } = place;
  const span = spanOf(designation, 'pitch');
  const texts = [textOf(thread), nameOf(place), sizeText(designation), standardPitches(designation, nearest)] as const;
  ctx.report(rangeOf(thread, span), 'pitch', [...texts], {
    ...details(place),
    working: () => workingOf(place, designation),
    fixes: () =>
      pitchChoices(thread.text, { kind: 'odd', span, nearest }, designation).map((one) => fixOf(thread, one)),
  });
}

function tellDiameter(
  place: Place,
  designation: ThreadDesignation,
  { nearest }: PitchJudgement & { readonly kind: 'diameter-not-standard' },
  ctx: Context,
): void {
  const { thread } = place;
  const range = rangeOf(thread, spanOf(designation, 'size'));
  ctx.report(range, 'diameter', [textOf(thread), nameOf(place), nearestDiameters(designation, nearest)], {
    ...details(place),
    working: () => workingOf(place, designation),
    fixes: () => diameterChoices(designation, nearest).map((change) => fixOf(thread, change)),
  });
}

function details({ id, where, served, family }: Place) {
  return { about: [id], ...whereUnless(where, served, family.space) };
}

function workingOf(place: Place, designation: ThreadDesignation) {
  const name = nameOf(place);
  return [threadWorking(`Thread of the ${name}`, [{ name: 'Designation', designation }])];
}

function nameOf({ family, id }: Place): string {
  return family.nameOf(id);
}

function textOf({ text }: Text): string {
  return shortened(text.trim());
}

function spanOf({ parts }: ThreadDesignation, kind: 'size' | 'pitch'): Span {
  const part = parts.find((one) => one.kind === kind) ?? parts[0];
  return part?.span ?? { start: 0, end: 0 };
}

function rangeOf({ node }: Text, { start, end }: Span) {
  return end > start ? sourceRange(node, start, end) : node;
}

function fixOf(thread: Text, { span, text, title }: ThreadChange): FixDraft {
  return { title: `Write ${title}`, edits: [{ range: rangeOf(thread, span), text }] };
}
