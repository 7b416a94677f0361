import { el, escapeHtml, type Html, type HtmlContext } from './htmlText';
import { fillLabel } from './labels';

/** A bar across the page that nobody works past: who must sign, and room to sign and stamp. */
export function holdPointHtml(who: string, { labels }: HtmlContext): Html {
  const field = (label: string): Html =>
    el('span', { class: 'sign-field' }, escapeHtml(label), el('span', { class: 'blank' }));
  return el(
    'div',
    { class: 'hold-point', role: 'group', 'aria-label': labels.holdPoint },
    el(
      'p',
      { class: 'hold-bar' },
      el('strong', {}, escapeHtml(`${labels.holdPoint}. `)),
      escapeHtml(fillLabel(labels.holdPointText, { who })),
    ),
    el(
      'div',
      { class: 'hold-fields' },
      el('p', { class: 'sign-fields' }, ...[labels.name, labels.signature, labels.date, labels.time].map(field)),
      el('p', { class: 'stamp' }, escapeHtml(labels.stamp)),
    ),
  );
}
