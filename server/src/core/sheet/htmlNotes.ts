import { el, type Html, type HtmlContext, section } from './htmlText';

const LINES = 6;

/** Lines to write on at the end of the sheet. */
export function notesAreaHtml({ labels }: HtmlContext): Html {
  const lines = Array.from({ length: LINES }, () => el('div', { class: 'notes-line' }));
  return section('notes', labels.notes, el('div', {}, ...lines));
}
