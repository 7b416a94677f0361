import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { inStep, withFamily } from '../../server/src/core/rules/examples';
import { torqueWorkingsOfInstruction, torqueWorkingsOfPart } from '../../server/src/core/workings/torqueWorking';
import type { Working } from '../../server/src/core/workings/working';
import { openFiles } from '../support/memoryFiles';
import { familyOf } from './sampleTorques';

const HEAD =
  'witnessmark: 1\nfamily: pellow-k1\nname: Pellow K1\nvariants:\n  k1-a: { name: K1-A }\n  k1-b: { name: K1-B }\nbase: core\nparts:\n  core: { name: core }\n';

async function workings(keys: string): Promise<readonly Working[]> {
  const family = await familyOf(`${HEAD}  lid-bolt: { name: lid bolt, kind: bolt, sits-on: core, ${keys} }\n`);
  return torqueWorkingsOfPart(family, 'lid-bolt');
}

function rows(working: Working | undefined): Record<string, string> {
  return Object.fromEntries(working?.rows.map(({ label, text }) => [label, text]) ?? []);
}

test('a torque is shown in every unit, with joint, band, utilisation, preload, steps and sources', async () => {
  const [working, ...more] = await workings('thread: M8×1.25, hand: right, property-class: 8.8, torque: 20 ± 2 N·m');
  expect(more).toEqual([]);
  expect(working).toMatchObject({ title: 'Torque of the lid bolt', builds: '', missing: [] });
  expect(rows(working)).toEqual({
    stated: '20 ± 2 N·m',
    'in other units': '177 lbf·in, 14.8 lbf·ft, 200 kgf·cm',
    thread: 'M8×1.25, right-hand',
    parts: 'lid bolt: external thread of class 8.8',
    friction: 'not stated; assumed 0.1 lubricated, 0.14 as delivered, 0.2 dry',
    'bearing face': 'Ø9.0 to Ø11.6 mm, assumed from ISO 4014, ISO 4032 and ISO 273 medium',
    'weakest part': 'bolt of class 8.8',
    'usual band': '6.5 N·m (57 lbf·in) to 30 N·m (22 lbf·ft)',
    'proof load reached at':
      '44 N·m (32 lbf·ft): the preload is above the proof load of class 8.8 even with dry threads',
    'the torque is': 'within the band',
    preload: '13.3 to 17.7 kN',
    'yield stress used': '66 to 83 %',
    'proof load used': '63 to 83 %',
  });
  expect(working?.steps.map(({ symbol }) => symbol).slice(0, 3)).toEqual(['d', 'P', 'A_s']);
  expect(working?.steps.find(({ symbol }) => symbol === 'M_high')?.value).toBeCloseTo(30, 0);
  expect(working?.sources).toEqual([
    'ISO 965-1, ISO 68-1',
    'ISO 898-1',
    'ISO 4014, ISO 4032 and ISO 273 medium',
    'VDI 2230 (torque, preload, utilisation)',
  ]);
});

test('one working for each build on which something differs', async () => {
  const found = await workings(
    'thread: M8, property-class: { k1-a: 8.8, k1-b: 10.9 }, torque: { k1-a: 20 N·m, k1-b: 30 N·m }',
  );
  expect(found.map((one) => `${one.builds}: ${rows(one).stated}, ${rows(one)['weakest part']}`)).toEqual([
    'K1-A: 20 N·m, bolt of class 8.8',
    'K1-B: 30 N·m, bolt of class 10.9',
  ]);
});

test('a hand that differs is told in one working', async () => {
  const found = await workings('thread: M8, hand: { k1-a: right, k1-b: left }, property-class: 8.8, torque: 20 N·m');
  expect(found.map((one) => rows(one).thread)).toEqual(['M8, right-hand on K1-A; left-hand on K1-B']);
});

test('without a thread nothing is reckoned, and what is missing is named', async () => {
  const [working] = await workings('torque: 20 ± 2 N·m');
  expect(working?.steps).toEqual([]);
  expect(working?.sources).toEqual([]);
  expect(working?.missing).toEqual(['the thread of the lid bolt', 'the property class of the lid bolt']);
  expect(Object.keys(rows(working))).toEqual(['stated', 'in other units', 'parts', 'friction']);
});

test('stated friction leaves one preload, and a prevailing torque is named', async () => {
  const [working] = await workings(
    'thread: M8, property-class: 8.8, friction: 12 %, prevailing-torque: 2 N·m, torque: 20 N·m',
  );
  expect(rows(working)).toMatchObject({
    friction: '0.12 as stated, in the thread and under the face',
    preload: '15.2 kN',
    'prevailing torque': '2 N·m, to be added',
  });
});

test('an angle after the torque is shown with what the thread moves on', async () => {
  const [working] = await workings('thread: M8×1, property-class: 10.9, torque: 14 ± 1 N·m, angle: 60 ± 5°');
  expect(rows(working)['then turned by']).toBe('60° ± 5°, which moves the thread on by 0.167 mm (P·angle/360°)');
});

const NUT =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, property-class: 8, torque: 4.6 ± 0.3 N·m }';

async function ofStep(step: string): Promise<readonly Working[]> {
  const { files, at } = withFamily(inStep(step), NUT);
  const { workspace, document } = await openFiles(files, at);
  const procedure = ProcedureView.of(workspace.snapshot, document);
  const view = procedure?.steps[0]?.instructions[0];
  if (procedure === undefined || view === undefined) throw new Error('no instruction');
  return torqueWorkingsOfInstruction(procedure, view);
}

test('an instruction shows its own torque, else that of the family, and its passes', async () => {
  expect(rows((await ofStep('- tighten: cap-nut'))[0]).stated).toBe('4.6 ± 0.3 N·m');
  const [passes] = await ofStep('- tighten: cap-nut\n  passes: [2 N·m, 4.6 ± 0.3 N·m]');
  expect(rows(passes)).toMatchObject({ stated: '4.6 ± 0.3 N·m', 'in passes': '2 N·m, then 4.6 ± 0.3 N·m' });
  expect(await ofStep('- tighten: cap-nut\n  angle: 30°')).toEqual([]);
  expect(await ofStep('- tighten: no-such\n  torque: 3 N·m')).toEqual([]);
});
