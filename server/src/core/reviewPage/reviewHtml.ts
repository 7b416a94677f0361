import { CHANGE_CLASSES, type Change, type ChangeClass, type ChangeSide } from '../review/change';
import { CLASS_TITLES, headlineOf, reachWords } from '../review/changeWords';
import type { Version } from '../review/version';
import { type Finding, fullMessage } from '../rules/finding';
import { el, escapeHtml, type Html, join, ownMarkup } from '../sheet/htmlText';
import { sheetStyles } from '../sheet/styles';
import { placeIn, placeOf } from './places';
import type { Reviewed } from './reviewed';
import { reviewStyles } from './reviewStyles';
import { type ChangedSheet, changedSheets, type StepPair } from './stepPairs';
import { sumLine } from './sumLine';

/** A review as one HTML document that needs nothing beside it: all changes, and the changed steps of each sheet side by side. */
export function reviewHtml(reviewed: Reviewed): string {
  const title = titleOf(reviewed);
  return `<!DOCTYPE html>\n${el('html', { lang: 'en' }, head(title), el('body', {}, reviewBody(reviewed, 'file')))}\n`;
}

/** What it looks like, for a page that somebody else frames. */
export const reviewPageStyles = sheetStyles + reviewStyles;

function titleOf({ labels }: Reviewed): string {
  return `Review of ${labels.after} against ${labels.before}`;
}

/** The content of the page. In an editor each place is a button that says where it leads, by side, document and offset. */
export function reviewBody(reviewed: Reviewed, mode: 'file' | 'editor'): Html {
  const { changes, findings } = reviewed;
  const title = titleOf(reviewed);
  const sheets = changedSheets(reviewed);
  return join([
    el('header', {}, el('h1', {}, escapeHtml(title)), el('p', { class: 'sum' }, escapeHtml(sumLine(reviewed)))),
    el(
      'main',
      {},
      ...CHANGE_CLASSES.map((one) => {
        const here = changes.filter((change) => change.class === one);
        return classSection(one, here, reviewed, mode);
      }),
      findingSection('New findings', findings.added, reviewed.after),
      findingSection('Findings that are gone', findings.gone, reviewed.before),
      ...sheets.map((sheet, index) => sheetSection(sheet, index, reviewed)),
    ),
  ]);
}

/** Nothing runs and nothing is fetched. */
const POLICY = "default-src 'none'; style-src 'unsafe-inline'; img-src data:";

function head(title: string): Html {
  return el(
    'head',
    {},
    el('meta', { charset: 'utf-8' }),
    el('meta', { 'http-equiv': 'Content-Security-Policy', content: POLICY }),
    el('meta', { name: 'viewport', content: 'width=device-width, initial-scale=1' }),
    el('meta', { name: 'color-scheme', content: 'light dark' }),
    el('title', {}, escapeHtml(title)),
    el('style', {}, ownMarkup(reviewPageStyles)),
  );
}

function classSection(
  one: ChangeClass,
  changes: readonly Change[],
  reviewed: Reviewed,
  mode: 'file' | 'editor',
): Html | undefined {
  if (changes.length === 0) return undefined;
  const id = `class-${one}`;
  return el(
    'section',
    { class: `changes ${one}`, 'aria-labelledby': id },
    el('h2', { id }, escapeHtml(`${CLASS_TITLES[one]} (${changes.length})`)),
    el('ul', {}, ...changes.map((change) => changeItem(change, reviewed, mode))),
  );
}

function changeItem(change: Change, reviewed: Reviewed, mode: 'file' | 'editor'): Html {
  const builds = change.builds === '' ? '' : ` [${change.builds}]`;
  return el(
    'li',
    {},
    el('strong', {}, escapeHtml(`${headlineOf(change)}${builds}`)),
    mode === 'file' ? placeHtml(change, reviewed) : el('p', { class: 'places' }, ...placeButtons(change, reviewed)),
    ...reachWords(change).map((words) => el('p', { class: 'reach' }, escapeHtml(`Reaches ${words}`))),
  );
}

