import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { ran } from '../support/captureTerminal';

/** The blocks of the readme that show a command and what it writes. */
const SHOWN = [...readFileSync('README.md', 'utf8').matchAll(/^```\n\$ witnessmark (.+)\n([\s\S]*?)^```$/gm)];

test('the readme shows what a check and an explanation write', () => {
  expect(SHOWN.map(([, command = '']) => command.split(' ')[0])).toEqual(expect.arrayContaining(['check', 'explain']));
});

test.each(SHOWN.map(([, command = '', output = '']) => [command, output] as const))(
  'witnessmark %s writes what the readme shows',
  async (command, output) => {
    expect((await ran(...command.split(' '), '--on', '2026-11-01')).out).toBe(output);
  },
);
