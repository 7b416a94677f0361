import type { PDF, PdfArray, PdfDict, PdfObject } from '@libpdf/core';

export type PdfLibrary = typeof import('@libpdf/core');

/** The library, got at the first use: whoever only checks documents never waits for it. */
export function pdfLibrary(): Promise<PdfLibrary> {
  return import('@libpdf/core');
}

/** What stands behind a reference; anything else is itself. */
export function resolved(pdf: PDF, value: PdfObject | undefined): PdfObject | undefined {
  return value?.type === 'ref' ? (pdf.getObject(value) ?? undefined) : value;
}

export function dictAt(pdf: PDF, owner: PdfDict | undefined, key: string): PdfDict | undefined {
  const value = resolved(pdf, owner?.get(key));
  return value?.type === 'dict' || value?.type === 'stream' ? value : undefined;
}

export function arrayAt(pdf: PDF, owner: PdfDict | undefined, key: string): PdfArray | undefined {
  const value = resolved(pdf, owner?.get(key));
  return value?.type === 'array' ? value : undefined;
}

export function textAt(pdf: PDF, owner: PdfDict | undefined, key: string): string | undefined {
  const value = resolved(pdf, owner?.get(key));
  return value?.type === 'string' ? value.asString() : undefined;
}

export function numberAt(pdf: PDF, owner: PdfDict | undefined, key: string): number | undefined {
  const value = resolved(pdf, owner?.get(key));
  return value?.type === 'number' ? value.value : undefined;
}
