import { formsOf, type SheetForms } from '../forms';
import { labelsFor } from '../labels';
import type { Sheet } from '../sheet';
import { Asking, withNames } from './asking';
import { nameTables, nameWear } from './backFields';
import { type FormField, never } from './formField';
import { FormNaming } from './formNaming';
import { namePhases } from './stepFields';

/** A sheet whose boxes and blanks have names, and what each of them is, in the order of the page. */
export interface NamedSheet {
  readonly sheet: Sheet;
  readonly forms: SheetForms;
  readonly fields: readonly FormField[];
}

/**
 * Names every box and blank of a sheet. The names stand beside the things that they belong to, where a template finds
 * them; they say step, instruction and what it is, so that every printing of a document has the same.
 */
export function nameFields(sheet: Sheet): NamedSheet {
  const labels = labelsFor(sheet.language);
  const asking = new Asking(labels);
  // The steps come first, because the forms before and behind them ask for some of it again.
  const { phases, asked } = namePhases(sheet.phases, asking);
  const afterSteps = asking.fields.length;
  const safety = nameWear(sheet, asking);
  const naming = new FormNaming(sheet, asked, asking);
  const given = formsOf(sheet, labels);
  const front = naming.front(given);
  const afterFront = asking.fields.length;
  const tables = nameTables(sheet, asked, asking);
  const back = naming.back(given);
  const notes = asking.field({ path: ['notes'], words: labels.notes, need: never }, ['lines'], {
    kind: 'text',
    lines: 'many',
    what: labels.notes,
  });
  const all = asking.fields;
  const fields = [...all.slice(afterSteps, afterFront), ...all.slice(0, afterSteps), ...all.slice(afterFront)];
  const named = { ...sheet, safety, phases, ...tables };
  return {
    sheet: withNames(named, { notesField: notes, factFields: naming.shared.boxes }),
    forms: { ...front, ...back },
    fields,
  };
}
