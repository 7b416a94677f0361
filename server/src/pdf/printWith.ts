import type { Sheet } from '../core/sheet/sheet';
import type { Carrier } from './carrier';
import type { Typeset } from './engineThread';
import type { FigureFiles } from './figures';
import { finishPdf } from './finishPdf';
import { layFields } from './form/layFields';
import { type SheetVariant, sheetForm } from './form/sheetForm';
import { preparePrintJob } from './printJob';
import type { PdfStandard } from './xmp';

export interface PrintChoices {
  /** Which standards the file names itself by; PDF/UA-1 alone unless another is asked for. */
  readonly standard?: PdfStandard;
  /** `fillable` has a form field for every box and blank; by default it is printed for paper. */
  readonly variant?: SheetVariant;
}

/**
 * Prints a sheet as a tagged PDF with its sources attached, with whatever carries the engine. The bytes depend on the sheet
 * and the figures alone, and are the same on a desktop and in a browser.
 */
export async function printWith(
  carrier: () => Promise<Pick<Carrier, 'typeset'>>,
  sheet: Sheet,
  figures: FigureFiles,
  fonts: Parameters<typeof preparePrintJob>[2],
  { standard = 'ua', variant = 'print' }: PrintChoices,
): Promise<Typeset> {
  const form = sheetForm(sheet, variant);
  const files = preparePrintJob(form.sheet, figures, fonts, form.named?.forms);
  if ('problem' in files) return files;
  const printed = await (await carrier()).typeset(files);
  if ('problem' in printed) return printed;
  const finished = finishPdf(printed, sheet, standard);
  return form.named === undefined || 'problem' in finished ? finished : layFields(finished, form.named.plan);
}
