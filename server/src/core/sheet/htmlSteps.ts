import { cautionsHtml } from './htmlCautions';
import { remembered } from './htmlMemo';
import {
  conditionHtml,
  el,
  escapeHtml,
  type Html,
  type HtmlContext,
  proseHtml,
  svgDataUrl,
  tickBox,
  withAttributes,
} from './htmlText';
import { torqueHtml } from './htmlTorque';
import { looseEndsHtml } from './htmlWork';
import { fillLabel } from './labels';
import type { IfNot, Instruction, Prose, Reading, SheetFigure, SheetFinding, SheetPhase, SheetStep } from './sheet';

/** A part of the page with a name that it keeps. */
export interface NamedPart {
  readonly name: string;
  readonly html: Html | undefined;
}

/** The pieces of a phase: its heading, each step, what is loose at its end. */
export function phaseParts(phase: SheetPhase, number: number, context: HtmlContext): NamedPart[] {
  const heading = el(
    'h2',
    { id: phaseId(number) },
    el('span', { class: 'phase-number' }, escapeHtml(`${fillLabel(context.labels.phase, { number })} `)),
    escapeHtml(phase.title),
  );
  return [
    { name: 'heading', html: heading },
    { name: 'condition', html: conditionHtml(phase.condition, context.labels) },
    ...phase.steps.map((step) => ({ name: `step ${step.id}`, html: stepHtml(step, context) })),
    { name: 'loose ends', html: looseEndsHtml(phase.looseEnds, number, context) },
  ];
}

export function phaseId(number: number): string {
  return `phase-${number}`;
}

function stepHtml(step: SheetStep, context: HtmlContext): Html {
  const { mode, sources } = context.options;
  const { source, ...content } = step;
  const html = remembered('step', content, context, () => contentHtml(content, context));
  if (mode === 'file' || sources === 'apart') return html;
  return withAttributes(html, { 'data-source-uri': source.uri, 'data-source-offset': source.offset });
}

/** Where a step stands in its text must not show here: it changes with every key that is pressed above it. */
function contentHtml(step: Omit<SheetStep, 'source'>, context: HtmlContext): Html {
  const id = `step-${step.id}`;
  return el(
    'section',
    { class: 'step', id, 'aria-labelledby': `${id}-title` },
    stepTitleHtml(step, context),
    context.options.mode === 'preview' ? findingsHtml(step.findings, context) : undefined,
    conditionHtml(step.condition, context.labels),
    cautionsHtml(step.cautions, context.labels),
    step.figures.map((figure) => figureHtml(figure, context)),
    el(
      'ol',
      { class: 'instructions' },
      ...step.instructions.map((each, at) => instructionHtml(each, `${step.number}.${at + 1}`, context)),
    ),
    notesHtml(step.notes, context),
    step.sign === undefined ? undefined : holdPointHtml(step.sign, context),
  );
}

function stepTitleHtml(step: Omit<SheetStep, 'source'>, { labels }: HtmlContext): Html {
  const tags = [
    ...(step.optional ? [labels.optional] : []),
    ...(step.people > 1 ? [fillLabel(labels.people, { count: step.people })] : []),
    ...(step.sign === undefined ? [] : [labels.holdPoint]),
  ];
  return el(
    'h3',
    { id: `step-${step.id}-title` },
    el('span', { class: 'step-number' }, escapeHtml(String(step.number))),
    el('span', { class: 'step-title' }, escapeHtml(step.title)),
    ...tags.map((tag) => el('span', { class: 'tag' }, escapeHtml(tag))),
  );
}

function instructionHtml(instruction: Instruction, number: string, context: HtmlContext): Html {
  const { labels } = context;
  return el(
    'li',
    {},
    conditionHtml(instruction.condition, labels),
    ...cautionsHtml(instruction.cautions, labels),
    el(
      'div',
      { class: 'act' },
      el('span', { class: 'act-number' }, escapeHtml(number)),
      el('p', {}, proseHtml(instruction.text)),
      tickBox(`${labels.done} ${number}`, 'done'),
    ),
    ...particularsHtml(instruction, context),
    instruction.ifNot === undefined ? undefined : ifNotHtml(instruction.ifNot, number, context),
    ...notesHtml(instruction.notes, context),
  );
}

function particularsHtml(instruction: Instruction, context: HtmlContext): (Html | undefined)[] {
  const { torque, figure, reading, choices, check, record } = instruction;
  const accept = check?.accept;
  return [
    figure && figureHtml(figure, context),
    torque && torqueHtml(torque, context),
    reading && readingHtml(reading, context),
    choices && choicesHtml(choices),
    accept === undefined
      ? undefined
      : el('p', { class: 'accept' }, escapeHtml(fillLabel(context.labels.accept, { text: accept }))),
    ...(record?.labels ?? []).map((label) =>
      el('p', { class: 'record' }, escapeHtml(label), el('span', { class: 'blank long' })),
    ),
  ];
}

export function choicesHtml(values: readonly string[]): Html {
  return el('ul', { class: 'choices' }, ...values.map((value) => el('li', {}, tickBox(value), escapeHtml(value))));
}

function readingHtml(reading: Reading, { labels }: HtmlContext): Html {
  const limits = reading.limits === undefined ? labels.recordOnly : `${labels.limits}: ${reading.limits}`;
  const places = reading.places.length === 0 ? [labels.reading] : reading.places;
  const rows = reading.rows.length === 0 ? [reading.name] : reading.rows;
  // The limits head the column of names, so that a single reading takes two short lines and no more.
  const heads = [limits, ...places].map((head) => el('th', { scope: 'col' }, escapeHtml(head)));
  const blank = el('td', { class: 'to-fill' }, escapeHtml(reading.unit));
  const body = rows.map((row) => el('tr', {}, el('th', { scope: 'row' }, escapeHtml(row)), ...places.map(() => blank)));
  return el(
    'div',
    { class: 'reading' },
    el('table', {}, el('thead', {}, el('tr', {}, ...heads)), el('tbody', {}, ...body)),
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

export function figureHtml(figure: SheetFigure, { options }: HtmlContext): Html {
  const url = figure.image.kind === 'svg' ? svgDataUrl(figure.image.svg) : options.figureUrl?.(figure.image.name);
  const picture =
    url === undefined
      ? el('p', { class: 'no-picture' }, escapeHtml(figure.alt))
      : el('img', { src: url, alt: figure.alt });
  return el(
    'figure',
    {},
    picture,
    figure.caption === undefined ? undefined : el('figcaption', {}, escapeHtml(figure.caption)),
  );
}

function notesHtml(notes: readonly Prose[], { labels }: HtmlContext): Html[] {
  return notes.map((note) =>
    el('p', { class: 'note' }, el('strong', {}, escapeHtml(`${labels.note}: `)), proseHtml(note)),
  );
}

function holdPointHtml(who: string, { labels }: HtmlContext): Html {
  const blanks = [labels.name, labels.signature, labels.date].map((label) =>
    el('span', { class: 'sign-field' }, escapeHtml(label), el('span', { class: 'blank' })),
  );
  return el(
    'div',
    { class: 'hold-point', role: 'group', 'aria-label': labels.holdPoint },
    el(
      'p',
      {},
      el('strong', {}, escapeHtml(`${labels.holdPoint}. `)),
      escapeHtml(fillLabel(labels.holdPointText, { who })),
    ),
    el('p', { class: 'sign-fields' }, ...blanks),
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
