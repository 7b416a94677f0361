import type { FormField } from '../fields/formField';
import type { Sheet, SheetLanguage } from '../sheet';

/** The name under which a fillable sheet carries its plan. */
export const RECORD_FILE = 'record.json';

/**
 * What a filled sheet is judged by. It travels inside the fillable file, so that judging needs neither the sources nor
 * the revision of this program that printed it.
 */
export interface RecordPlan {
  readonly witnessmarkRecord: 1;
  readonly document: string;
  readonly title: string;
  readonly revision: string;
  readonly status: 'draft' | 'released' | 'withdrawn';
  /** Errors that stood against the document as it was printed. */
  readonly errors: number;
  readonly build: string;
  readonly buildId: string;
  /** SHA-256 of the list of sources; absent where none stand behind the sheet. */
  readonly digest?: string;
  /** Of the words below; it also says which sign parts the decimals. */
  readonly language: SheetLanguage;
  readonly fields: readonly FormField[];
}

export function recordPlan({ header, notReleased, proof, language }: Sheet, fields: readonly FormField[]): RecordPlan {
  const { document, title, revision, status, build, buildId } = header;
  return {
    witnessmarkRecord: 1,
    document,
    title,
    revision,
    status,
    errors: notReleased?.errors ?? 0,
    build,
    buildId,
    ...(proof === undefined ? {} : { digest: proof.digest }),
    language,
    fields,
  };
}
