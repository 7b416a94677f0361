import { el, escapeHtml, type Html, ownMarkup, proseHtml } from './htmlText';
import { type Labels, signalWordLabel } from './labels';
import type { Caution } from './sheet';
import { alertSymbol } from './symbols';

/** Signal word panels in the manner of ANSI Z535.6 and ISO 3864-2: symbol, word and text; no meaning by colour alone. */
export function cautionsHtml(cautions: readonly Caution[], labels: Labels): Html[] {
  return cautions.map((caution) => {
    const symbol = alertSymbol(caution.word);
    return el(
      'div',
      { class: `panel ${caution.word}`, role: 'note' },
      el(
        'p',
        { class: 'signal' },
        symbol === undefined ? undefined : el('span', { class: 'symbol', 'aria-hidden': 'true' }, ownMarkup(symbol)),
        el('strong', {}, escapeHtml(signalWordLabel(labels, caution.word))),
      ),
      el('div', { class: 'panel-text' }, ...caution.texts.map((text) => el('p', {}, proseHtml(text)))),
    );
  });
}
