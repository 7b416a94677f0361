import type { PortCaps } from '../recordSheet';
import type { BeforeLine, SheetPhase } from '../sheet';
import type { BuildContext } from './buildContext';
import { gatheredByStep } from './byStep';
import { instructionsIn } from './steps';

/** The caps that the last steps leave on the ports, for whoever fits the unit to count. */
export function portCapsOf(context: BuildContext): PortCaps[] {
  return [...context.uses.consumables].flatMap(([id, uses]) => {
    if (context.names.consumableItem(id)?.entry.value.kind?.value !== 'plug-cap') return [];
    return [{ name: context.names.consumable(id).name, at: uses.slice(-1).map(({ place }) => place) }];
  });
}

/** Figures that the procedure names a file for, by caption, without those on the sheet. */
export function figuresNotNeeded(
  before: readonly BeforeLine[],
  phases: readonly SheetPhase[],
  { procedure, names }: BuildContext,
): string[] {
  const shown = new Set([
    ...before.map((line) => (line.kind === 'figure' ? line.figure.id : undefined)),
    ...figuresShown(phases),
  ]);
  return (procedure.value.figures ?? []).flatMap(({ id, value }) =>
    shown.has(id.id) ? [] : [names.written(value.caption) ?? names.written(value.alt) ?? id.id],
  );
}

const figuresShown = gatheredByStep((step): string[] => [
  ...step.figures.map(({ id }) => id),
  ...instructionsIn(step).flatMap(({ figure }) => figure?.id ?? []),
]);
