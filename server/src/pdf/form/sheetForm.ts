import { nameFields } from '../../core/sheet/fields/nameFields';
import { type RecordPlan, recordPlan } from '../../core/sheet/record/recordPlan';
import type { Sheet } from '../../core/sheet/sheet';
import type { SheetVariant } from '../printJob';

/** A sheet as a variant prints it; `plan` says which fields the places that it marks become. */
export interface SheetForm {
  readonly sheet: Sheet;
  readonly plan?: RecordPlan;
}

export function sheetForm(sheet: Sheet, variant: SheetVariant): SheetForm {
  if (variant === 'print') return { sheet };
  const named = nameFields(sheet);
  return { sheet: named.sheet, plan: recordPlan(sheet, named.fields) };
}
