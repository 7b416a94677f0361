import type { InstructionView, ProcedureView } from '../analysis/procedureView';
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
  const results = new Map<string, Measurand[]>();
  for (const { instructions } of procedure.steps) {
    for (const view of instructions) {
      if (view.instruction.verb !== 'calculate') continue;
      const worked = measurandsOf(procedure, view);
      for (const { term } of view.instruction.from ?? []) {
        if ('id' in term) results.set(term.id, [...(results.get(term.id) ?? []), ...worked]);
      }
    }
  }
  remembered.set(procedure, results);
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
