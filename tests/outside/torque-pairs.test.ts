import { expect, test } from 'vitest';
import { inStep } from '../../server/src/core/rules/examples';
import { reported } from '../support/checkText';

/**
 * Pairs of lb-ft and N·m as printed in table F-1, "Torque limits", of appendix F of a United States Army technical
 * manual (public domain). The manual rounds to whole newton metres.
 */
const GOOD: readonly (readonly [number, number])[] = [
  [6, 8],
  [10, 14],
  [15, 20],
  [26, 35],
  [37, 50],
  [43, 58],
  [60, 81],
  [65, 88],
  [90, 122],
  [130, 176],
  [185, 251],
  [440, 597],
];

/** Two pairs of the same table that are misprinted: by exact factor they are 28 and 407 N·m. */
const MISPRINTED: readonly (readonly [number, number, number])[] = [
  [21, 29, 28],
  [300, 408, 407],
];

function findings(footPounds: number, newtonMetres: number): Promise<string[]> {
  const step = `- tighten: cap-nut\n  torque: ${footPounds} lbf·ft (${newtonMetres} N·m)`;
  return reported(inStep(step), 'dual-values-disagree');
}

test.each(GOOD)('%d lbf·ft and %d N·m agree', async (footPounds, newtonMetres) => {
  expect(await findings(footPounds, newtonMetres)).toEqual([]);
});

test.each(MISPRINTED)('%d lbf·ft is not %d N·m but %d N·m', async (footPounds, printed, right) => {
  const [message, ...more] = await findings(footPounds, printed);
  expect(more).toEqual([]);
  expect(message).toContain(`${printed} N·m in brackets is not ${footPounds} lbf·ft, which is ${right} N·m`);
});
