/** Quantities: units of the trade, reading and writing of values with tolerances, conversion, comparison, and search in prose. */
export { type Bounds, boundsOf, liesWithin, offsetsOf } from './bounds';
export { type Comparison, compareQuantities, isRoundingOf, sameQuantity } from './compare';
export { convert, convertDifference, convertValue } from './convert';
export { type Dimension, differenceOf, dimensionFacts, dimensions } from './dimension';
export { type BareTorque, findBareTorques } from './findBareTorques';
export { type FoundQuantity, findQuantities } from './findQuantities';
export { formatNumber, formatQuantity, type QuantityFormat } from './format';
export { parseQuantity } from './parseQuantity';
export {
  hasTolerance,
  type LimitStatement,
  type Quantity,
  type QuantityProblem,
  type QuantityReading,
  type RangeStatement,
  type SingleStatement,
  type Statement,
  type Tolerance,
  type TorqueAngleStatement,
  type WrittenNumber,
} from './quantity';
export { fromBase, toBase, type Unit } from './unit';
export { allUnits, differenceUnit, findUnit, unitsOf, usualUnits } from './units';
export { decimalsOf } from './writtenNumber';
