import { nameFields } from '../../core/sheet/fields/nameFields';
import type { SheetForms } from '../../core/sheet/forms';
import { type RecordPlan, recordPlan } from '../../core/sheet/record/recordPlan';
import type { Sheet } from '../../core/sheet/sheet';

/** A sheet for paper, or one with a form field over every box and blank. */
export type SheetVariant = 'print' | 'fillable';

/** A sheet as a variant prints it: its forms with the names of their fields, and which fields the marked places become. */
export interface SheetForm {
  readonly sheet: Sheet;
  readonly named?: { readonly forms: SheetForms; readonly plan: RecordPlan };
}

export function sheetForm(sheet: Sheet, variant: SheetVariant): SheetForm {
  if (variant === 'print') return { sheet };
  const named = nameFields(sheet);
  return { sheet: named.sheet, named: { forms: named.forms, plan: recordPlan(sheet, named.fields) } };
}
