import { footLabel } from './filledLabels';
import type { SheetForms } from './forms';
import type { Form } from './forms/form';
import { formBlock } from './htmlForm';
import { notesAreaHtml } from './htmlNotes';
import { type HtmlBlock, piecesOf } from './htmlPieces';
import { proofHtml, shortProof } from './htmlProof';
import { el, escapeHtml, type Html, type HtmlContext } from './htmlText';
import { fatesHtml, temporariesHtml } from './htmlWork';

/** All that comes after the last step; a part with nothing in it is left out. */
export function backBlocks(forms: SheetForms, context: HtmlContext): HtmlBlock[] {
  const { tally, lastLook, record, handedOver } = forms;
  const all = (some: readonly Form[]): HtmlBlock[] => some.map((form) => formBlock(form, 'back', context));
  return [
    ...piecesOf([temporariesHtml(context)], 'back'),
    ...all(tally),
    ...piecesOf([fatesHtml(context)], 'back'),
    ...all(lastLook),
    ...all(record),
    ...piecesOf([proofHtml(context), notesAreaHtml(context)], 'back'),
    ...all(handedOver),
  ];
}

export function footerHtml({ sheet, labels }: HtmlContext): Html {
  const end = el('strong', {}, escapeHtml(`${labels.end}. `));
  const lines = [footLabel(labels, sheet.header), shortProof(sheet.proof, labels)].filter((line) => line !== undefined);
  return el('footer', {}, el('p', {}, end, escapeHtml(lines.join(' · '))));
}
