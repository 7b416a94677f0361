/** What a standard states of a class for diameters above one and up to another; mm and MPa. */
export interface ClassFacts {
  readonly above: number;
  readonly upTo: number;
  readonly tensile: number;
  readonly yield: number;
  readonly proof: number | undefined;
  /** Vickers hardness, HV. */
  readonly hardness: readonly [lowest: number, highest: number] | undefined;
}

type Row = readonly [
  tensile: number,
  yieldStress: number,
  proof: number | undefined,
  hardness?: readonly [number, number],
  above?: number,
  upTo?: number,
];

function facts([tensile, yieldStress, proof, hardness, above = 0, upTo = 39]: Row): ClassFacts {
  return { above, upTo, tensile, yield: yieldStress, proof, hardness };
}

/**
 * ISO 898-1:2013, table 3, as two publications print it: smallest tensile strength R_m, smallest R_eL, R_p0.2 or R_pf, proof
 * stress S_p, all in MPa, and Vickers hardness; for M1.6 to M39.
 */
export const isoSteelClasses = {
  '4.6': [facts([400, 240, 225, [120, 220]])],
  '4.8': [facts([420, 340, 310, [130, 220]])],
  '5.6': [facts([500, 300, 280, [155, 220]])],
  '5.8': [facts([520, 420, 380, [160, 220]])],
  '6.8': [facts([600, 480, 440, [190, 250]])],
  '8.8': [facts([800, 640, 580, [250, 320], 0, 16]), facts([830, 660, 600, [255, 335], 16, 39])],
  '9.8': [facts([900, 720, 650, [290, 360], 0, 16])],
  '10.9': [facts([1040, 940, 830, [320, 380]])],
  '12.9': [facts([1220, 1100, 970, [385, 435]])],
} satisfies Record<string, readonly ClassFacts[]>;

export type IsoBoltClass = keyof typeof isoSteelClasses;

/** Weakest and strongest class of ISO 898-1, between which any steel bolt with a class lies. */
export const weakestSteelClass: IsoBoltClass = '4.6';
export const strongestSteelClass: IsoBoltClass = '12.9';

/** Austenitic steels of ISO 3506-1 that the classes below are for. */
export const stainlessSteels = ['A1', 'A2', 'A3', 'A4', 'A5'] as const;

export type StainlessSteel = (typeof stainlessSteels)[number];

/**
 * ISO 3506-1: tensile strength and stress at 0.2 % strain in MPa, as three publications print them. The standard states no
 * proof stress for bolts and screws.
 */
export const stainlessClasses = {
  '50': [facts([500, 210, undefined])],
  '70': [facts([700, 450, undefined])],
  '80': [facts([800, 600, undefined])],
} satisfies Record<string, readonly ClassFacts[]>;

export type StainlessClass = keyof typeof stainlessClasses;

const MPA_PER_KSI = 6.894757293168361;

/** Stresses in thousands of psi, diameters in inches, as the standard prints them. */
function saeFacts(tensile: number, yieldStress: number, proof: number, above: number, upTo: number): ClassFacts {
  return {
    // A quarter of an inch itself is in the range that begins with it.
    above: above * 25.4 - (above === 0.25 ? 0.001 : 0),
    upTo: upTo * 25.4,
    tensile: tensile * MPA_PER_KSI,
    yield: yieldStress * MPA_PER_KSI,
    proof: proof * MPA_PER_KSI,
    hardness: undefined,
  };
}

/**
 * SAE J429: tensile strength, yield stress, proof stress in ksi, over and up to which diameter in inches, as two publications
 * print them (one of them a textbook of machine design). The standard begins at 1/4 in.
 */
export const saeGrades = {
  '1': [saeFacts(60, 36, 33, 0.25, 1.5)],
  '2': [saeFacts(74, 57, 55, 0.25, 0.75), saeFacts(60, 36, 33, 0.75, 1.5)],
  '5': [saeFacts(120, 92, 85, 0.25, 1), saeFacts(105, 81, 74, 1, 1.5)],
  '8': [saeFacts(150, 130, 120, 0.25, 1.5)],
} satisfies Record<string, readonly ClassFacts[]>;

export type SaeGrade = keyof typeof saeGrades;

/**
 * Proof loads of style 1 nuts with coarse thread in N, by nominal diameter in mm and class, as an extract of DIN EN 20898-2
 * (the former ISO 898-2) prints them.
 */
export const nutProofLoads: Readonly<Record<string, ReadonlyMap<number, number>>> = {
  '8': new Map([
    [5, 12140],
    [6, 17200],
    [8, 31800],
    [10, 50500],
    [12, 74200],
  ]),
  '10': new Map([
    [5, 14800],
    [6, 20900],
    [8, 38100],
    [10, 60300],
    [12, 88500],
  ]),
};

/** Proof load in N of a style 1 nut with coarse metric thread; undefined where the table has none. */
export function nutProofLoad(nutClass: string, diameter: number): number | undefined {
  return nutProofLoads[nutClass]?.get(diameter);
}
