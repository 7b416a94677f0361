import { describe, expect, test } from 'vitest';
import { faceForThread, hexagonFace, usualFace } from '../../server/src/core/standards/bearingFaces';
import { metricThread } from '../../server/src/core/standards/metricThreads';
import { readPropertyClass, type Strength, strengthOf } from '../../server/src/core/standards/propertyClasses';
import { stressArea, type ThreadSize } from '../../server/src/core/standards/threadGeometry';
import { type Joint, placeInBand, torqueBand, weakestPart } from '../../server/src/core/standards/torqueBand';
import {
  nutFactorOf,
  preloadAtUtilisation,
  preloadForTorque,
  shortFormPreload,
  shortFormTorque,
  type Tightening,
  torqueAtUtilisation,
  torqueForPreload,
  torqueReaching,
  utilisationAt,
} from '../../server/src/core/standards/torqueTension';

function metric(diameter: number, pitch?: number): ThreadSize {
  const thread = metricThread(diameter, pitch);
  if (thread === undefined) throw new Error(`no M${diameter}`);
  return thread;
}

function strength(name: string, diameter: number): Strength {
  const found = readPropertyClass(name);
  const result = found && strengthOf(found, diameter);
  if (result === undefined) throw new Error(`no ${name}`);
  return result;
}

function joint(thread: ThreadSize, bolt: string | undefined, nut?: string): Joint {
  const parts = [
    ['bolt', bolt],
    ['nut', nut],
  ].flatMap(([role, name]) => {
    const propertyClass = name === undefined ? undefined : readPropertyClass(name);
    return propertyClass === undefined ? [] : [{ role: role as 'bolt' | 'nut', propertyClass }];
  });
  return { thread, face: faceForThread(thread), parts, friction: { kind: 'unknown' } };
}

function band(of: Joint) {
  const found = torqueBand(of);
  if (found === undefined) throw new Error('no band');
  return found;
}

const m8 = metric(8);
const tightening: Tightening = { thread: m8, face: faceForThread(m8), threadFriction: 0.12, faceFriction: 0.12 };

describe('torque and preload', () => {
  test('lead back to each other', () => {
    const torque = torqueForPreload(18000, tightening);
    expect(preloadForTorque(torque.value, tightening).value).toBeCloseTo(18000, 6);
    const short = shortFormTorque(0.2, 18000, 8);
    expect(shortFormPreload(0.2, short.value, 8).value).toBeCloseTo(18000, 6);
  });

  test('the nut factor makes the short form give what the long form gives', () => {
    const long = torqueForPreload(18000, tightening);
    expect(shortFormTorque(nutFactorOf(tightening), 18000, 8).value).toBeCloseTo(long.value, 9);
  });

  test('without friction only the pitch is left: one turn lifts by it', () => {
    const smooth = { ...tightening, threadFriction: 0, faceFriction: 0 };
    // Work of one turn 2π·M = F·P; the standard rounds 1/(2π) to 0.16, which is half a per cent more.
    const exact = (18000 * 1.25) / (2 * Math.PI) / 1000;
    expect(torqueForPreload(18000, smooth).value / exact).toBeCloseTo(1.005, 3);
  });

  test('a torque worked out for a share of the yield stress uses the bolt to that share', () => {
    const { value } = torqueAtUtilisation(strength('8.8', 8), 0.9, tightening);
    expect(utilisationAt(value, strength('8.8', 8), tightening).ofYield).toBeCloseTo(0.9, 9);
  });

  test('a torque that reaches proof uses the proof load up', () => {
    const { value } = torqueReaching('proof', strength('8.8', 8), tightening);
    expect(utilisationAt(value, strength('8.8', 8), tightening).ofProofLoad).toBeCloseTo(1, 9);
    expect(torqueReaching('tensile', strength('8.8', 8), tightening).value / value).toBeCloseTo(800 / 580, 9);
  });

  test('torsion takes some of the preload away, and more of it with more friction', () => {
    const whole = 0.9 * 640 * stressArea(m8);
    const smooth = preloadAtUtilisation(strength('8.8', 8), 0.9, { ...tightening, threadFriction: 0.08 }).value;
    const rough = preloadAtUtilisation(strength('8.8', 8), 0.9, { ...tightening, threadFriction: 0.2 }).value;
    expect(smooth).toBeLessThan(whole);
    expect(rough).toBeLessThan(smooth);
  });
});

