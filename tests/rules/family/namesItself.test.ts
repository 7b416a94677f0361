import { expect, test } from 'vitest';
import { inFamily } from '../../../server/src/core/rules/examples';
import { checkExample, fixed, offered, reported } from '../../support/checkText';

const RULE = 'names-itself';
const parts = (...lines: string[]) => inFamily(`parts:\n  ${lines.join('\n  ')}`);

test('each relation says what it is, and nothing else is told of it', async () => {
  const example = parts(
    'liner: { name: liner, sits-on: liner, fastened-by: liner, behind: liner, seals: liner, instead-of: liner }',
  );
  const found = await reported(example, RULE);
  expect(found.map((one) => /said to (.*) itself/.exec(one)?.[1])).toEqual([
    'sit on',
    'be fastened by',
    'be behind',
    'seal',
    'take the place of',
  ]);
  const { findings } = await checkExample(example);
  expect(new Set(findings.map((one) => one.rule))).toEqual(new Set([RULE]));
});

test('the fix takes it out of a list, or the key away where nothing else is in it', async () => {
  const list = parts('liner: { name: liner, sits-on: core, behind: [cover, liner] }');
  expect(await offered(list, RULE)).toEqual(['Take liner out of behind']);
  expect((await fixed(list, RULE)).files[list.at]).toContain('sits-on: core, behind: [cover] }');
  const alone = parts('liner:', '  name: liner', '  sits-on: core', '  behind: [liner]');
  expect((await fixed(alone, RULE)).files[alone.at]).toContain('    sits-on: core\n');
  expect((await fixed(alone, RULE)).files[alone.at]).not.toContain('behind: [liner]');
});

test('an option that needs or excludes itself', async () => {
  const example = inFamily(
    'options:\n  big-wheel: { name: big wheel, variants: [k1-a], needs: [big-wheel], excludes: [big-wheel] }',
  );
  expect(await reported(example, RULE)).toEqual([
    'big-wheel: The option big wheel is said to need itself; name what is meant, or take it out',
    'big-wheel: The option big wheel is said to exclude itself; name what is meant, or take it out',
  ]);
});
