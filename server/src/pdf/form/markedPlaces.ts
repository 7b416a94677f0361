import type { PDF, PdfArray, PdfDict, PdfRef } from '@libpdf/core';
import { arrayAt, dictAt, resolved, textAt } from './pdfObjects';

/** The address that the template gives a link which only marks the place of a field. */
const MARK = 'field:';

/** A place on a page where a field goes: the link that marks it, and the element of the tag tree that holds the link. */
export interface MarkedPlace {
  readonly name: string;
  readonly page: PdfRef;
  readonly annotation: PdfDict;
  readonly ref: PdfRef;
}

/** Every marked place, page by page in the order of reading. */
export function markedPlaces(pdf: PDF): MarkedPlace[] {
  return pdf.getPages().flatMap((page) => {
    const annotations = arrayAt(pdf, page.dict, 'Annots');
    return annotations === undefined ? [] : placesOn(pdf, page.ref, annotations);
  });
}

function placesOn(pdf: PDF, page: PdfRef, annotations: PdfArray): MarkedPlace[] {
  return [...annotations].flatMap((ref) => {
    if (ref.type !== 'ref') return [];
    const annotation = resolved(pdf, ref);
    if (annotation?.type !== 'dict') return [];
    const address = textAt(pdf, dictAt(pdf, annotation, 'A'), 'URI');
    return address?.startsWith(MARK) === true ? [{ name: address.slice(MARK.length), page, annotation, ref }] : [];
  });
}
