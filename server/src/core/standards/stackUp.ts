import { type Bounds, boundsOf, type Statement } from '../quantity';
import { type CalculationStep, step } from './calculation';
import { given, withoutNoise } from './working';

/** A dimension of a chain: what it adds to the gap (+1) or takes from it (−1), with its bounds in millimetres. */
export interface StackLink {
  readonly name: string;
  readonly sign: 1 | -1;
  readonly bounds: Bounds;
}

/** Lowest and highest value in millimetres. */
export interface StackRange {
  readonly lowest: number;
  readonly highest: number;
}

/** What a chain of dimensions adds up to, in millimetres. */
export type StackUp =
  | {
      readonly kind: 'bounded';
      /** Of the nominal values as written. */
      readonly nominal: number;
      /** The middle of the tolerances; not the nominal value where a tolerance is to one side. */
      readonly middle: number;
      /** All dimensions at their worst limits at once. */
      readonly worst: StackRange;
      /** The root of the sum of the squared half tolerances about the middle. */
      readonly statistical: StackRange;
      readonly steps: readonly CalculationStep[];
    }
  /** Dimensions that are limited on one side only, so that nothing can be added up. */
  | { readonly kind: 'open'; readonly open: readonly string[] };

/** A link from a written length, whichever unit it is in; undefined where the statement is no length. */
export function stackLink(name: string, sign: 1 | -1, statement: Statement): StackLink | undefined {
  return statement.dimension === 'length' ? { name, sign, bounds: boundsOf(statement) } : undefined;
}

/**
 * Adds up a chain of signed dimensions, worst case and root sum square (textbook method of dimension chains). The
 * statistical range is only right for dimensions that vary independently and are centred in their tolerances; of a
 * chain with one tolerance far wider than the others the worst case is the better judge.
 */
export function stackUp(links: readonly StackLink[]): StackUp {
  const open = links.filter(({ bounds }) => !Number.isFinite(bounds.lowest) || !Number.isFinite(bounds.highest));
  if (open.length > 0) return { kind: 'open', open: open.map(({ name }) => name) };
  const nominal = withoutNoise(sum(links, ({ nominal }) => nominal));
  const middle = withoutNoise(sum(links, ({ lowest, highest }) => (lowest + highest) / 2));
  const halves = links.map(({ bounds }) => (bounds.highest - bounds.lowest) / 2);
  const worstHalf = withoutNoise(halves.reduce((total, half) => total + half, 0));
  const statisticalHalf = withoutNoise(Math.sqrt(halves.reduce((total, half) => total + half * half, 0)));
  const steps = [...links.flatMap(stepsOf), ...sumSteps(nominal, middle, worstHalf, statisticalHalf)];
  const [worst, statistical] = [around(middle, worstHalf), around(middle, statisticalHalf)];
  return { kind: 'bounded', nominal, middle, worst, statistical, steps };
}

function sum(links: readonly StackLink[], of: (bounds: Bounds) => number): number {
  return links.reduce((total, { sign, bounds }) => total + sign * of(bounds), 0);
}

function around(middle: number, half: number): StackRange {
  return { lowest: withoutNoise(middle - half), highest: withoutNoise(middle + half) };
}

function stepsOf({ name, sign, bounds }: StackLink): readonly CalculationStep[] {
  return [
    given(sign > 0 ? '+x' : '−x', name, bounds.nominal, 'mm'),
    given('x_min', `${name}, lowest`, bounds.lowest, 'mm'),
    given('x_max', `${name}, highest`, bounds.highest, 'mm'),
  ];
}

function sumSteps(nominal: number, middle: number, worst: number, statistical: number): readonly CalculationStep[] {
  return [
    step('X', 'nominal', 'Σ ±x', nominal, 'mm'),
    step('X_m', 'middle of the tolerances', 'Σ ±(x_min + x_max)/2', middle, 'mm'),
    step('T', 'worst case to either side', 'Σ (x_max − x_min)/2', worst, 'mm'),
    step('T_s', 'root sum square to either side', '√Σ ((x_max − x_min)/2)²', statistical, 'mm'),
  ];
}
