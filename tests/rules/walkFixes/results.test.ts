import { describe, expect, test } from 'vitest';
import { inStep, withFamily } from '../../../server/src/core/rules/examples';
import { mended, offered } from './mended';

const VOID = 'limits:\n  end-play: { name: end play, accept: 0.04..0.09 mm, void-by: [cap-nut] }';
const TURN = '- remove: [cover-screw, cover]\n- loosen: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10';
const MEASURE = '- measure: end-play\n  with: dial-gauge\n  if-not: { reject: true }';

describe('a measurement that later work made worthless', () => {
  test('is made again behind that, as it is written', async () => {
    const example = withFamily(inStep(`${MEASURE}\n${TURN}\n- say: Look.`), VOID);
    expect(await mended(example, 'result-void', 'Measure the end play again')).toBe(
      `${MEASURE}\n${TURN}\n${MEASURE}\n- say: Look.`,
    );
  });

  test('or moves there', async () => {
    const example = withFamily(inStep(`${MEASURE}\n${TURN}\n- say: Look.`), VOID);
    expect(await mended(example, 'result-void', 'Move "measure: end-play" behind what makes it void')).toBe(
      `${TURN}\n${MEASURE}\n- say: Look.`,
    );
  });

  test('is not copied where it leads another way', async () => {
    const steps = `${MEASURE.replace('{ reject: true }', '{ do: [ { say: Ask the office. } ], reject: true }')}\n${TURN}`;
    expect(await offered(withFamily(inStep(steps), VOID), 'result-void')).not.toContain('Measure the end play again');
  });
});

describe('a check that is missing', () => {
  const after = 'checks:\n  free-turn: { say: The wheel turns freely., after: [cap-nut] }';

  test('is made behind the last touch of what it comes after', async () => {
    const example = withFamily(inStep(`${TURN}\n- say: Look.`), after);
    expect(await mended(example, 'check-missing', 'Make the check free-turn')).toBe(
      `${TURN}\n- check: free-turn\n- say: Look.`,
    );
  });

  test('is made again where it came too early', async () => {
    const example = withFamily(inStep(`- check: free-turn\n${TURN}`), after);
    expect(await mended(example, 'check-missing', 'Make the check free-turn again')).toBe(
      `- check: free-turn\n${TURN}\n- check: free-turn`,
    );
  });

  test('is made at the end where it comes after nothing', async () => {
    expect(await mended(inStep('- say: Look.\n- say: Go.'), 'check-missing')).toBe(
      '- say: Look.\n- say: Go.\n- check: free-turn',
    );
  });
});

test('a group with a new member is balanced, after its threadlocker has cured', async () => {
  const rotor =
    'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], renew: always }\nbalance-groups:\n  rotor: { name: rotor, members: [wheel, core], permissible: 0.2 g·mm }';
  const steps =
    '- remove: [cover-screw, cover, cap-nut]\n- remove: wheel\n- install: wheel\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut\n- tighten: cap-nut\n  with: torque-wrench-10';
  expect(await mended(withFamily(inStep(steps), rotor), 'balance-missing', 'Balance the rotor')).toBe(
    `${steps}\n- wait: cure\n- balance: rotor`,
  );
});
