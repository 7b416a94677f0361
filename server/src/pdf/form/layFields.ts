import type { PDF, PdfDict, PdfObject, PdfRef } from '@libpdf/core';
import { fieldTooltip } from '../../core/sheet/fields/fieldWords';
import type { FormField } from '../../core/sheet/fields/formField';
import type { RecordPlan } from '../../core/sheet/record/recordPlan';
import { Appearances, type Size } from './appearances';
import { attachPlan } from './attachPlan';
import { type MarkedPlace, markedPlaces } from './markedPlaces';
import { arrayAt, type PdfLibrary, pdfLibrary } from './pdfObjects';
import { structureParents, tagAsForm } from './structure';

/** Set in the file of a document that has a field for a signature (ISO 32000-1, table 219). */
const SIGNATURES_EXIST = 1;
/** Of a text over several lines (ISO 32000-1, table 228). */
const MULTILINE = 1 << 12;
const TEXT_LOOK = '/Helv 11 Tf 0 g';
const TICK_LOOK = '/ZaDb 0 Tf 0 g';

/**
 * Turns the places that a printed sheet marks into the fields of a form: what was printed stays as it is, byte for byte,
 * and the form is written behind it, with the plan that a filled one is judged by. A field whose place is marked twice
 * is one field that shows in both. The result depends on the arguments alone.
 */
export async function layFields(printed: Uint8Array, plan: RecordPlan): Promise<Uint8Array> {
  const library = await pdfLibrary();
  const pdf = await library.PDF.load(printed);
  new FieldLayer(pdf, library).lay(plan.fields);
  attachPlan(pdf, plan, library);
  return pdf.save({ incremental: true });
}

class FieldLayer {
  readonly #appearances: Appearances;

  constructor(
    private readonly pdf: PDF,
    private readonly library: PdfLibrary,
  ) {
    this.#appearances = new Appearances(pdf, library);
  }

  lay(fields: readonly FormField[]): void {
    const byName = new Map(fields.map((field) => [field.name, field]));
    const parents = structureParents(this.pdf);
    const placesByName = new Map<string, MarkedPlace[]>();
    for (const place of markedPlaces(this.pdf)) {
      placesByName.set(place.name, [...(placesByName.get(place.name) ?? []), place]);
      tagAsForm(this.pdf, place.annotation, parents, this.library);
    }
    const laid = [...placesByName].flatMap(([name, places]) => {
      const field = byName.get(name);
      return field === undefined ? [] : [this.#layField(field, places)];
    });
    this.#addForm(
      laid,
      fields.some((field) => field.kind === 'signature'),
    );
  }

  #layField(field: FormField, places: readonly MarkedPlace[]): PdfRef {
    const [first] = places;
    for (const place of places) this.#makeWidget(field, place);
    if (places.length === 1 && first !== undefined) {
      for (const [key, value] of this.#fieldEntries(field)) first.annotation.set(key, value);
      return first.ref;
    }
    const { PdfArray, PdfDict } = this.library;
    const owner = new PdfDict(this.#fieldEntries(field));
    owner.set('Kids', PdfArray.of(...places.map((place) => place.ref)));
    const ref = this.pdf.register(owner);
    for (const place of places) place.annotation.set('Parent', ref);
    return ref;
  }

  #fieldEntries(field: FormField): [string, PdfObject][] {
    const { PdfName, PdfNumber, PdfString } = this.library;
    const type = field.kind === 'signature' ? 'Sig' : isTicked(field) ? 'Btn' : 'Tx';
    const entries: [string, PdfObject][] = [
      ['FT', PdfName.of(type)],
      ['T', PdfString.fromString(field.name)],
      ['TU', PdfString.fromString(fieldTooltip(field))],
    ];
    if (field.kind === 'text' && field.lines === 'many') entries.push(['Ff', PdfNumber.of(MULTILINE)]);
    return isTicked(field) ? [...entries, ['V', PdfName.of('Off')]] : entries;
  }

  /** The link becomes the field's place on the page: same rectangle, same place in the order of reading. */
  #makeWidget(field: FormField, { annotation, page }: MarkedPlace): void {
    const { PdfDict, PdfName, PdfString } = this.library;
    const size = this.#sizeOf(annotation);
    for (const key of ['A', 'Border', 'Contents', 'QuadPoints']) annotation.delete(key);
    annotation.set('Subtype', PdfName.of('Widget'));
    annotation.set('P', page);
    // Some readers look for it here only, also where the place is one of several of its field.
    annotation.set('TU', PdfString.fromString(fieldTooltip(field)));
    if (field.kind === 'signature') return;
    annotation.set('DA', PdfString.fromString(isTicked(field) ? TICK_LOOK : TEXT_LOOK));
    if (!isTicked(field)) {
      annotation.set('AP', PdfDict.of({ N: this.#appearances.emptyText(size) }));
      return;
    }
    const looks = { Yes: this.#appearances.tickedBox(size), Off: this.#appearances.emptyBox(size) };
    annotation.set('AP', PdfDict.of({ N: PdfDict.of(looks) }));
    annotation.set('AS', PdfName.of('Off'));
    annotation.set('MK', PdfDict.of({ CA: PdfString.fromString('4') }));
  }

  #sizeOf(annotation: PdfDict): Size {
    const [left = 0, bottom = 0, right = 0, top = 0] = [...(arrayAt(this.pdf, annotation, 'Rect') ?? [])].map((each) =>
      each.type === 'number' ? each.value : 0,
    );
    return { width: Math.abs(right - left), height: Math.abs(top - bottom) };
  }

  #addForm(fields: readonly PdfRef[], isSigned: boolean): void {
    const { PdfArray, PdfDict, PdfNumber, PdfString } = this.library;
    const form = PdfDict.of({
      Fields: PdfArray.of(...fields),
      DA: PdfString.fromString(TEXT_LOOK),
      DR: PdfDict.of({
        Font: PdfDict.of({
          Helv: this.#standardFont('Helvetica', 'WinAnsiEncoding'),
          ZaDb: this.#standardFont('ZapfDingbats', undefined),
        }),
      }),
    });
    if (isSigned) form.set('SigFlags', PdfNumber.of(SIGNATURES_EXIST));
    this.pdf.getCatalog().set('AcroForm', this.pdf.register(form));
  }

  /** One of the fonts that every reader has; what is typed later must not depend on a subset of ours. */
  #standardFont(name: string, encoding: string | undefined): PdfRef {
    const { PdfDict, PdfName } = this.library;
    const font = PdfDict.of({ Type: PdfName.of('Font'), Subtype: PdfName.of('Type1'), BaseFont: PdfName.of(name) });
    if (encoding !== undefined) font.set('Encoding', PdfName.of(encoding));
    return this.pdf.register(font);
  }
}

function isTicked(field: FormField): boolean {
  return field.kind === 'tick' || field.kind === 'choice';
}
