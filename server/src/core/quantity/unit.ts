import type { Dimension } from './dimension';

/** A unit of measurement with its standard symbol (SI Brochure, NIST SP 811). */
export interface Unit {
  readonly dimension: Dimension;
  /** The symbol to write, for example `lbf·ft`. */
  readonly symbol: string;
  /** The unit in words, singular. */
  readonly name: string;
  /** Exact size in base units of the dimension: decimal text, or `a/b` where the decimal never ends. */
  readonly exact: string;
  /** The same as a double. */
  readonly factor: number;
  /** Reading in this unit where the base unit reads zero; only temperatures have one other than 0. */
  readonly zeroAt: number;
  /** Degrees, minutes and seconds of angle stand right after their number (SI Brochure 5.4.3). */
  readonly gap: 'space' | 'none';
  /** Symbols that are as good as the standard one and stay as written. */
  readonly alsoStandard: readonly string[];
  /** Spellings that are understood; a fix writes the symbol. Alternatives as `met(re|er)`. */
  readonly accepted: readonly string[];
  /** Spellings that are understood, yet could mean something else. */
  readonly doubtful: readonly string[];
}

interface UnitDetails {
  readonly zeroAt?: number;
  readonly gap?: 'none';
  readonly also?: string;
  readonly accepted?: string;
  readonly doubtful?: string;
}

/** Describes one unit. Spelling lists are one text with the spellings parted by commas, so that a table stays a table. */
export function unit(
  dimension: Dimension,
  symbol: string,
  name: string,
  exact: string,
  details: UnitDetails = {},
): Unit {
  return {
    dimension,
    symbol,
    name,
    exact,
    factor: toNumber(exact),
    zeroAt: details.zeroAt ?? 0,
    gap: details.gap ?? 'space',
    alsoStandard: list(details.also),
    accepted: list(details.accepted),
    doubtful: list(details.doubtful),
  };
}

/** Value in base units of `value` read in `unit`. */
export function toBase(value: number, unit: Unit): number {
  return (value - unit.zeroAt) * unit.factor;
}

/** What `unit` reads for a value in base units. */
export function fromBase(base: number, unit: Unit): number {
  return base / unit.factor + unit.zeroAt;
}

function toNumber(exact: string): number {
  const [top = '', bottom] = exact.split('/');
  return bottom === undefined ? Number(top) : Number(top) / Number(bottom);
}

function list(text: string | undefined): readonly string[] {
  return text === undefined ? [] : text.split(',').map((spelling) => spelling.trim());
}
