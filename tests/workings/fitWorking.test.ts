import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep, withFamily } from '../../server/src/core/rules/examples';
import { fitWorkingsOfInstruction } from '../../server/src/core/workings/fitJudgement';
import { fitWorkingsOf } from '../../server/src/core/workings/fitWorking';
import { openFiles } from '../support/memoryFiles';
import { familyWith, rowsOf } from './familyWith';

const hub = (keys: string, sizes = '  hub-bore: 20.000..20.010 mm\n  nose: 20.020..20.030 mm') =>
  `parts:\n  hub: { name: hub, sits-on: core, ${keys} }\ndimensions:\n${sizes}`;
const FIT = 'fit: { with: core, bore: hub-bore, shaft: nose, clearance: 0.005 mm }';

test('a fit that is heated shows the temperature that it needs', async () => {
  const family = await familyWith(hub(`before-fitting: [heat], expansion: 22.9, max-temperature: 150 °C, ${FIT}`));
  const [working, ...more] = fitWorkingsOf(family, 'hub');
  expect(more).toEqual([]);
  expect(working?.title).toBe('Fit of the hub and the core');
  expect(rowsOf(working)).toEqual([
    'bore: 20.000..20.010 mm',
    'shaft: 20.020..20.030 mm',
    'kind of fit: interference',
    'tightest: 0.03 mm interference',
    'loosest: 0.01 mm interference',
    'clearance wanted while it is fitted: 0.005 mm',
    'the hub needs at least: 97 °C',
    'stands at most: 150 °C',
    'assumed: the other part, and all lengths, at 20 °C',
  ]);
  expect(working?.steps.at(-1)?.value).toBeCloseTo(96.42, 2);
});

test('the expansion may come from the material, and a missing one is named', async () => {
  const known = await familyWith(hub(`before-fitting: [heat], material: EN AW-2024, ${FIT}`));
  expect(fitWorkingsOf(known, 'hub')[0]?.sources[0]).toContain('aluminium 2024');
  for (const keys of ['', 'material: aluminium, ', 'expansion: 0.0000229, ']) {
    const unknown = await familyWith(hub(`before-fitting: [heat], ${keys}${FIT}`));
    expect(fitWorkingsOf(unknown, 'hub')[0]?.missing).toEqual(['the expansion of the hub, in 10⁻⁶/K']);
  }
});

test('a fit that nobody heats shows the play alone', async () => {
  const [working] = fitWorkingsOf(await familyWith(hub(FIT)), 'hub');
  expect(rowsOf(working).at(-1)).toBe('clearance wanted while it is fitted: 0.005 mm');
  expect(working?.steps.map(({ symbol }) => symbol)).not.toContain('ΔT');
});

test('a dimension that is stated nowhere is named', async () => {
  const [working] = fitWorkingsOf(await familyWith(hub('fit: { with: core, bore: no-bore }')), 'hub');
  expect(working?.missing).toEqual(['a value of the dimension no-bore', 'the dimension of the shaft']);
  expect(fitWorkingsOf(await familyWith(hub('mass: 1 g')), 'hub')).toEqual([]);
});

test('the instruction that heats and the one that fits show the fit, warm enough or not', async () => {
  const steps = '- remove: hub\n- heat: hub\n  until: 120 ± 5 °C\n- install: hub';
  const example = withFamily(inStep(steps), hub(`expansion: 22.9, ${FIT}`));
  const { workspace, document } = await openFiles(example.files, EXAMPLE_PATHS.procedure);
  const procedure = ProcedureView.of(workspace.snapshot, document);
  if (procedure === undefined) throw new Error('The example cannot be read');
  const shown = (procedure.steps[0]?.instructions ?? []).map(({ instruction }) => {
    const [working] = fitWorkingsOfInstruction(procedure, instruction);
    return [instruction.verb, rowsOf(working).at(-1), rowsOf(working).includes('the hub needs at least: 97 °C')];
  });
  expect(shown).toEqual([
    ['remove', undefined, false],
    ['heat', 'heated to: 120 ± 5 °C', true],
    ['install', 'heated to: 120 ± 5 °C', true],
  ]);
});

test('one diameter and the interference are enough, and both ends of the interference come out', async () => {
  const one = (keys: string, size: string) => familyWith(hub(`before-fitting: [heat], expansion: 22.9, ${keys}`, size));
  for (const [keys, size] of [
    ['fit: { with: core, bore: hub-bore, interference: 0.010..0.030 mm }', '  hub-bore: 20.000..20.010 mm'],
    ['fit: { with: core, shaft: nose, interference: 0.010..0.030 mm }', '  nose: 20.020..20.030 mm'],
  ] as const) {
    const [working] = fitWorkingsOf(await one(keys, size), 'hub');
    expect(rowsOf(working)).toContain('tightest: 0.03 mm interference');
    expect(rowsOf(working)).toContain('loosest: 0.01 mm interference');
    // 0.03/(22.9e-6 · 20.000) = 65.5 K above 20 °C.
    expect(rowsOf(working)).toContain('the hub needs at least: 86 °C');
  }
});
