import type { ChangedStep, Sheet, SheetPhase } from '../sheet';
import type { ChangedSince } from './buildContext';

/** The list of the steps that differ from an earlier text, in the order of the sheet; those that are gone come last. */
export function changesOf(phases: readonly SheetPhase[], changed: ChangedSince | undefined): Pick<Sheet, 'changes'> {
  if (changed === undefined) return {};
  const steps = phases
    .flatMap((phase) => phase.steps)
    .filter((step) => step.changed === true)
    .map(({ number, id, title }): ChangedStep => ({ kind: 'here', step: number, stepId: id, title }));
  const gone = changed.gone.map((title): ChangedStep => ({ kind: 'gone', title }));
  return { changes: { since: { ...changed.since }, steps: [...steps, ...gone] } };
}
