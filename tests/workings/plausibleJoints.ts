import { findUnit, parseQuantity, type Quantity, type Unit } from '../../server/src/core/quantity';
import { faceForThread } from '../../server/src/core/standards/bearingFaces';
import { metricPitches } from '../../server/src/core/standards/metricThreads';
import { readPropertyClass, strengthOf } from '../../server/src/core/standards/propertyClasses';
import type { ThreadSize } from '../../server/src/core/standards/threadGeometry';
import type { Joint, JointPart } from '../../server/src/core/standards/torqueBand';
import { unifiedThread } from '../../server/src/core/standards/unifiedThreads';

/** Numbers from 0 to 1 that are the same for a seed (mulberry32, public domain). */
export function randomFrom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

export function torqueUnit(symbol: string): Unit {
  const found = findUnit('torque', symbol);
  if (found === undefined) throw new Error(`no unit ${symbol}`);
  return found;
}

/** A joint with a torque as a careful writer states it. */
export interface PlausibleJoint {
  readonly joint: Joint;
  readonly written: string;
  readonly unit: Unit;
}

const metricSizes = [3, 4, 5, 6, 8, 10, 12, 14, 16];
const inchSizes = ['#8', '#10', '1/4', '5/16', '3/8', '7/16', '1/2', '9/16', '5/8'];
const steel = ['4.8', '5.6', '5.8', '6.8', '8.8', '8.8', '8.8', '10.9', '10.9', '12.9', 'A2-50', 'A2-70', 'A4-80'];
const grades = ['grade 2', 'grade 5', 'grade 5', 'grade 8', '8.8', '10.9'];
const nuts: Readonly<Record<string, string>> = { '8.8': '8', '10.9': '10', '12.9': '12' };

export type Known = 'bolt' | 'bolt-and-nut' | 'nothing';

/**
 * Draws a joint and a torque the way published tables and text books come to one: T = K·F·d with K from 0.12 (lubricated) to
 * 0.20 (dry), F from 50 % to 80 % of the proof load, and another 15 % up or down, since published tables for one joint differ
 * by that much (common practice; the sources that the torque tests name). It does not use the formulas that are tested.
 * @param lightly the share of the usual torque that is meant
 */
export function plausibleJoint(random: () => number, known: Known, lightly = 1): PlausibleJoint {
  const pick = <Value>(values: readonly Value[]): Value => values[Math.floor(random() * values.length)] as Value;
  const between = (from: number, to: number): number => from + random() * (to - from);
  for (;;) {
    const inch = random() < 0.35;
    const thread = inch ? unifiedThread(pick(inchSizes), pick(['UNC', 'UNF'])) : metric(pick(metricSizes), random());
    const name = pick(inch ? grades : steel);
    const propertyClass = readPropertyClass(name);
    const strength = thread && propertyClass && strengthOf(propertyClass, thread.diameter);
    if (thread === undefined || propertyClass === undefined || strength === undefined) continue;
    const preload = between(0.5, 0.8) * strength.proof * tensileArea(thread);
    const usual = (between(0.12, 0.2) * preload * thread.diameter * between(0.85, 1.15)) / 1000;
    const torque = lightly * usual;
    const bolt: JointPart = { role: 'bolt', propertyClass };
    const nut = readPropertyClass(nuts[name] ?? '');
    const parts: JointPart[] = known === 'nothing' ? [] : [bolt];
    if (known === 'bolt-and-nut' && nut !== undefined) parts.push({ role: 'nut', propertyClass: nut });
    const joint: Joint = { thread, face: faceForThread(thread), parts, friction: { kind: 'unknown' } };
    const unit = torqueUnit(pick(unitsFor(torque, inch)));
    return { joint, written: rounded(torque / unit.factor), unit };
  }
}

function metric(diameter: number, random: number): ThreadSize {
  const pitches = metricPitches(diameter);
  // Fine threads are the rarer ones.
  const pitch = pitches[random < 0.7 ? 0 : Math.floor(((random - 0.7) / 0.3) * pitches.length)] ?? 1;
  return { system: 'metric', diameter, pitch };
}

function tensileArea({ system, diameter, pitch }: ThreadSize): number {
  return (Math.PI / 4) * (diameter - (system === 'metric' ? 0.9382 : 0.9743) * pitch) ** 2;
}

function unitsFor(torque: number, inch: boolean): readonly string[] {
  const pounds = torque < 25 ? 'lbf·in' : 'lbf·ft';
  return inch ? [pounds, pounds, 'N·m'] : ['N·m', 'N·m', 'N·m', pounds, 'kgf·cm'];
}

/** As a writer states it: two digits, three from a hundred on. */
function rounded(value: number): string {
  return String(Number(value.toPrecision(value >= 100 ? 3 : 2)));
}

export function quantityOf(written: string, unit: Unit): Quantity {
  const { quantity } = parseQuantity(`${written} ${unit.symbol}`, 'torque');
  if (quantity === undefined) throw new Error(`${written} ${unit.symbol} cannot be read`);
  return quantity;
}
