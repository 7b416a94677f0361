import { timeLabel } from './filledLabels';
import { figureHtml } from './htmlFigures';
import { readingHtml, sumHtml } from './htmlReadings';
import { el, escapeHtml, type Html, type HtmlContext, tickBox } from './htmlText';
import { torqueHtml } from './htmlTorque';
import { turnLinesHtml } from './htmlTurns';
import { fillLabel, type Labels } from './labels';
import type { Instruction, RenewalBox, TimeBlank } from './sheet';

/** Everything that stands below the words of an instruction. */
export function particularsHtml(instruction: Instruction, context: HtmlContext): (Html | undefined)[] {
  const { torque, figure, reading, sum, turning, times, choices, renewals, check, record } = instruction;
  const { labels } = context;
  const accept = check?.accept;
  return [
    figure && figureHtml(figure, context),
    turnLinesHtml(turning, labels),
    torque && torqueHtml(torque, context),
    sum === undefined ? reading && readingHtml(reading, context) : sumHtml(sum, context),
    times && timesHtml(times, labels),
    choices && foundHtml(choices, labels),
    ...(renewals ?? []).map((box) => renewalHtml(box, labels)),
    accept === undefined
      ? undefined
      : el('p', { class: 'accept' }, escapeHtml(fillLabel(labels.accept, { text: accept }))),
    ...(record?.labels ?? []).map((label) =>
      el('p', { class: 'record' }, escapeHtml(label), el('span', { class: 'blank long' })),
    ),
  ];
}

export function choicesHtml(values: readonly string[], ...more: Html[]): Html {
  const boxes = values.map((value) => el('li', {}, tickBox(value), escapeHtml(value)));
  return el('ul', { class: 'choices' }, ...boxes, ...more);
}

/** What was found, and who found it. */
function foundHtml(values: readonly string[], labels: Labels): Html {
  return choicesHtml(values, el('li', { class: 'initials' }, ...blankHtml(labels.initials)));
}

function renewalHtml({ part }: RenewalBox, labels: Labels): Html {
  const box = (word: string): Html[] => [tickBox(`${part} ${word}`), escapeHtml(word)];
  return el(
    'ul',
    { class: 'choices renewal' },
    el('li', { class: 'renewed-part' }, el('strong', {}, escapeHtml(`${part}:`))),
    el('li', {}, ...box(labels.fateBenchUsed)),
    el('li', {}, ...box(labels.fateBenchRenewed)),
    el('li', {}, ...blankHtml(labels.newNumber)),
    el('li', { class: 'initials' }, ...blankHtml(labels.initials)),
  );
}

function timesHtml(times: readonly TimeBlank[], labels: Labels): Html {
  const fields = times.map((time) =>
    el('span', { class: 'sign-field' }, ...blankHtml(timeLabel(labels, time), 'unit' in time ? time.unit : undefined)),
  );
  return el('p', { class: 'times' }, ...fields);
}

function blankHtml(label: string, unit?: string): Html[] {
  const blank = [escapeHtml(label), el('span', { class: 'blank' })];
  return unit === undefined ? blank : [...blank, escapeHtml(unit)];
}
