import { describe, expect, test } from 'vitest';
import { documentValue } from '../../server/src/core/analysis/documentUnit';
import type { Tool } from '../../server/src/core/model/generated/types';
import { deviationAt, reachOf, torqueRange } from '../../server/src/core/workings/toolTorque';
import { openFiles } from '../support/memoryFiles';

async function wrench(keys: string): Promise<Tool> {
  const text = `witnessmark: 1\nstores: Bay\ntools:\n  wrench: { name: wrench, kind: torque-wrench, ${keys} }\n`;
  const { document } = await openFiles({ 'bay.stores.yaml': text }, 'bay.stores.yaml');
  const tool = documentValue(document, 'stores')?.tools?.[0]?.value;
  if (tool === undefined) throw new Error('The stores hold no tool');
  return tool;
}

describe('the reach of a torque tool', () => {
  test.each([
    ['range: 10..50 N·m', 10, 'within'],
    ['range: 10..50 N·m', 50, 'within'],
    ['range: 10..50 N·m', 9.99, 'below'],
    ['range: 10..50 N·m', 50.01, 'above'],
    ['range: 5..50 N·m', 6, 'within'],
    ['range: 0..50 N·m', 10, 'within'],
    ['range: 0..50 N·m', 9.9, 'unmarked'],
    ['range: 20..100 lbf·in', 2.3, 'within'],
    ['range: 50 N·m', 20, 'unknown'],
    ['square: 10 mm', 20, 'unknown'],
  ] as const)('%s at %d N·m', async (keys, torque, reach) => {
    expect(reachOf(await wrench(keys), torque)).toBe(reach);
  });

  test('is in newton metres', async () => {
    const range = torqueRange(await wrench('range: 20..100 lbf·in'));
    expect(range?.lowest).toBeCloseTo(2.2597, 4);
    expect(range?.highest).toBeCloseTo(11.2985, 4);
  });
});

describe('the deviation', () => {
  test.each([
    ['accuracy: 4 %', { amount: 0.2, percent: 4, from: 'stores' }],
    ['accuracy: ± 4 %', undefined],
    ['accuracy: 0.25 N·m', { amount: 0.25, percent: 5, from: 'stores' }],
    ['accuracy: ≤ 4 %', { amount: 0.2, percent: 4, from: 'stores' }],
    ['range: 2..10 N·m, torque-type: II A', { amount: 0.3, percent: 6, from: 'ISO 6789' }],
    ['range: 4..20 N·m, torque-type: II A', { amount: 0.2, percent: 4, from: 'ISO 6789' }],
    ['torque-type: II A', undefined],
    ['range: 4..20 N·m, torque-type: III A', undefined],
    ['range: 4..20 N·m', undefined],
  ] as const)('of %s at 5 N·m', async (keys, deviation) => {
    expect(deviationAt(await wrench(keys), 5)).toEqual(deviation);
  });
});
