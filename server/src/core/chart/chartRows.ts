import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Moment, Trace } from '../walk/trace';
import type { ChartBeat, ChartCell, ChartFinding, ChartRow, Deed, Standing } from './chart';
import type { ColumnPlan } from './chartColumns';
import { deedsOf } from './deeds';
import { type PlacedPart, partsInOrder } from './partOrder';
import { isSameStanding, Standings } from './standing';

/** What happens to each part at each step, by part and by index of the step. */
type Happenings = ReadonlyMap<string, ReadonlyMap<number, readonly ChartBeat[]>>;

export function rowsOf(
  procedure: ProcedureView,
  trace: Trace,
  way: BuildSet,
  columns: ColumnPlan,
  findings: readonly ChartFinding[],
): ChartRow[] {
  const standings = new Standings(procedure, way, trace.start);
  const parts = partsInOrder(procedure, standings);
  const starts = new Map(parts.map(({ id }) => [id, standings.of(id)]));
  const happenings = follow(procedure, standings, starts, columns);
  return parts.map((part) => rowOf(part, procedure, starts, happenings, columns, findings));
}

/** Goes through the moments in order and reads off how every part stands after each. */
function follow(
  procedure: ProcedureView,
  standings: Standings,
  starts: ReadonlyMap<string, Standing>,
  { beats }: ColumnPlan,
): Happenings {
  const now = new Map(starts);
  const happenings = new Map<string, Map<number, ChartBeat[]>>();
  for (const [step, moments] of beats.entries()) {
    for (const [beat, moment] of moments.entries()) {
      const touched = standings.change(moment.lanes);
      const deeds = deedsOf(moment.instruction, moment.made, procedure);
      for (const [part, before] of now) {
        if (!touched.has(part) && !deeds.has(part)) continue;
        const standing = standings.of(part);
        const changed = !isSameStanding(before, standing);
        const deed = isHere(standing) || changed ? deeds.get(part) : undefined;
        if (!changed && deed === undefined) continue;
        now.set(part, standing);
        add(happenings, part, step, beatOf(procedure, moment, beat, deed, standing, changed));
      }
    }
  }
  return happenings;
}

/** A result says nothing about a part that is not there. */
function isHere({ kind }: Standing): boolean {
  return kind !== 'gone' && kind !== 'absent' && kind !== 'away';
}

function beatOf(
  { document }: ProcedureView,
  moment: Moment,
  beat: number,
  deed: Deed | undefined,
  standing: Standing,
  changed: boolean,
): ChartBeat {
  return { beat, deed, standing, changed, source: document.spanOf(moment.at).start };
}

function add(happenings: Map<string, Map<number, ChartBeat[]>>, part: string, step: number, beat: ChartBeat): void {
  const ofPart = happenings.get(part) ?? new Map<number, ChartBeat[]>();
  ofPart.set(step, [...(ofPart.get(step) ?? []), beat]);
  happenings.set(part, ofPart);
}

function rowOf(
  { id, depth, isTemporary }: PlacedPart,
  procedure: ProcedureView,
  starts: ReadonlyMap<string, Standing>,
  happenings: Happenings,
  { steps }: ColumnPlan,
  findings: readonly ChartFinding[],
): ChartRow {
  const about = findings.filter((one) => one.about.includes(id));
  const cells = steps.map((step, index): ChartCell => {
    const found = step.findings.filter((one) => about.includes(one));
    return { step: index, beats: happenings.get(id)?.get(index) ?? [], findings: found };
  });
  const atTheEnd = about.filter((one) => one.step === undefined);
  const all = [...cells, { step: steps.length, beats: [], findings: atTheEnd }];
  return {
    part: id,
    name: procedure.family?.nameOf(id) ?? id,
    depth,
    isTemporary,
    start: starts.get(id) ?? { kind: 'absent', pieces: undefined, heat: undefined, marked: false },
    cells: all.filter((cell) => cell.beats.length > 0 || cell.findings.length > 0),
  };
}
