import type { Labels } from '../labels';
import type { Sheet } from '../sheet';
import { lastLookForm, tallyForm } from './closingForms';
import type { Form } from './form';
import { layOutForms, safetyForms } from './frontForms';
import { installerForms, slipForms } from './handedOverForms';
import { receivedForm } from './receivedForm';
import { recordForm } from './recordForm';
import { untranslatedForm } from './untranslatedForm';

/** All that stands around the steps as forms, in the order in which it is printed. */
export interface SheetForms {
  /** Before anything is touched. */
  safety: Form[];
  received: Form[];
  /** Laid out before the first step. */
  layOut: Form[];
  tally: Form[];
  lastLook: Form[];
  record: Form[];
  /** Pages that leave the shop with parts or with the unit. */
  handedOver: Form[];
}

export function formsOf(sheet: Sheet, labels: Labels): SheetForms {
  return {
    safety: safetyForms(sheet, labels),
    received: sheet.asReceived === undefined ? [] : [receivedForm(sheet.asReceived, labels)],
    layOut: layOutForms(sheet, labels),
    tally: tallyForm(sheet, labels),
    lastLook: [lastLookForm(sheet, labels)],
    record: [recordForm(sheet, labels), ...untranslatedForm(sheet, labels)],
    handedOver: [...slipForms(sheet, labels), ...installerForms(sheet, labels)],
  };
}
