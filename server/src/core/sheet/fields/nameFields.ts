import { labelsFor } from '../labels';
import type { Sheet } from '../sheet';
import { Asking } from './asking';
import { nameBack } from './backFields';
import type { FormField } from './formField';
import { nameFront } from './frontFields';
import { namePhases } from './stepFields';

/** A sheet whose boxes and blanks have names, and what each of them is, in the order of the page. */
export interface NamedSheet {
  readonly sheet: Sheet;
  readonly fields: readonly FormField[];
}

/**
 * Names every box and blank of a sheet. The names stand beside the things that they belong to, where a template finds
 * them; they say step, instruction and what it is, so that every printing of a document has the same.
 */
export function nameFields(sheet: Sheet): NamedSheet {
  const asking = new Asking(labelsFor(sheet.language));
  const front = nameFront(sheet, asking);
  const { phases, asked } = namePhases(sheet.phases, asking);
  const back = nameBack(sheet, asked, asking);
  return { sheet: { ...sheet, ...front, phases, ...back }, fields: asking.fields };
}
