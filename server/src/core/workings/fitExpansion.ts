import type { Part } from '../model/generated/types';
import { expansionOf } from '../standards/thermalExpansionTable';

/** A coefficient of linear expansion of a part. */
export interface Expansion {
  readonly perKelvin: number;
  /** As shown: `22.9 · 10⁻⁶/K`. */
  readonly text: string;
  /** The table that it is taken from, where the family states the material alone. */
  readonly assumedFrom: string | undefined;
}

/** Below and above, in 10⁻⁶/K, no metal lies: what is stated there was meant in another unit. From memory. */
const least = 0.5;
const greatest = 60;

/** As the family states it, else by its material where a published table names it. */
export function expansionOfPart(part: Part): Expansion | undefined {
  if (part.expansion !== undefined) return stated(part.expansion.text);
  const known = part.material === undefined ? undefined : expansionOf(part.material.text);
  return known && made(known.perMillion, `${known.source} (${known.material})`);
}

function stated(text: string): Expansion | undefined {
  const number = /^\s*(\d+(?:\.\d+)?)\s*$/.exec(text)?.[1];
  const perMillion = Number(number);
  return number !== undefined && perMillion >= least && perMillion <= greatest
    ? made(perMillion, undefined)
    : undefined;
}

function made(perMillion: number, assumedFrom: string | undefined): Expansion {
  return { perKelvin: perMillion * 1e-6, text: `${perMillion} · 10⁻⁶/K`, assumedFrom };
}
