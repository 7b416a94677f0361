import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import { SameParts } from '../analysis/sameParts';
import { gatherer, type InstructionPlace, placesOf } from '../analysis/stepRuns';
import { isGauge, isTooCoarse, judgeGauge, type Measurand, measurandsOf } from './gaugeFit';
import { type NamedTool, toolsWith } from './toolNamed';

/** A gauge that reads too coarsely for a value that is worked out from its reading. */
export interface CoarseReading {
  readonly gauge: NamedTool;
  /** What is worked out, on the builds on which both are done. */
  readonly result: Measurand;
}

/** What a measured reading is used for: the results that are worked out from it, by the reading. Made once for a procedure. */
export function resultsOf(procedure: ProcedureView): ReadonlyMap<string, readonly Measurand[]> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const places = placesOf(procedure, 'calculate').map(({ view }) => view);
  const own = (procedure.value.readings ?? []).flatMap(({ id, value }) => [id.node, value.node]);
  const results = sameResults.of([procedure.space, ...places, 'readings', ...own], () => gather(procedure, places));
  remembered.set(procedure, results);
  return results;
}

/** The same as long as the calculations and the readings of the procedure are. */
const sameResults = new SameParts<ReadonlyMap<string, readonly Measurand[]>>();

function gather(procedure: ProcedureView, places: readonly InstructionView[]): Map<string, Measurand[]> {
  const results = new Map<string, Measurand[]>();
  for (const view of places) {
    const worked = measurandsOf(procedure, view);
    for (const { term } of view.instruction.verb === 'calculate' ? (view.instruction.from ?? []) : []) {
      if ('id' in term) results.set(term.id, [...(results.get(term.id) ?? []), ...worked]);
    }
  }
  return results;
}

const remembered = new WeakMap<ProcedureView, ReadonlyMap<string, readonly Measurand[]>>();

/**
 * The results for which none of the gauges of an instruction reads finely enough. Each reading that goes into a result brings its
 * own steps, so that what suits the result is asked of every one of them.
 */
export function coarseReadings(procedure: ProcedureView, view: InstructionView): CoarseReading[] {
  const { instruction, where } = view;
  const id = instruction.verb === 'measure' ? instruction.measure?.id : undefined;
  const results = id === undefined ? [] : (resultsOf(procedure).get(id) ?? []);
  if (results.length === 0) return [];
  const { tools, complete } = toolsWith(procedure, instruction);
  const gauges = tools.filter(({ tool }) => isGauge(tool));
  const [gauge] = gauges;
  if (!complete || gauge === undefined || tools.some(({ tool }) => tool.kind?.value === undefined)) return [];
  // A gauge that is too coarse for the reading itself is told of there.
  const own = measurandsOf(procedure, view);
  if (own.some((one) => gauges.every(({ tool }) => judgeGauge(tool, one) !== 'suits'))) return [];
  return results.flatMap((result) => {
    const both = { ...result, where: result.where.and(where) };
    // By the resolution alone: the result is another size than the reading, so that the range says nothing.
    const coarse = gauges.every(({ tool }) => isTooCoarse(tool, result) === true);
    return coarse && !both.where.isEmpty ? [{ gauge, result: both }] : [];
  });
}

/** Every instruction that reads too coarsely for what is worked out from it. */
export function coarseReadingPlaces(procedure: ProcedureView): InstructionPlace[] {
  return coarseByRun(procedure).flat();
}

const coarseByRun = gatherer(
  (steps, procedure) =>
    steps.flatMap((step) =>
      step.instructions.flatMap((view) => (coarseReadings(procedure, view).length === 0 ? [] : [{ step, view }])),
    ),
  (procedure) => around.of([resultsOf(procedure), procedure.tools], () => ({})),
);

/** What the coarseness of a reading depends on beside its step. */
const around = new SameParts<object>();
