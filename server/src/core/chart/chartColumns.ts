import type { PhaseHead } from '../analysis/phaseHead';
import type { ProcedureView, StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { Moment, Trace } from '../walk/trace';
import type { ChartFinding, ChartStep } from './chart';
import { deedsOf, nameOfResult } from './deeds';

/** The columns of a chart, and what is carried out in each. */
export interface ColumnPlan {
  readonly steps: readonly ChartStep[];
  /** Of each step, in the same order. */
  readonly phases: readonly PhaseHead[];
  /** Of each step: the moments that do something to a part on this way, in order. */
  readonly beats: readonly (readonly Moment[])[];
}

/**
 * One column for each step that the build has, numbered as on its step sheet. A step that is not on the way shown keeps
 * its column, so that the numbers agree, and is marked as left out.
 */
export function planColumns(
  procedure: ProcedureView,
  trace: Trace,
  picked: BuildSet,
  way: BuildSet,
  findings: readonly ChartFinding[],
): ColumnPlan {
  const views = procedure.steps.filter((view) => isOnSheet(view, picked));
  const moments = new Map<StepView['step'], Moment[]>();
  for (const moment of trace.moments) {
    if (!moment.where.overlaps(way)) continue;
    moments.set(moment.step.step, [...(moments.get(moment.step.step) ?? []), moment]);
  }
  const beats = views.map(({ step }) => (moments.get(step) ?? []).filter((one) => touchesParts(one, procedure)));
  const steps = views.map((view, index): ChartStep => {
    const done = moments.get(view.step) ?? [];
    return {
      id: view.id === '' ? `step-${index + 1}` : view.id,
      number: index + 1,
      title: view.step.title?.text ?? view.id,
      source: procedure.document.spanOf(view.step.node).start,
      beats: Math.max(1, beats[index]?.length ?? 0),
      isLeftOut: !view.where.overlaps(way),
      examined: done.flatMap((moment) => examinedBy(moment, procedure)),
      findings: findings.filter((finding) => finding.step !== undefined && finding.step === view.id),
    };
  });
  return { steps, phases: views.map((view) => view.phase), beats };
}

/** A step of which no instruction holds is not on the sheet of the build, nor on its chart. */
function isOnSheet({ where, step, instructions }: StepView, picked: BuildSet): boolean {
  if (!where.overlaps(picked)) return false;
  return (step.do ?? []).length === 0 || instructions.some((one) => one.where.overlaps(picked));
}

function touchesParts({ instruction, lanes, made }: Moment, procedure: ProcedureView): boolean {
  return lanes.size > 0 || deedsOf(instruction, made, procedure).size > 0;
}

function examinedBy({ instruction, made }: Moment, procedure: ProcedureView): string[] {
  if (made.length > 0) return made.map((id) => nameOfResult(id, procedure));
  return proseChecked(instruction);
}

function proseChecked(instruction: Instruction): string[] {
  const checked = instruction.verb === 'check' ? instruction.check : undefined;
  return checked?.is === 'prose' ? [checked.prose.text.replace(/\.$/, '')] : [];
}
