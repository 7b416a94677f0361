import type { PDF, PdfRef } from '@libpdf/core';
import type { PdfLibrary } from './pdfObjects';

export interface Size {
  readonly width: number;
  readonly height: number;
}

/** Drawings that fields share: one of a kind and size is enough for a whole sheet. */
export class Appearances {
  readonly #known = new Map<string, PdfRef>();

  constructor(
    private readonly pdf: PDF,
    private readonly library: PdfLibrary,
  ) {}

  /** A blank that nobody has written in yet; the marked content is where a reader puts the text. */
  emptyText(size: Size): PdfRef {
    return this.#drawing(size, '/Tx BMC\nEMC\n');
  }

  emptyBox(size: Size): PdfRef {
    return this.#drawing(size, '');
  }

  /** A tick drawn with two strokes, so that it needs no font. */
  tickedBox(size: Size): PdfRef {
    const { width, height } = size;
    const points = [
      [0.2, 0.52],
      [0.42, 0.22],
      [0.82, 0.82],
    ].map(([x = 0, y = 0]) => `${number(x * width)} ${number(y * height)}`);
    const [first, second, third] = points;
    return this.#drawing(size, `q\n1.8 w 1 J 1 j 0 G\n${first} m ${second} l ${third} l S\nQ\n`);
  }

  #drawing({ width, height }: Size, content: string): PdfRef {
    const key = `${number(width)} ${number(height)} ${content}`;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const { PdfArray, PdfDict, PdfName, PdfNumber, PdfStream } = this.library;
    const drawing = PdfStream.fromDict(
      {
        Type: PdfName.of('XObject'),
        Subtype: PdfName.of('Form'),
        BBox: PdfArray.of(...[0, 0, width, height].map((each) => PdfNumber.of(Number(number(each))))),
        Resources: PdfDict.of({}),
      },
      new TextEncoder().encode(content),
    );
    const ref = this.pdf.register(drawing);
    this.#known.set(key, ref);
    return ref;
  }
}

/** Hundredths of a point are finer than any printer, and the same from every machine. */
function number(value: number): string {
  return String(Math.round(value * 100) / 100);
}
