import { consumableIds } from '../../analysis/instructions';
import type { PortCaps } from '../recordSheet';
import type { SheetFigure } from '../sheet';
import type { BuildContext } from './buildContext';
import { stepsOf } from './uses';

/** The caps that the last steps leave on the ports, for whoever fits the unit to count. */
export function portCapsOf(context: BuildContext): PortCaps[] {
  const ids = [...new Set(context.uses.flatMap(({ instruction }) => consumableIds(instruction)))];
  return ids.flatMap((id) => {
    if (context.names.consumableItem(id)?.entry.value.kind?.value !== 'plug-cap') return [];
    const uses = context.uses.filter(({ instruction }) => consumableIds(instruction).includes(id));
    return [{ name: context.names.consumable(id).name, at: stepsOf(uses).slice(-1) }];
  });
}

/** Figures that the procedure names a file for, by caption, without those on the sheet. */
export function figuresNotNeeded(sheet: unknown, { procedure, names }: BuildContext): string[] {
  const shown = figureIds(sheet);
  return (procedure.value.figures ?? []).flatMap(({ id, value }) =>
    shown.has(id.id) ? [] : [names.written(value.caption) ?? names.written(value.alt) ?? id.id],
  );
}

/** A figure is the one kind of object with a picture, wherever in the sheet it stands. */
function figureIds(value: unknown, found = new Set<string>()): Set<string> {
  if (typeof value !== 'object' || value === null) return found;
  if ('image' in value && 'alt' in value) found.add((value as SheetFigure).id);
  else for (const each of Object.values(value)) figureIds(each, found);
  return found;
}
