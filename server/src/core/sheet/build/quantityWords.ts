import type { Settings } from '../../analysis/settings';
import type { QuantityValue } from '../../model/values';
import {
  convert,
  type Dimension,
  dimensions,
  findUnit,
  formatQuantity,
  fromBase,
  type Quantity,
  type Statement,
  type Unit,
  usualUnits,
} from '../../quantity';
import { roughNumber } from '../../workings/torqueUnits';
import type { Phrases } from '../sentences/language';
import type { SheetLanguage } from '../sheet';

/** One value in the first unit and, where there is one, in the second. */
export interface TwoUnits {
  readonly primary: string;
  readonly secondary?: string;
}

/** Torques from here up are read in pound-feet, below in pound-inches. Common practice, no source. */
const POUND_FEET_FROM = 27;

const NEWTON_METRE = torqueUnit('N·m');
const POUND_INCH = torqueUnit('lbf·in');
const POUND_FOOT = torqueUnit('lbf·ft');

/** Writes values in the units and with the decimal sign of the sheet. A value that cannot be read stands as it was written. */
export class QuantityWords {
  constructor(
    private readonly settings: Settings,
    private readonly phrases: Phrases,
    private readonly language: SheetLanguage = 'en',
  ) {}

  /** `0.04 to 0.09 mm (0.0016 to 0.0035 in)`. */
  inBrackets(value: QuantityValue): string {
    const { primary, secondary } = this.inTwoUnits(value);
    if (secondary === undefined) return primary;
    // `at most` is said once.
    const words = [this.phrases.atMost(''), this.phrases.atLeast('')].find((one) => secondary.startsWith(one)) ?? '';
    return `${primary} (${secondary.slice(words.length)})`;
  }

  inTwoUnits({ text, reading }: QuantityValue): TwoUnits {
    return reading.quantity === undefined ? { primary: text } : this.#write(reading.quantity, (one) => one);
  }

  /** The torque of `2 N·m + 110°` without its angle, and the angle. */
  torque(value: QuantityValue): TwoUnits & { readonly angle?: string } {
    const { quantity } = value.reading;
    if (quantity?.form !== 'torque-angle') return this.inTwoUnits(value);
    return { ...this.#write(quantity, withoutAngle), angle: this.#format(quantity.angle, undefined) };
  }

  /**
   * Two worked-out torques in N·m as the ends of a range, to as many digits as they deserve, in the units that the stated
   * torque is written in here.
   */
  torqueRange(low: number, high: number, stated: QuantityValue | undefined): Required<TwoUnits> {
    const quantity = stated?.reading.quantity;
    const [first, second] = quantity?.dimension === 'torque' ? this.#unitsOf(quantity) : [this.#unit('torque', 0)];
    const primary = first ?? NEWTON_METRE;
    const secondary = second ?? this.#unit('torque', 1) ?? otherTorqueUnit(primary, high);
    const write = (unit: Unit) => this.phrases.range(this.#rough(low, unit), this.#rough(high, unit), unit.symbol);
    return { primary: write(primary), secondary: write(secondary) };
  }

  /** A size that is a name, such as `8 mm`, as it was written but for its decimal sign. */
  named(written: string): string {
    return this.language === 'en' ? written : written.replace(/(?<=\d)\.(?=\d)/gu, ',');
  }

  /** The symbol that readings of a dimension are written down in. */
  unitFor(dimension: string, limits: QuantityValue | undefined): string {
    if (!isDimension(dimension)) return '';
    return (this.#unit(dimension, 0) ?? limits?.reading.quantity?.unit ?? usualUnits(dimension)[0])?.symbol ?? '';
  }

  #rough(torque: number, unit: Unit): string {
    return roughNumber(fromBase(torque, unit), this.language);
  }

  #write(quantity: Quantity, form: (statement: Statement) => Statement): TwoUnits {
    const written: Statement[] = quantity.dual === null ? [quantity] : [quantity, quantity.dual];
    const [first, second] = this.#unitsOf(quantity);
    const write = (unit: Unit) => this.#format(form(written.find((one) => one.unit === unit) ?? quantity), unit);
    return second === undefined || second === first
      ? { primary: write(first) }
      : { primary: write(first), secondary: write(second) };
  }

  #unitsOf(quantity: Quantity): [first: Unit, second: Unit | undefined] {
    const first = this.#unit(quantity.dimension, 0) ?? quantity.unit;
    return [first, this.#unit(quantity.dimension, 1) ?? secondOf(quantity, first)];
  }

  #unit(dimension: Dimension, place: 0 | 1): Unit | undefined {
    const symbol = this.settings.units.get(dimension)?.[place];
    return symbol === undefined ? undefined : findUnit(dimension, symbol);
  }

  #format(statement: Statement, unit: Unit | undefined): string {
    const converted = unit === undefined || unit === statement.unit ? statement : convert(statement, unit);
    const words = formatQuantity(converted ?? statement, { ranges: 'words', language: this.language });
    if (words.startsWith('≤ ')) return this.phrases.atMost(words.slice(2));
    return words.startsWith('≥ ') ? this.phrases.atLeast(words.slice(2)) : words;
  }
}

/** The second unit where nobody chose one: the one in brackets, and for a torque the usual one of the other system. */
function secondOf(quantity: Quantity, first: Unit): Unit | undefined {
  if (quantity.dual !== null) return first === quantity.dual.unit ? quantity.unit : quantity.dual.unit;
  if (quantity.dimension !== 'torque') return first === quantity.unit ? undefined : quantity.unit;
  const size = quantity.form === 'range' ? quantity.high.value : quantity.number.value;
  return otherTorqueUnit(first, size * quantity.unit.factor);
}

/** The usual unit of the other system for a torque in N·m. */
function otherTorqueUnit(first: Unit, torque: number): Unit {
  if (!first.symbol.includes('N·')) return NEWTON_METRE;
  return torque < POUND_FEET_FROM ? POUND_INCH : POUND_FOOT;
}

function torqueUnit(symbol: string): Unit {
  const found = findUnit('torque', symbol);
  // Symbols of the table only; a mistyped one would be a mistake of the program.
  if (found === undefined) throw new TypeError(`There is no unit ${symbol}`);
  return found;
}

function withoutAngle(statement: Statement): Statement {
  if (statement.form !== 'torque-angle') return statement;
  const { angle: _, ...torque } = statement;
  return { ...torque, form: 'single' };
}

function isDimension(name: string): name is Dimension {
  return (dimensions as readonly string[]).includes(name);
}
