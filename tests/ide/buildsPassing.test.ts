import { describe, expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { buildsPassing, failingBuilds } from '../../server/src/core/ide/buildsPassing';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { EXAMPLE_HEAD } from '../../server/src/core/rules/exampleDocuments';
import { type Example, inProcedure, inStep, withFamily } from '../../server/src/core/rules/examples';
import { TODAY } from '../support/checkText';
import { openFiles } from '../support/memoryFiles';

const COVERS = 'covers: { variants: [k1-a, k1-b], options: [big-wheel] }\n';

/** Steps of a procedure for K1-A, K1-A with the big wheel and K1-B: keys of each step below its id. */
function withSteps(...steps: string[]): Example {
  const written = steps.map(
    (keys, i) => `      - step: step-${i}\n        title: Step ${i}\n${keys.replaceAll(/^/gm, '        ')}\n`,
  );
  return inProcedure('', `${EXAMPLE_HEAD}${COVERS}phases:\n  - phase: Work\n    steps:\n${written.join('')}`);
}

async function countedIn(example: Example): Promise<{ passing: string; failing: string[] }> {
  const { workspace, document } = await openFiles(example.files, example.at);
  const procedure = ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new Error('no procedure');
  const { findings } = checkDocument(workspace.snapshot, document, { today: TODAY });
  const counted = buildsPassing(procedure, findings);
  return {
    passing: counted === undefined ? 'unknown' : `${counted.passing} of ${counted.count}`,
    failing: failingBuilds(procedure, findings, 9).map(({ id, error }) => `${id}: ${error.about}`),
  };
}

const WRONG = 'do:\n  - say: Take <no-such-part> off.';
const NOTHING = 'do:\n  - say: Look at the unit.';

describe('the builds that pass', () => {
  test('are all of them where there is no error', async () => {
    expect(await countedIn(withSteps(NOTHING))).toEqual({ passing: '3 of 3', failing: [] });
  });

  test('are none where an error holds for every build', async () => {
    const { passing, failing } = await countedIn(withSteps(WRONG));
    expect(passing).toBe('0 of 3');
    expect(failing).toEqual(['k1-a', 'k1-b', 'k1-a,big-wheel'].map((id) => `${id}: no-such-part`));
  });

  test('are those that do without the step of the error', async () => {
    expect(await countedIn(withSteps(NOTHING, `when: k1-b\n${WRONG}`))).toEqual({
      passing: '2 of 3',
      failing: ['k1-b: no-such-part'],
    });
  });

  test('are those for which no instruction is wrong, each with its own first error', async () => {
    const narrowed = `do:\n  - say: Take <other-part> off.\n    when: big-wheel`;
    const { passing, failing } = await countedIn(withSteps(narrowed, `when: k1-b\n${WRONG}`));
    expect(passing).toBe('1 of 3');
    expect(failing).toEqual(['k1-b: no-such-part', 'k1-a,big-wheel: other-part']);
  });

  test('are not known where the family cannot be read', async () => {
    const example = inStep('- say: Look at the unit.');
    const files = Object.fromEntries(Object.entries(example.files).filter(([path]) => !path.includes('family')));
    expect(await countedIn({ ...example, files })).toEqual({ passing: 'unknown', failing: [] });
  });

  test('are counted among more builds than anybody could list', async () => {
    const names = Array.from({ length: 40 }, (_, i) => `option-${i}`);
    const options = names.map((name) => `  ${name}: { name: ${name} }\n`).join('');
    const example = withFamily(
      withSteps(`when: option-7\n${WRONG}`),
      `options:\n  big-wheel: { name: big wheel }\n${options}`,
    );
    const text = (example.files[example.at] ?? '').replace('[big-wheel]', `[${names.join(', ')}]`);
    const { passing } = await countedIn({ ...example, files: { ...example.files, [example.at]: text } });
    expect(passing).toBe(`${2 ** 40} of ${2 ** 41}`);
  });
});
