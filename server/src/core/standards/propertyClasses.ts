import {
  type ClassFacts,
  type IsoBoltClass,
  isoSteelClasses,
  type SaeGrade,
  type StainlessClass,
  type StainlessSteel,
  saeGrades,
  stainlessClasses,
  stainlessSteels,
} from './strengthTables';

/** The strength of a fastener's material; stresses in MPa. */
export interface Strength {
  /** Smallest tensile strength R_m. */
  readonly tensile: number;
  /** Smallest yield stress: R_eL, R_p0.2 or R_pf, whichever the standard states for the class. */
  readonly yield: number;
  /** Stress that leaves no lasting stretch. */
  readonly proof: number;
  /** Whether the standard states a proof stress; where it does not, the yield stress stands for it. */
  readonly proofFrom: 'standard' | 'yield';
  /** Vickers hardness from and to; undefined where no table was at hand. */
  readonly hardness: readonly [lowest: number, highest: number] | undefined;
  /** The standard that the values are from. */
  readonly standard: string;
}

/** A class or grade as it is marked on bolts and nuts. */
export type PropertyClass =
  /** Bolts, screws, studs of steel: `8.8`. */
  | { readonly system: 'ISO 898-1'; readonly name: IsoBoltClass }
  /** Nuts of steel: `8`, `10`; `04` and `05` are thin nuts, which strip before the bolt breaks. */
  | { readonly system: 'ISO 898-2'; readonly name: NutClass }
  /** Stainless bolts and nuts: `A2-70`; `steel` is A2, `name` is 70. */
  | { readonly system: 'ISO 3506'; readonly steel: StainlessSteel; readonly name: StainlessClass }
  /** Inch bolts of steel: grade 5. */
  | { readonly system: 'SAE J429'; readonly name: SaeGrade };

/**
 * Nut classes of ISO 898-2 and the strongest bolt class each may be paired with (its table of combinations); none for thin
 * nuts, which are made to lock and not to carry the whole load.
 */
const nutMatches = {
  '04': undefined,
  '05': undefined,
  '5': '5.8',
  '6': '6.8',
  '8': '8.8',
  '9': '9.8',
  '10': '10.9',
  '12': '12.9',
} satisfies Record<string, IsoBoltClass | undefined>;

export type NutClass = keyof typeof nutMatches;

/**
 * Reads a class as it is marked: `8.8`, `10`, `04`, `A2-70`, `A4-80`, `grade 5`, `SAE J429 grade 8`, `Gr. 5`. A whole number
 * alone is a nut class of ISO 898-2. Undefined for anything else: a class that no table here has is not guessed at.
 */
export function readPropertyClass(text: string): PropertyClass | undefined {
  const written = text.trim();
  if (isKeyOf(isoSteelClasses, written)) return { system: 'ISO 898-1', name: written };
  if (isKeyOf(nutMatches, written)) return { system: 'ISO 898-2', name: written };
  const grade = /^(?:SAE\s*(?:J\s*429)?\s*)?(?:grade|gr\.?)\s*(\d(?:\.\d)?)$/i.exec(written)?.[1] ?? '';
  return isKeyOf(saeGrades, grade) ? { system: 'SAE J429', name: grade } : readStainless(written);
}

function readStainless(written: string): PropertyClass | undefined {
  const [, letters = '', name = ''] = /^(A\d)\s*[-–]?\s*(\d\d)$/i.exec(written) ?? [];
  const steel = stainlessSteels.find((one) => one === letters.toUpperCase());
  return steel !== undefined && isKeyOf(stainlessClasses, name) ? { system: 'ISO 3506', steel, name } : undefined;
}

function isKeyOf<Table extends object>(table: Table, text: string): text is keyof Table & string {
  return Object.hasOwn(table, text);
}

/** A class as it is written: `8.8`, `A2-70`, `grade 5`. */
export function formatPropertyClass(one: PropertyClass): string {
  if (one.system === 'ISO 3506') return `${one.steel}-${one.name}`;
  return one.system === 'SAE J429' ? `grade ${one.name}` : one.name;
}

/**
 * The bolt class that a nut class may be paired with at most: `8` gives `8.8` (ISO 898-2). Undefined for thin nuts and for what
 * is no nut class.
 */
export function matchingBoltClass(nut: PropertyClass): PropertyClass | undefined {
  const name = nut.system === 'ISO 898-2' ? nutMatches[nut.name] : undefined;
  return name === undefined ? undefined : { system: 'ISO 898-1', name };
}

/**
 * Strength of a class for a nominal diameter in mm. A nut counts as strong as the strongest bolt that it may be paired with.
 * Undefined where the tables have nothing for the class or the diameter.
 */
export function strengthOf(one: PropertyClass, diameter: number): Strength | undefined {
  switch (one.system) {
    case 'ISO 898-1':
      return rowFor(isoSteelClasses[one.name], diameter, 'ISO 898-1');
    case 'ISO 898-2': {
      const bolt = matchingBoltClass(one);
      return bolt && strengthOf(bolt, diameter);
    }
    case 'ISO 3506':
      return rowFor(stainlessClasses[one.name], diameter, 'ISO 3506-1');
    case 'SAE J429':
      return rowFor(saeGrades[one.name], diameter, 'SAE J429');
  }
}

function rowFor(rows: readonly ClassFacts[], diameter: number, standard: string): Strength | undefined {
  const row = rows.find(({ above, upTo }) => diameter > above && diameter <= upTo);
  if (row === undefined) return undefined;
  const { tensile, yield: yieldStress, proof, hardness } = row;
  const proofFrom = proof === undefined ? 'yield' : 'standard';
  return { tensile, yield: yieldStress, proof: proof ?? yieldStress, proofFrom, hardness, standard };
}

/** Whether a nut may be put on a bolt (ISO 898-2): its class is that of the bolt or higher. Undefined where a class is no such pair. */
export function nutIsStrongEnough(nut: PropertyClass, bolt: PropertyClass): boolean | undefined {
  const match = matchingBoltClass(nut);
  if (match === undefined || bolt.system !== 'ISO 898-1') return undefined;
  return Number.parseInt(match.name, 10) >= Number.parseInt(bolt.name, 10);
}
