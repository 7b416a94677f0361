import type { Sheet, SheetFigure } from '../../core/sheet/sheet';
import { renderPdf } from '../../node/pdf/pdfEngine';

/** The figures of a sheet of which no drawing could be read, each once, by id and file. */
export function missingFigures(sheet: Sheet): string[] {
  const missing = new Set<string>();
  for (const { id, image } of figuresIn(sheet))
    if (image.kind === 'file') missing.add(image.name === '' ? id : `${id} (${image.name})`);
  return [...missing];
}

/** Which drawings the engine refuses, by id: it does not say so itself. Each is printed alone to find out. */
export async function refusedFigures(sheet: Sheet): Promise<string[]> {
  const bare: Sheet = { ...sheet, phases: [], temporaries: [], fates: [], torqueTable: [], recordTable: [] };
  const refused = new Set<string>();
  const drawings = new Map([...figuresIn(sheet)].map((figure) => [figure.id, figure]));
  for (const [id, figure] of drawings) {
    const printed = await renderPdf({ ...bare, beforeYouStart: [{ kind: 'figure', figure }] }, new Map());
    if ('problem' in printed) refused.add(id);
  }
  return [...refused];
}

/** A figure is the one kind of object with an image, wherever in the tree it stands. */
function* figuresIn(value: unknown): Generator<SheetFigure> {
  if (typeof value !== 'object' || value === null) return;
  if ('image' in value && 'alt' in value) yield value as SheetFigure;
  else for (const each of Object.values(value)) yield* figuresIn(each);
}
