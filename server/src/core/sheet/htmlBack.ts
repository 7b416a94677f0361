import { footLabel } from './filledLabels';
import { formsOf } from './forms';
import type { Form } from './forms/form';
import { formHtml } from './htmlForm';
import { notesAreaHtml } from './htmlNotes';
import { proofHtml, shortProof } from './htmlProof';
import { el, escapeHtml, type Html, type HtmlContext } from './htmlText';
import { fatesHtml, temporariesHtml } from './htmlWork';

/** All that comes after the last step; a part with nothing in it is left out. */
export function backHtml(context: HtmlContext): (Html | undefined)[] {
  const { tally, lastLook, record, handedOver } = formsOf(context.sheet, context.labels);
  const all = (forms: readonly Form[]): Html[] => forms.map((form) => formHtml(form, context));
  return [
    temporariesHtml(context),
    ...all(tally),
    fatesHtml(context),
    ...all(lastLook),
    ...all(record),
    proofHtml(context),
    notesAreaHtml(context),
    ...all(handedOver),
  ];
}

export function footerHtml({ sheet, labels }: HtmlContext): Html {
  const end = el('strong', {}, escapeHtml(`${labels.end}. `));
  const lines = [footLabel(labels, sheet.header), shortProof(sheet.proof, labels)].filter((line) => line !== undefined);
  return el('footer', {}, el('p', {}, end, escapeHtml(lines.join(' · '))));
}
