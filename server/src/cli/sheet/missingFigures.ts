import type { Sheet, SheetFigure } from '../../core/sheet/sheet';

/** The figures of a sheet of which no drawing could be read, each once, by id and file. */
export function missingFigures(sheet: Sheet): string[] {
  const missing = new Set<string>();
  for (const { id, image } of figuresIn(sheet))
    if (image.kind === 'file') missing.add(image.name === '' ? id : `${id} (${image.name})`);
  return [...missing];
}

/** A figure is the one kind of object with an image, wherever in the tree it stands. */
function* figuresIn(value: unknown): Generator<SheetFigure> {
  if (typeof value !== 'object' || value === null) return;
  if ('image' in value && 'alt' in value) yield value as SheetFigure;
  else for (const each of Object.values(value)) yield* figuresIn(each);
}
