import type { Instruction } from '../model/generated/types';
import type {
  Chart,
  ChartBeat,
  ChartCell,
  ChartFinding,
  ChartRow,
  ChartStep,
  Deed,
  Standing,
  StandingKind,
} from './chart';

/** What a state is called: in the legend, and behind the name of a part. */
export const STANDING_WORDS: Readonly<Record<StandingKind, string>> = {
  torqued: 'in place, torqued',
  loose: 'in place, finger-tight',
  released: 'in place, released',
  fitted: 'in place',
  bench: 'on the bench, in place on a part that is off',
  off: 'off',
  ready: 'off, made ready to fit',
  away: 'away',
  gone: 'scrapped or given back',
  absent: 'not in the unit',
};

const DONE: Readonly<Record<Instruction['verb'], string>> = {
  say: '',
  loosen: 'loosened',
  remove: 'taken off',
  install: 'fitted',
  seat: 'seated',
  tighten: 'tightened',
  apply: 'applied',
  clean: 'cleaned',
  identify: 'identified',
  inspect: 'inspected',
  measure: 'measured',
  calculate: 'calculated',
  choose: 'size chosen',
  mark: 'marked',
  align: 'aligned',
  press: 'pressed on',
  heat: 'heated',
  cool: 'cooled',
  balance: 'balanced',
  adjust: 'adjusted',
  check: 'checked',
  wait: '',
  send: 'sent out',
  receive: 'received back',
  return: 'given back',
  discard: 'scrapped',
  record: 'recorded',
};

/** Verbs that say by themselves how the part then stands. */
const SAYS: Readonly<Partial<Record<Instruction['verb'], StandingKind>>> = {
  remove: 'off',
  send: 'away',
  seat: 'fitted',
};

export function standingWords({ kind, pieces, heat, marked }: Standing): string {
  const some = pieces === undefined ? '' : `, ${pieces} ${pieces === 1 ? 'piece' : 'pieces'}`;
  const temperature = heat === undefined ? '' : `, ${heat}`;
  return `${STANDING_WORDS[kind]}${some}${temperature}${marked ? ', marked' : ''}`;
}

export function deedWords({ verb, what }: Deed): string {
  const done = DONE[verb];
  if (verb === 'apply') return `${what ?? ''} applied`.trim();
  return what === undefined ? done : `${done}: ${what}`;
}

/** What happens to a part in a step: each deed, and behind it how the part then stands where that is new. */
export function cellWords({ beats, findings }: ChartCell): string {
  const happened = beats.map(beatWords).filter((words) => words !== '');
  return [happened.join('; then '), ...findings.map(findingWords)].filter((words) => words !== '').join('. ');
}

function beatWords({ deed, standing, changed }: ChartBeat): string {
  const done = deed === undefined ? '' : deedWords(deed);
  const isSaid = !changed || deed?.mark !== undefined || standing.kind === SAYS[deed?.verb ?? 'say'];
  return [done, isSaid ? '' : standingWords(standing)].filter((words) => words !== '').join(', ');
}

export function findingWords({ severity, rule, message, builds }: ChartFinding): string {
  const kind = severity === 'info' ? 'Information' : severity === 'warning' ? 'Warning' : 'Error';
  return `${kind}: ${message}${builds === '' ? '' : ` (${builds})`} [${rule}]`;
}

export function stepWords({ number, title }: ChartStep): string {
  return `Step ${number} ${title}`;
}

/** Everything about one cell, as it is read out and shown under the pointer. */
export function cellTitle({ steps }: Chart, { name }: ChartRow, cell: ChartCell): string {
  const step = steps[cell.step];
  return `${step === undefined ? 'At the end' : stepWords(step)}: ${name}, ${cellWords(cell)}`;
}

/** Everything about one step. */
export function headTitle(step: ChartStep): string {
  const examined = step.examined.length === 0 ? [] : [`Measured or checked: ${step.examined.join('; ')}`];
  const left = step.isLeftOut ? ['Not on the way shown'] : [];
  return [stepWords(step), ...left, ...examined, ...step.findings.map(findingWords)].join('. ');
}

/** The line over the chart: for which document and build it is. */
export function headingWords({ document, title, revision, build }: Chart): string {
  const named = [document, title].filter((one) => one !== '').join(' ');
  return `${named}${revision === '' ? '' : `, revision ${revision}`}, for ${build}`;
}

/** What is taken for granted, as one sentence; empty where nothing is. */
export function assumedWords({ assumed }: Chart): string {
  return assumed.length === 0 ? '' : `Shown is the plain way: ${assumed.join('; ')}.`;
}
