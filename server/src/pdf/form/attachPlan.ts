import type { PDF, PdfDict, PdfObject, PdfRef } from '@libpdf/core';
import { RECORD_FILE, type RecordPlan } from '../../core/sheet/record/recordPlan';
import { arrayAt, dictAt, type PdfLibrary } from './pdfObjects';

/** Puts the plan of a record among the files inside the file, as data that belongs to the whole document. */
export function attachPlan(pdf: PDF, plan: RecordPlan, library: PdfLibrary): void {
  const { PdfArray } = library;
  const catalogue = pdf.getCatalog();
  const file = pdf.register(fileSpecification(pdf, plan, library));
  const names = ownDict(pdf, catalogue, 'Names', library);
  const embedded = ownDict(pdf, names, 'EmbeddedFiles', library);
  const entries = [...(arrayAt(pdf, embedded, 'Names') ?? [])];
  const at = entries.findIndex(
    (entry, index) => index % 2 === 0 && entry.type === 'string' && entry.asString() > RECORD_FILE,
  );
  const pair: PdfObject[] = [textString(RECORD_FILE, library), file];
  entries.splice(at < 0 ? entries.length : at, 0, ...pair);
  embedded.set('Names', PdfArray.of(...entries));
  catalogue.set('AF', PdfArray.of(...(arrayAt(pdf, catalogue, 'AF') ?? []), file));
}

function fileSpecification(pdf: PDF, plan: RecordPlan, library: PdfLibrary): PdfDict {
  const { PdfDict, PdfName, PdfNumber, PdfStream } = library;
  const content = new TextEncoder().encode(`${JSON.stringify(plan)}\n`);
  const stream = PdfStream.fromDict(
    {
      Type: PdfName.of('EmbeddedFile'),
      Subtype: PdfName.of('application/json'),
      Params: PdfDict.of({ Size: PdfNumber.of(content.length) }),
    },
    content,
  );
  const bytes: PdfRef = pdf.register(stream);
  return PdfDict.of({
    Type: PdfName.of('Filespec'),
    AFRelationship: PdfName.of('Data'),
    F: textString(RECORD_FILE, library),
    UF: textString(RECORD_FILE, library),
    Desc: textString('What the fields are judged by', library),
    EF: PdfDict.of({ F: bytes, UF: bytes }),
  });
}

function textString(text: string, { PdfString }: PdfLibrary): PdfObject {
  return PdfString.fromString(text);
}

function ownDict(pdf: PDF, owner: PdfDict, key: string, { PdfDict }: PdfLibrary): PdfDict {
  const known = dictAt(pdf, owner, key);
  if (known !== undefined) return known;
  const made = PdfDict.of({});
  owner.set(key, made);
  return made;
}
