import { cautionsHtml } from './htmlCautions';
import { figureHtml } from './htmlFigures';
import { holdPointHtml } from './htmlHoldPoint';
import { particularsHtml } from './htmlParticulars';
import type { HtmlPiece } from './htmlPieces';
import {
  conditionHtml,
  el,
  escapeHtml,
  type Html,
  type HtmlContext,
  proseHtml,
  tickBox,
  withAttributes,
} from './htmlText';
import { looseEndsHtml } from './htmlWork';
import { fillLabel } from './labels';
import type { IfNot, Instruction, Prose, SheetFinding, SheetPhase, SheetStep } from './sheet';

/** The number of a phase, counted from 1, and the place of its first step among all steps, counted from 0. */
export interface PhasePlace {
  readonly number: number;
  readonly firstStep: number;
}

/** The pieces of a phase: its heading, each step, what is loose at its end. */
export function phaseBlocks(phase: SheetPhase, { number, firstStep }: PhasePlace, context: HtmlContext): HtmlPiece[] {
  const id = phaseId(number);
  const piece = (name: string, html: Html | undefined) => (html === undefined ? [] : [{ key: `${id} ${name}`, html }]);
  return [
    ...piece('heading', phaseHeading(phase, number, context)),
    ...piece('condition', conditionHtml(phase.condition, context.labels)),
    ...phase.steps.map((step, place) => stepPiece(step, firstStep + place, context)),
    ...piece('loose ends', looseEndsHtml(phase.looseEnds, number, context)),
  ];
}

function phaseHeading({ title, titleLang }: SheetPhase, number: number, { labels }: HtmlContext): Html {
  return el(
    'h2',
    { id: phaseId(number) },
    el('span', { class: 'phase-number' }, escapeHtml(`${fillLabel(labels.phase, { number })} `)),
    titleLang === undefined ? escapeHtml(title) : el('span', { lang: titleLang }, escapeHtml(title)),
  );
}

export function phaseId(number: number): string {
  return `phase-${number}`;
}

/** A step that moves to another phase stays the same step, so its key is without the phase. */
function stepPiece(step: SheetStep, place: number, context: HtmlContext): HtmlPiece {
  const { options, sheet, memo } = context;
  const piece = memo.remembered(step, (one) => ({ key: `step ${one.id}`, html: contentHtml(one, context) }));
  const offset = sheet.source?.offsets[place];
  if (options.mode === 'file' || options.sources === 'apart' || offset === undefined) return piece;
  const source = { 'data-source-uri': sheet.source?.uri, 'data-source-offset': offset };
  return { ...piece, html: withAttributes(piece.html, source) };
}

function contentHtml(step: SheetStep, context: HtmlContext): Html {
  const id = `step-${step.id}`;
  return el(
    'section',
    { class: step.changed === true ? 'step changed' : 'step', id, 'aria-labelledby': `${id}-title` },
    stepTitleHtml(step, context),
    context.options.mode === 'preview' ? findingsHtml(step.findings, context) : undefined,
    conditionHtml(step.condition, context.labels),
    cautionsHtml(step.cautions, context.labels),
    actsHtml(step, context),
    notesHtml(step.notes, context),
    step.sign === undefined ? undefined : holdPointHtml(step.sign, context),
  );
}

/** The pictures stand below the first instruction, as on the printed page. */
function actsHtml(step: SheetStep, context: HtmlContext): Html[] {
  const acts = step.instructions.map((each, at) => instructionHtml(each, `${step.number}.${at + 1}`, context));
  const figures = step.figures.map((figure) => figureHtml(figure, context));
  const lists = figures.length === 0 ? [acts] : [acts.slice(0, 1), acts.slice(1)];
  const [first, rest] = lists.map((list) => (list.length === 0 ? [] : [el('ol', { class: 'instructions' }, ...list)]));
  return [...(first ?? []), ...figures, ...(rest ?? [])];
}

function stepTitleHtml(step: SheetStep, { labels }: HtmlContext): Html {
  const tags = [
    ...(step.changed === true ? [labels.changed] : []),
    ...(step.optional ? [labels.optional] : []),
    ...(step.people > 1 ? [fillLabel(labels.people, { count: step.people })] : []),
    ...(step.sign === undefined ? [] : [labels.holdPoint]),
  ];
  return el(
    'h3',
    { id: `step-${step.id}-title` },
    el('span', { class: 'step-number' }, escapeHtml(String(step.number))),
    el('span', { class: 'step-title', lang: step.titleLang }, escapeHtml(step.title)),
    ...tags.map((tag) => el('span', { class: 'tag' }, escapeHtml(tag))),
  );
}

function instructionHtml(instruction: Instruction, number: string, context: HtmlContext): Html {
  const { labels } = context;
  const condition = conditionHtml(instruction.condition, labels);
  const words = el('p', {}, proseHtml(instruction.text));
  // What holds for the warning stands before it.
  const hasCautions = instruction.cautions.length > 0;
  return el(
    'li',
    {},
    hasCautions ? condition : undefined,
    ...cautionsHtml(instruction.cautions, labels),
    el(
      'div',
      { class: 'act' },
      el('span', { class: 'act-number' }, escapeHtml(number)),
      hasCautions || condition === undefined ? words : el('div', {}, condition, words),
      tickBox(`${labels.done} ${number}`, 'done'),
    ),
    ...particularsHtml(instruction, context),
    instruction.ifNot === undefined ? undefined : ifNotHtml(instruction.ifNot, number, context),
    ...notesHtml(instruction.notes, context),
  );
}

function ifNotHtml(ifNot: IfNot, number: string, context: HtmlContext): Html {
  const further = ifNot.instructions.map((each, at) => instructionHtml(each, `${number}.${at + 1}`, context));
  return el(
    'div',
    { class: 'if-not' },
    el('p', {}, el('strong', {}, escapeHtml(`${context.labels.ifNot} `)), proseHtml(ifNot.text)),
    further.length === 0 ? undefined : el('ol', { class: 'instructions' }, ...further),
  );
}

function notesHtml(notes: readonly Prose[], { labels }: HtmlContext): Html[] {
  return notes.map((note) =>
    el('p', { class: 'note' }, el('strong', {}, escapeHtml(`${labels.note}: `)), proseHtml(note)),
  );
}

/** Findings where they belong; the severity is a word, never only a colour. */
export function findingsHtml(findings: readonly SheetFinding[], { labels }: HtmlContext): Html | undefined {
  if (findings.length === 0) return undefined;
  const words = {
    error: labels.severityError,
    warning: labels.severityWarning,
    information: labels.severityInformation,
  };
  const items = findings.map((finding) =>
    el(
      'li',
      { class: finding.severity, 'data-rule': finding.rule },
      el('strong', {}, escapeHtml(`${words[finding.severity]}: `)),
      escapeHtml(finding.message),
      el('code', {}, escapeHtml(finding.rule)),
    ),
  );
  return el('ul', { class: 'findings', 'aria-label': labels.findings }, ...items);
}
