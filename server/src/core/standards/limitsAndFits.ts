import { type CalculationStep, step } from './calculation';
import { columnOf, lowerDeviations, type SizeColumn, standardTolerances, upperDeviations } from './limitsAndFitsTables';
import { type ToleranceClass, writeToleranceClass } from './toleranceCode';
import { given, withoutNoise } from './working';

/** What a tolerance class allows at a nominal size, in millimetres; deviations are signed. */
export interface LimitsOfSize {
  readonly lowerDeviation: number;
  readonly upperDeviation: number;
  readonly smallest: number;
  readonly largest: number;
  readonly steps: readonly CalculationStep[];
}

/** How a hole and a shaft go together (ISO 286-1:2010, 3.3); clearances in millimetres, an interference is negative. */
export interface Fit {
  readonly kind: 'clearance' | 'transition' | 'interference';
  readonly leastClearance: number;
  readonly greatestClearance: number;
  readonly steps: readonly CalculationStep[];
}

/** Smallest and largest size in millimetres. */
export interface SizeLimits {
  readonly smallest: number;
  readonly largest: number;
}

interface Deviations {
  /** Micrometres. */
  readonly lower: number;
  readonly upper: number;
}

const source = 'ISO 286-1:2010';

/**
 * The standard tolerance of a grade (7 for IT7) at a nominal size in millimetres, in millimetres; grades 4 to 12 up
 * to 50 mm.
 */
export function standardTolerance(grade: number, nominal: number): number | undefined {
  const column = columnOf(nominal);
  const micrometres = column === undefined ? undefined : standardTolerances.get(grade)?.[column];
  return micrometres === undefined ? undefined : micrometres / 1000;
}

/**
 * Limits of size by ISO 286-1:2010 for shafts d to h, js, k to s and the holes of the same letters, nominal sizes up to
 * 50 mm, grades IT4 to IT12. Undefined for everything that these tables do not hold.
 */
export function limitsOfSize(nominal: number, toleranceClass: ToleranceClass): LimitsOfSize | undefined {
  const column = columnOf(nominal);
  const tolerance = column === undefined ? undefined : standardTolerances.get(toleranceClass.grade)?.[column];
  if (column === undefined || tolerance === undefined) return undefined;
  const deviations =
    toleranceClass.of === 'shaft'
      ? shaftDeviations(toleranceClass, column, tolerance)
      : holeDeviations(toleranceClass, column, tolerance);
  return deviations === undefined ? undefined : limitsFrom(nominal, toleranceClass, tolerance, deviations);
}

function limitsFrom(
  nominal: number,
  of: ToleranceClass,
  tolerance: number,
  { lower, upper }: Deviations,
): LimitsOfSize {
  const [lowerDeviation, upperDeviation] = [lower / 1000, upper / 1000];
  const [smallest, largest] = [withoutNoise(nominal + lowerDeviation), withoutNoise(nominal + upperDeviation)];
  const written = writeToleranceClass(of);
  const [low, high, size] = of.of === 'hole' ? ['EI', 'ES', 'D'] : ['ei', 'es', 'd'];
  const steps = [
    given('D', 'nominal size', nominal, 'mm'),
    step('IT', `tolerance of grade ${of.grade}`, source, tolerance, 'µm'),
    step(low, `lower deviation of ${written}`, source, lower, 'µm'),
    step(high, `upper deviation of ${written}`, source, upper, 'µm'),
    step(`${size}_min`, `smallest ${of.of}`, `D + ${low}`, smallest, 'mm'),
    step(`${size}_max`, `largest ${of.of}`, `D + ${high}`, largest, 'mm'),
  ];
  return { lowerDeviation, upperDeviation, smallest, largest, steps };
}

