import type { ProcedureView } from '../analysis/procedureView';
import type { Build, BuildSet } from '../builds';
import type { Trace } from '../walk/trace';
import { walkOf } from '../walk/walkProcedure';
import type { Chart, ChartFinding, ChartPhase } from './chart';
import { type ColumnPlan, planColumns } from './chartColumns';
import { rowsOf } from './chartRows';
import { plainWay } from './plainWay';

/** The build that a chart is for: as named, and the builds and outcomes that the name leaves open. */
export interface ChartedBuild {
  readonly build: Pick<Build, 'label'>;
  readonly set: BuildSet;
}

/**
 * The parts of a build against the steps of a procedure, as the walk finds them. What the build leaves open goes the
 * plain way, and the chart says so. Undefined where the family cannot be read: there is no walk then. Never throws.
 */
export function buildChart(
  procedure: ProcedureView,
  picked: ChartedBuild,
  findings: readonly ChartFinding[],
): Chart | undefined {
  const trace = walkOf(procedure);
  return trace === undefined ? undefined : chartOfTrace(procedure, trace, picked, findings);
}

/** The chart of a walk that is given. */
export function chartOfTrace(
  procedure: ProcedureView,
  trace: Trace,
  picked: ChartedBuild,
  findings: readonly ChartFinding[],
): Chart {
  const way = plainWay(procedure, trace, picked.set);
  const columns = planColumns(procedure, trace, picked.set, way.set, findings);
  const { value } = procedure;
  const rows = rowsOf(procedure, trace, way.set, columns, findings);
  const shown = new Set([...columns.steps.flatMap((one) => one.findings), ...rows.flatMap(atTheEnd(columns))]);
  return {
    document: value.procedure?.text ?? '',
    title: value.title?.text ?? '',
    revision: value.revision?.text ?? '',
    build: picked.build.label,
    assumed: way.assumed,
    phases: phasesOf(columns),
    steps: columns.steps,
    rows,
    elsewhere: findings.filter((one) => !shown.has(one)),
  };
}

/** Findings that no step has but a part has stand in the row of the part, behind the last step. */
function atTheEnd({ steps }: ColumnPlan) {
  return ({ cells }: Chart['rows'][number]): readonly ChartFinding[] =>
    cells.find((cell) => cell.step === steps.length)?.findings ?? [];
}

function phasesOf({ steps, phases }: ColumnPlan): ChartPhase[] {
  const found: ChartPhase[] = [];
  for (const [index, phase] of phases.entries()) {
    const title = phase.phase?.text ?? '';
    if (index > 0 && phases[index - 1] === phase) {
      const last = found.pop();
      if (last !== undefined) found.push({ ...last, count: last.count + 1 });
    } else found.push({ title, first: index, count: 1 });
  }
  return steps.length === 0 ? [] : found;
}
