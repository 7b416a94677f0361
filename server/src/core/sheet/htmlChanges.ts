import { el, escapeHtml, type Html, type HtmlContext, section } from './htmlText';
import { fillLabel, type Labels } from './labels';
import type { ChangedStep, SheetChanges } from './sheet';

/** The steps that differ from the text that the sheet is compared with; nothing where it is compared with none. */
export function changesHtml({ sheet, labels }: HtmlContext): Html | undefined {
  const { changes } = sheet;
  if (changes === undefined) return undefined;
  const items = changes.steps.map((one) => el('li', {}, lineHtml(one, labels)));
  const list = items.length === 0 ? el('p', {}, escapeHtml(labels.changedNothing)) : el('ul', {}, ...items);
  return section('changes', fillLabel(labels.changedSince, { since: sinceWords(changes, labels) }), list);
}

function sinceWords({ since }: SheetChanges, labels: Labels): string {
  return since.kind === 'revision' ? `${labels.revision} ${since.name}` : since.name;
}

function lineHtml(one: ChangedStep, labels: Labels): Html {
  if (one.kind === 'gone') return escapeHtml(fillLabel(labels.changedGone, { title: one.title }));
  return el('a', { href: `#step-${one.stepId}` }, escapeHtml(`${labels.step} ${one.step}: ${one.title}`));
}