function shaftDeviations({ letter, grade }: ToleranceClass, column: SizeColumn, tolerance: number) {
  if (letter === 'js') return { lower: -tolerance / 2, upper: tolerance / 2 };
  const upper = upperDeviations.get(letter)?.[column];
  if (upper !== undefined) return { lower: upper - tolerance, upper };
  const lower = shaftLower(letter, grade, column);
  return lower === undefined ? undefined : { lower, upper: lower + tolerance };
}

function shaftLower(letter: string, grade: number, column: SizeColumn): number | undefined {
  return letter === 'k' && grade > 7 ? 0 : lowerDeviations.get(letter)?.[column];
}

/** Holes D to H mirror the shaft of the same letter (ISO 286-1:2010, general rule); JS lies about the nominal size. */
function holeDeviations(hole: ToleranceClass, column: SizeColumn, tolerance: number): Deviations | undefined {
  if (hole.letter === 'JS') return { lower: -tolerance / 2, upper: tolerance / 2 };
  const mirrored = upperDeviations.get(hole.letter.toLowerCase())?.[column];
  if (mirrored !== undefined) return { lower: 0 - mirrored, upper: tolerance - mirrored };
  return holeOnTheShaftBasis(hole, column, tolerance);
}

/**
 * The special rule of ISO 286-1: ES = −ei + Δ with Δ = ITn − IT(n−1), for sizes over 3 mm, holes K, M and N up to
 * IT8, P to S up to IT7. It makes H7/p6 and P7/h6 fit alike. Coarser grades follow other rules and are left out.
 */
function holeOnTheShaftBasis(hole: ToleranceClass, column: SizeColumn, tolerance: number): Deviations | undefined {
  const coarsest = 'KMN'.includes(hole.letter) ? 8 : 7;
  const finer = standardTolerances.get(hole.grade - 1)?.[column];
  const lowerOfShaft = lowerDeviations.get(hole.letter.toLowerCase())?.[column];
  if (column === 0 || hole.grade > coarsest || finer === undefined || lowerOfShaft === undefined) return undefined;
  const upper = tolerance - finer - lowerOfShaft;
  return { lower: upper - tolerance, upper };
}

/** The fit of a hole and a shaft of one nominal size in millimetres; undefined where either class is unknown. */
export function fitOfClasses(nominal: number, hole: ToleranceClass, shaft: ToleranceClass): Fit | undefined {
  if (hole.of !== 'hole' || shaft.of !== 'shaft') return undefined;
  const [holeLimits, shaftLimits] = [limitsOfSize(nominal, hole), limitsOfSize(nominal, shaft)];
  if (holeLimits === undefined || shaftLimits === undefined) return undefined;
  const fit = fitOfSizes(holeLimits, shaftLimits);
  return { ...fit, steps: [...holeLimits.steps, ...shaftLimits.steps.slice(1), ...fit.steps.slice(4)] };
}

/** The fit of a hole and a shaft of given limits of size in millimetres. */
export function fitOfSizes(hole: SizeLimits, shaft: SizeLimits): Fit {
  const leastClearance = withoutNoise(hole.smallest - shaft.largest);
  const greatestClearance = withoutNoise(hole.largest - shaft.smallest);
  const steps = [
    given('D_min', 'smallest hole', hole.smallest, 'mm'),
    given('D_max', 'largest hole', hole.largest, 'mm'),
    given('d_min', 'smallest shaft', shaft.smallest, 'mm'),
    given('d_max', 'largest shaft', shaft.largest, 'mm'),
    step('c_min', 'least clearance', 'D_min − d_max', leastClearance, 'mm'),
    step('c_max', 'greatest clearance', 'D_max − d_min', greatestClearance, 'mm'),
  ];
  return { kind: kindOf(leastClearance, greatestClearance), leastClearance, greatestClearance, steps };
}

/**
 * A clearance that can just reach zero is still a clearance fit, an interference that can just reach it still one of
 * interference.
 */
function kindOf(least: number, greatest: number): Fit['kind'] {
  if (least >= 0) return 'clearance';
  return greatest <= 0 ? 'interference' : 'transition';
}
