import type { FamilyView } from '../analysis/familyView';
import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet, BuildSpace } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { QuantityValue, Ref } from '../model/values';
import { boundsOf } from '../quantity';
import { ambient, type FitMethod, type FitNeed, fitNeed } from './fitNeeds';
import { type FitCase, fitCases } from './fitSizes';
import { type Fitting, type TemperedPart, temperatureTrace } from './fitTrace';
import { fitWorking } from './fitWorking';
import type { Working } from './working';

/** A part that is fitted warm or cold, with the temperature that it has at least, and the one that it needs. */
export interface FittingJudgement {
  readonly fit: FitCase;
  readonly fitted: Ref;
  /** The instruction that fits it. */
  readonly fitting: Instruction;
  readonly source: TemperedPart;
  readonly method: FitMethod;
  readonly need: FitNeed;
  /** °C: the least of what is heated, the greatest of what is cooled. */
  readonly reached: number;
  readonly enough: boolean;
  readonly where: BuildSet;
}

/** Nobody holds a temperature closer; common practice, no source. In kelvins. */
const close = 0.5;

const remembered = new WeakMap<ProcedureView, readonly FittingJudgement[]>();

/** Every fit that a procedure puts together with heat or cold, in the order of the work, each once. */
export function fittingJudgements(procedure: ProcedureView): readonly FittingJudgement[] {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const { family, space } = procedure;
  const once: FittingJudgement[] = [];
  const byTemperature = new Map<QuantityValue, FittingJudgement[]>();
  const all =
    family === undefined ? [] : temperatureTrace(procedure).fittings.flatMap((one) => judged(family, space, one));
  for (const one of all) {
    const earlier = byTemperature.get(one.source.until) ?? [];
    const told = earlier.filter(({ fit }) => isSameFit(fit, one.fit));
    const where = one.where.minus(space.union(told.map((other) => other.where)));
    if (where.isEmpty) continue;
    const judgement = where === one.where ? one : { ...one, where };
    once.push(judgement);
    byTemperature.set(one.source.until, [...earlier, judgement]);
  }
  remembered.set(procedure, once);
  return once;
}

/** A fitting belongs to one walk of one family, and is judged by that alone. */
const judgements = new WeakMap<Fitting, readonly FittingJudgement[]>();

function judged(family: FamilyView, space: BuildSpace, fitting: Fitting): readonly FittingJudgement[] {
  const known = judgements.get(fitting);
  if (known !== undefined) return known;
  const now = fitCases(family, fitting.ref.id, space).flatMap((fit) => judge(family, fit, fitting));
  judgements.set(fitting, now);
  return now;
}

function isSameFit(one: FitCase, other: FitCase): boolean {
  return one.part === other.part && one.bore.value === other.bore.value && one.shaft.value === other.shaft.value;
}

/** How a temperature stands to the fits that follow: for the instruction that heats or cools, and for the one that fits. */
export function fitWorkingsOfInstruction(procedure: ProcedureView, instruction: Instruction): Working[] {
  const { family } = procedure;
  if (family === undefined) return [];
  return fittingJudgements(procedure)
    .filter(({ source, fitting }) => source.instruction === instruction || fitting === instruction)
    .map((one) => judgementWorking(family, one));
}

export function judgementWorking(family: FamilyView, { fit, method, source, where }: FittingJudgement): Working {
  const working = fitWorking(family, { ...fit, where }, method);
  const label = source.is === 'hot' ? 'heated to' : 'cooled to';
  return { ...working, rows: [...working.rows, { label, text: source.until.text.trim() }] };
}

function judge(family: FamilyView, fit: FitCase, fitting: Fitting): FittingJudgement[] {
  const within = fit.where.and(fitting.where);
  const inFit = fitting.tempered.filter(({ part }) => part === fit.part || part === fit.other);
  const hot = inFit.filter(({ is }) => is === 'hot');
  const cold = inFit.filter((one) => one.is === 'cold' && (reachedBy(one) ?? ambient) < ambient);
  const found: FittingJudgement[] = [];
  const add = (source: TemperedPart, where: BuildSet, method: FitMethod): void => {
    const reached = reachedBy(source);
    if (where.isEmpty || reached === undefined) return;
    const need = fitNeed(family, fit, method);
    found.push({
      fit,
      fitted: fitting.ref,
      fitting: fitting.instruction,
      source,
      method,
      need,
      reached,
      where,
      enough: isEnough(need, reached, method),
    });
  };
  for (const source of hot) {
    let rest = within.and(source.where);
    for (const other of cold.filter(({ part }) => part !== source.part)) {
      const coldShaft = { part: other.part, at: reachedBy(other) ?? ambient };
      add(source, rest.and(other.where), { is: 'heated', outer: source.part, coldShaft });
      rest = rest.minus(other.where);
    }
    add(source, rest, { is: 'heated', outer: source.part });
  }
  for (const source of cold) {
    const rest = hot.reduce((set, { where }) => set.minus(where), within.and(source.where));
    add(source, rest, { is: 'cooled', inner: source.part });
  }
  return found;
}

/** The end of a stated temperature that counts; of `≤ 110 °C` there is only one. */
function reachedBy({ is, until }: TemperedPart): number | undefined {
  const { quantity } = until.reading;
  if (quantity?.dimension !== 'temperature') return undefined;
  const { lowest, nominal, highest } = boundsOf(quantity);
  const end = is === 'hot' ? lowest : highest;
  return Number.isFinite(end) ? end : nominal;
}

function isEnough(need: FitNeed, reached: number, { is }: FitMethod): boolean {
  if (!need.known || need.needed.change === 0) return true;
  const { temperature } = need.needed;
  return is === 'heated' ? reached >= temperature - close : reached <= temperature + close;
}
