import type { FormField, PDF } from '@libpdf/core';
import type { Filled } from '../../core/sheet/record/judgeRecord';
import { readPlan } from '../../core/sheet/record/readPlan';
import { RECORD_FILE, type RecordPlan } from '../../core/sheet/record/recordPlan';
import { pdfLibrary } from './pdfObjects';

/** A filled sheet: what it is judged by, and what stands in its fields. */
export interface FilledForm {
  readonly plan: RecordPlan;
  readonly filled: ReadonlyMap<string, Filled>;
}

/** Reads a fillable sheet back, whatever program has saved it; or says in words why it is none. Never rejects. */
export async function readForm(bytes: Uint8Array): Promise<FilledForm | { readonly problem: string }> {
  const { PDF } = await pdfLibrary();
  try {
    const pdf = await PDF.load(bytes);
    if (pdf.isEncrypted && !pdf.isAuthenticated) return { problem: 'it is locked with a password' };
    const attached = pdf.getAttachment(RECORD_FILE);
    if (attached === null)
      return { problem: 'it was not printed with --fillable, or what it is judged by was taken out' };
    const plan = readPlan(new TextDecoder().decode(attached));
    if ('problem' in plan) return plan;
    const filled = filledFields(pdf);
    return filled === undefined
      ? { problem: 'its fields were printed flat; send the file itself, not a print of it' }
      : { plan, filled };
  } catch {
    // Of a file that is no PDF the library says much that is of no use at a bench.
    return { problem: 'it is no PDF that can be read' };
  }
}

function filledFields(pdf: PDF): Map<string, Filled> | undefined {
  const fields = pdf.getForm()?.getFields() ?? [];
  if (fields.length === 0) return undefined;
  return new Map(
    fields.flatMap((field) => {
      const filled = filledOf(field);
      return filled === undefined ? [] : [[field.name, filled] as const];
    }),
  );
}

function filledOf(field: FormField): Filled | undefined {
  const value: unknown = field.getValue();
  switch (field.type) {
    case 'checkbox':
      return { kind: 'tick', isOn: value !== 'Off' && value !== '' && value !== null };
    case 'text':
      return { kind: 'text', text: typeof value === 'string' ? value : '' };
    case 'signature':
      return { kind: 'signature', isSigned: 'isSigned' in field && (field as { isSigned(): boolean }).isSigned() };
    default:
      return undefined;
  }
}
