import type { ProcedureView } from '../analysis/procedureView';
import type { Instruction } from '../model/generated/types';
import type { Moment } from '../walk/trace';
import { walkOf } from '../walk/walkProcedure';
import type { ChangeClass } from './change';

/** What it comes to that instructions changed their place to others. */
export type Reordered = (
  moved: readonly Instruction[],
  passed: readonly Instruction[],
) => { readonly class: ChangeClass; readonly note: string };

/**
 * Whether the order matters is asked of the walk: two instructions can change places where neither looks at, or changes,
 * what the other changes of the unit.
 */
export function reorderedBy(procedure: ProcedureView | undefined): Reordered {
  let moments: Map<Instruction, Moment[]> | undefined;
  return (moved, passed) => {
    moments ??= momentsOf(procedure);
    const byInstruction = moments;
    const of = (all: readonly Instruction[]) => all.flatMap((one) => byInstruction.get(one) ?? []);
    const [ours, others] = [of(moved), of(passed)];
    // What could not be walked may matter.
    if (byInstruction.size === 0) return { class: 'hurt', note: 'the order cannot be walked' };
    const met = ours.some((one) => others.some((other) => meet(one, other)));
    return met ? { class: 'hurt', note: 'the walk differs' } : { class: 'says', note: 'nothing between depends on it' };
  };
}

function momentsOf(procedure: ProcedureView | undefined): Map<Instruction, Moment[]> {
  const byInstruction = new Map<Instruction, Moment[]>();
  for (const moment of (procedure === undefined ? undefined : walkOf(procedure))?.moments ?? [])
    byInstruction.set(moment.instruction, [...(byInstruction.get(moment.instruction) ?? []), moment]);
  return byInstruction;
}

function meet(first: Moment, second: Moment): boolean {
  return touches(first, second) || touches(second, first);
}

function touches(writer: Moment, other: Moment): boolean {
  const cells = new Set(writer.changes.map(({ cell }) => cell));
  return other.reads.some((cell) => cells.has(cell)) || other.changes.some(({ cell }) => cells.has(cell));
}

/** A small number by a text, so that of two runs of the same length the same one is kept in either direction. */
export function orderWeight(text: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return (hash / 0x1_0000_0000) * 1e-3;
}
