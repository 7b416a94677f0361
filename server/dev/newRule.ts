import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';

/** Writes a new rule, its test and its line in the group: `npm run new-rule quantities torque-unit-missing`. */
const GROUPS = ['form', 'quantities', 'threads', 'tools', 'kit', 'family', 'walk', 'limits', 'control'];

const RULE = `import { defineRule } from '../defineRule';
import { inStep } from '../examples';

export const NAME = defineRule({
  id: 'ID',
  group: 'GROUP',
  since: 'VERSION',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'What is reported, in a sentence.',
    why: 'What it leads to at the bench.',
    wrong: inStep('- install: cover'),
    right: inStep('- remove: cover'),
  },
  messages: {
    found: (name: string) => \`The \${name} is …; do …\`,
  },
  check: {
    instruction({ instruction }, ctx) {
      if (instruction.verb === 'install') ctx.report(instruction.verbKey, 'found', ['cover']);
    },
  },
});
`;

const TEST = `import { expect, test } from 'vitest';
import { inStep } from '../../../server/src/core/rules/examples';
import { reported } from '../../support/checkText';

test('what is underlined and what is said', async () => {
  expect(await reported(inStep('- install: cover'), 'ID')).toEqual([]);
});
`;

function main(): void {
  const [group = '', id = ''] = process.argv.slice(2);
  if (!GROUPS.includes(group) || !/^[a-z]+(-[a-z]+)+$/.test(id)) {
    console.error(`Say a group (${GROUPS.join(', ')}) and an id such as torque-unit-missing`);
    process.exitCode = 2;
    return;
  }
  const name = id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
  const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
  const filled = (text: string): string =>
    text.replaceAll('NAME', name).replaceAll('ID', id).replaceAll('GROUP', group).replaceAll('VERSION', version);
  writeNew(`server/src/core/rules/${group}/${name}.ts`, filled(RULE));
  writeNew(`tests/rules/${group}/${name}.test.ts`, filled(TEST));
  console.log(
    `Now add ${name} to server/src/core/rules/${group}/index.ts and fill in the rule; its test fails until you do`,
  );
}

function writeNew(path: string, text: string): void {
  if (existsSync(path)) throw new Error(`${path} is there already`);
  mkdirSync(path.slice(0, path.lastIndexOf('/')), { recursive: true });
  writeFileSync(path, text);
  console.log(`wrote ${path}`);
}

main();
