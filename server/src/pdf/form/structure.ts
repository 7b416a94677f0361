import type { PDF, PdfDict } from '@libpdf/core';
import { arrayAt, dictAt, numberAt, type PdfLibrary, resolved } from './pdfObjects';

/** The elements of the tag tree that hold annotations, by the number that an annotation gives as its parent's. */
export function structureParents(pdf: PDF): ReadonlyMap<number, PdfDict> {
  const parents = new Map<number, PdfDict>();
  const root = dictAt(pdf, dictAt(pdf, pdf.getCatalog(), 'StructTreeRoot'), 'ParentTree');
  if (root !== undefined) gather(pdf, root, parents);
  return parents;
}

/** A number tree: its leaves hold pairs of number and value (ISO 32000-1, 7.9.7). */
function gather(pdf: PDF, node: PdfDict, parents: Map<number, PdfDict>): void {
  for (const kid of arrayAt(pdf, node, 'Kids') ?? []) {
    const below = resolved(pdf, kid);
    if (below?.type === 'dict') gather(pdf, below, parents);
  }
  const pairs = [...(arrayAt(pdf, node, 'Nums') ?? [])];
  for (let at = 0; at + 1 < pairs.length; at += 2) {
    const [key, value] = [pairs[at], resolved(pdf, pairs[at + 1])];
    if (key?.type === 'number' && value?.type === 'dict') parents.set(key.value, value);
  }
}

/** Says in the tag tree that an annotation is a field of a form, no link (ISO 32000-1, table 340). */
export function tagAsForm(
  pdf: PDF,
  annotation: PdfDict,
  parents: ReadonlyMap<number, PdfDict>,
  { PdfName }: PdfLibrary,
): void {
  const parent = parents.get(numberAt(pdf, annotation, 'StructParent') ?? -1);
  parent?.set('S', PdfName.of('Form'));
}