function placeHtml(change: Change, reviewed: Reviewed): Html | undefined {
  const place = placeOf(change, reviewed);
  return place === undefined ? undefined : el('code', {}, escapeHtml(`${place.file}:${place.line}`));
}

function placeButtons(change: Change, { before, after, labels }: Reviewed): Html[] {
  const button = (side: 'before' | 'after', at: ChangeSide | undefined, version: Version): Html[] => {
    if (at === undefined) return [];
    const { file, line } = placeIn(version, at);
    const attributes = { type: 'button', 'data-side': side, 'data-uri': at.uri, 'data-start': at.span.start };
    return [el('button', attributes, escapeHtml(`${labels[side]}: ${file}:${line}`))];
  };
  return [...button('before', change.before, before), ...button('after', change.after, after)];
}

function findingSection(title: string, findings: readonly Finding[], version: Version): Html | undefined {
  if (findings.length === 0) return undefined;
  const id = title.toLowerCase().replaceAll(' ', '-');
  const items = findings.map((finding) => {
    const { file, line } = placeIn(version, finding);
    return el(
      'li',
      {},
      el('strong', {}, escapeHtml(`${finding.severity}: `)),
      escapeHtml(fullMessage(finding)),
      el('code', {}, escapeHtml(`${finding.rule} ${file}:${line}`)),
    );
  });
  return el(
    'section',
    { class: 'changes', 'aria-labelledby': id },
    el('h2', { id }, escapeHtml(`${title} (${findings.length})`)),
    el('ul', {}, ...items),
  );
}

function sheetSection(sheet: ChangedSheet, index: number, { labels }: Reviewed): Html | undefined {
  if (sheet.steps.length === 0) return undefined;
  const id = `sheet-${index + 1}`;
  return el(
    'section',
    { class: 'sheet-steps', 'aria-labelledby': id },
    el('h2', { id }, escapeHtml(`${sheet.document} ${sheet.title}: the steps for ${sheet.build}`)),
    el(
      'div',
      { class: 'sides heads', 'aria-hidden': 'true' },
      el('p', {}, escapeHtml(labels.before)),
      el('p', {}, escapeHtml(labels.after)),
    ),
    ...sheet.steps.map((pair) => pairHtml(pair, id, labels)),
  );
}

function pairHtml({ id, before, after, changes }: StepPair, sheet: string, labels: Reviewed['labels']): Html {
  return el(
    'article',
    { 'aria-label': `Step ${id}` },
    el('h3', {}, escapeHtml(`Step ${id}`)),
    el('ul', { class: 'what' }, ...[...new Set(changes.map(headlineOf))].map((line) => el('li', {}, escapeHtml(line)))),
    before === after
      ? el('p', { class: 'none' }, escapeHtml('The sheet prints this step as before.'))
      : el(
          'div',
          { class: 'sides' },
          side(before, `${sheet}-before`, labels.before, 'before'),
          side(after, `${sheet}-after`, labels.after, 'after'),
        ),
  );
}

function side(html: string | undefined, prefix: string, label: string, which: string): Html {
  return el(
    'div',
    { class: `side ${which}`, role: 'group', 'aria-label': label },
    html === undefined
      ? el('p', { class: 'none' }, escapeHtml('Not on this sheet'))
      : ownMarkup(renumbered(html, prefix)),
  );
}

/** Two sheets stand on one page, so that what names places gets a name of its own on either side. */
function renumbered(html: string, prefix: string): string {
  // On a page with both sides a step is no landmark of its own: two of one name would lead nowhere.
  return html
    .replace(/^<section /u, '<div role="group" ')
    .replace(/<\/section>$/u, '</div>')
    .replace(/ (id|aria-labelledby|aria-describedby)="([^"]*)"/gu, ` $1="${prefix}-$2"`)
    .replace(/ href="#[^"]*"/gu, '');
}
