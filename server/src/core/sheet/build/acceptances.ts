import type { BuildSet } from '../../builds';
import type { ByBuild, QuantityValue } from '../../model/values';
import { boundsOf, fromBase, hasTolerance } from '../../quantity';
import type { Acceptance } from '../acceptance';
import type { BuildContext } from './buildContext';
import { merged, valuesIn } from './valuesIn';

/** What a value is judged by, one for each outcome where they differ; none where nobody states a limit. */
export function acceptancesOf(
  accept: ByBuild<QuantityValue> | undefined,
  where: BuildSet,
  context: BuildContext,
): Acceptance[] {
  const cases = merged(valuesIn(accept, where, context.procedure.space), (value) => value?.text ?? '');
  return cases.flatMap((one) => {
    const acceptance = one.value === undefined ? undefined : acceptanceOf(one.value, context);
    if (acceptance === undefined) return [];
    const when = context.conditions.clause(one.where, where);
    return [when === undefined ? acceptance : { ...acceptance, when }];
  });
}

/** The bounds of one value in its own unit; undefined where it cannot be read. Of torque and angle it is the torque. */
export function acceptanceOf(value: QuantityValue, { quantities }: BuildContext): Acceptance | undefined {
  const { quantity } = value.reading;
  if (quantity === undefined) return undefined;
  const { dimension, unit } = quantity;
  const common = {
    dimension,
    unit: unit.symbol,
    printedUnit: quantities.unitFor(dimension, value),
    words: quantities.inTwoUnits(value).primary,
  };
  const { lowest, nominal, highest } = boundsOf(quantity);
  const inUnit = (base: number) => Number(fromBase(base, unit).toPrecision(12));
  const isBare = quantity.form === 'torque-angle' ? quantity.tolerance.kind === 'none' : !hasTolerance(quantity);
  if (isBare) return { ...common, kind: 'stated', value: inUnit(nominal) };
  return {
    ...common,
    kind: 'between',
    ...(Number.isFinite(lowest) ? { lowest: inUnit(lowest) } : {}),
    ...(Number.isFinite(highest) ? { highest: inUnit(highest) } : {}),
  };
}

/** What must not be exceeded, however it is written. */
export function atMostOf(value: QuantityValue, context: BuildContext): Acceptance | undefined {
  const acceptance = acceptanceOf(value, context);
  if (acceptance?.kind !== 'stated') return acceptance;
  const { value: highest, ...common } = acceptance;
  return { ...common, kind: 'between', highest };
}