describe('the working', () => {
  test('ends with the value, and holds every symbol of its formulas once', () => {
    const result = torqueAtUtilisation(strength('8.8', 8), 0.9, tightening);
    expect(result.steps.at(-1)).toMatchObject({ symbol: 'M_A', value: result.value, unit: 'N·m' });
    const symbols = result.steps.map(({ symbol }) => symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
    for (const needed of ['d', 'P', 'A_s', 'R_p0.2', 'ν', 'd2', 'd_s', 'µ_G', 'µ_K', 'D_Km', 'F']) {
      expect(symbols).toContain(needed);
    }
  });

  test('the formulas give the values from the steps alone', () => {
    const { steps } = torqueAtUtilisation(strength('8.8', 8), 0.9, tightening);
    const of = (symbol: string) => steps.find((one) => one.symbol === symbol)?.value ?? Number.NaN;
    const lever = 0.16 * of('P') + 0.58 * of('d2') * of('µ_G') + (of('D_Km') / 2) * of('µ_K');
    expect((of('F') * lever) / 1000).toBeCloseTo(of('M_A'), 9);
    expect(Math.sqrt((4 * of('A_s')) / Math.PI)).toBeCloseTo(of('d_s'), 9);
  });

  test('stainless steel is reckoned with its yield stress, and says so', () => {
    const { steps } = torqueReaching('proof', strength('A2-70', 8), tightening);
    expect(steps.map(({ symbol }) => symbol)).toContain('R_p0.2');
    expect(steps.map(({ symbol }) => symbol)).not.toContain('S_p');
  });
});

describe('the band', () => {
  test('rises from low over high to proof, for every class and thread', () => {
    for (const name of ['4.6', '5.8', '8.8', '10.9', '12.9', 'A2-50', 'A2-70', 'A4-80']) {
      for (const diameter of [3, 4, 5, 6, 8, 10, 12, 14, 16]) {
        const { low, high, proof } = band(joint(metric(diameter), name));
        expect(low.torque).toBeLessThan(high.torque);
        expect(high.torque).toBeLessThan(proof.torque);
      }
    }
  });

  test('is that of the weakest part', () => {
    const strong = band(joint(m8, '10.9', '10'));
    const weakNut = band(joint(m8, '10.9', '8'));
    expect(weakNut.governedBy).toMatchObject({ role: 'nut' });
    expect(weakNut.high.torque).toBeLessThan(strong.high.torque);
    expect(weakNut.high.torque).toBeCloseTo(band(joint(m8, '8.8')).high.torque, 9);
    expect(weakestPart(joint(m8, '8.8', '10'))?.part.role).toBe('bolt');
  });

  test('without any class is as wide as all classes of the standard', () => {
    const { governedBy, low, high, proof } = band(joint(m8, undefined));
    expect(governedBy).toBe('unknown');
    expect(low.torque).toBeCloseTo(band(joint(m8, '4.6')).low.torque, 9);
    expect(high.torque).toBeCloseTo(band(joint(m8, '12.9')).high.torque, 9);
    expect(proof.torque).toBeCloseTo(band(joint(m8, '12.9')).proof.torque, 9);
  });

  test('where one strength is unknown there is none', () => {
    expect(torqueBand(joint(m8, '8.8', '04'))).toBeUndefined();
    expect(torqueBand(joint(metric(5), 'grade 5'))).toBeUndefined();
  });

  test('is narrower where the friction is stated', () => {
    const stated: Joint = { ...joint(m8, '8.8'), friction: { kind: 'stated', thread: 0.1, face: 0.1 } };
    const open = band(joint(m8, '8.8'));
    expect(band(stated).high.torque).toBeLessThan(open.high.torque);
    expect(band(stated).proof.torque).toBeLessThan(open.proof.torque);
    expect(band(stated).high.reason).toContain('at the stated friction');
  });

  test('each end says for which class and why, and shows its working', () => {
    const { low, high, proof } = band(joint(m8, '8.8'));
    for (const limit of [low, high, proof]) {
      expect(limit.forClass).toBe('8.8');
      expect(limit.reason).toContain('class 8.8');
      expect(limit.steps.at(-1)?.value).toBe(limit.torque);
    }
  });

  test.each([
    [0.5, 'below'],
    [24, 'within'],
    [33, 'above'],
    [60, 'above-proof'],
  ])('%s N·m on M8 8.8 is %s', (torque, place) => {
    expect(placeInBand(torque, band(joint(m8, '8.8')))).toBe(place);
  });
});

describe('bearing faces', () => {
  test('are known for the usual hexagons and reckoned for the rest', () => {
    expect(hexagonFace(8)).toMatchObject({ outer: 11.6, inner: 9 });
    expect(hexagonFace(9)).toBeUndefined();
    expect(faceForThread({ system: 'metric', diameter: 9 })).toEqual(usualFace(9));
    expect(faceForThread({ system: 'unified', diameter: 8 })).toEqual(usualFace(8));
  });
});
