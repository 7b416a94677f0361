import type fc from 'fast-check';
import { documentUnit } from '../../../server/src/core/analysis/documentUnit';
import { ProcedureView } from '../../../server/src/core/analysis/procedureView';
import { Workspace } from '../../../server/src/core/analysis/workspace';
import { unitsIn } from '../../../server/src/core/model/facts';
import { type Plan, plans } from './plan';
import { type Planned, type PlannedStep, planned, withIfNot, writeProcedure } from './planned';
import { BASE, Structure } from './structure';
import { type FamilyExtras, familyExtras, repairable, STORES, writeFamily } from './writeFamily';
import { benchWork, fateWork, fitWork, recorded, stripWork } from './writeWork';

/** A drawn family with a procedure that can be carried out, as texts and as what they were written from. */
export interface DrawnCase {
  readonly plan: Plan;
  readonly structure: Structure;
  readonly extras: FamilyExtras;
  readonly family: string;
  readonly head: string;
  readonly steps: readonly PlannedStep[];
}

export const drawnCases: fc.Arbitrary<DrawnCase> = plans.map(caseOf);

export function caseOf(plan: Plan): DrawnCase {
  const structure = new Structure(plan);
  const extras = familyExtras(structure);
  const family = writeFamily(structure, extras);
  return { plan, structure, extras, family, head: headOf(plan), steps: stepsOf(structure, extras) };
}

function headOf({ work, mayArrive, mayBeAdded }: Plan): string {
  return `witnessmark: 1
procedure: OP-1
title: Drawn work
revision: A
family: drawn.family.yaml
stores: drawn.stores.yaml
covers: { variants: [var-a, var-b], options: [${mayArrive ? 'opt-x' : ''}] }
adds: [${mayBeAdded ? 'opt-x' : ''}]
starts: ${work === 'assembly' ? 'parts' : 'assembled'}
ends: ${work === 'strip' ? 'parts' : 'assembled'}
`;
}

function stepsOf(structure: Structure, extras: FamilyExtras): PlannedStep[] {
  const { plan } = structure;
  const first = [planned('identify', 'nut-hand', { when: 'var-b' })];
  if (plan.work === 'assembly') first.push(planned('install', BASE));
  if (plan.blank) first.push(planned('install', 'blank'));
  const steps = [...chunks('first', first, plan)];
  if (plan.work !== 'assembly') steps.push(...chunks('strip', stripWork(structure, extras), plan));
  if (plan.optionalStep) {
    steps.push({ id: 'wash-again', keys: { optional: 'true' }, do: [planned('clean', BASE, { by: 'wash' })] });
  }
  steps.push(...chunks('bench', [...benchWork(structure), ...fateWork(structure)], plan));
  if (plan.work !== 'strip')
    steps.push(...chunks('fit', soonMeasured(structure, extras), plan), ...lastSteps(structure, extras));
  if (plan.blank) steps.push({ id: 'open-up', keys: {}, do: [planned('remove', 'blank')] });
  return steps;
}

function chunks(name: string, work: readonly Planned[], { stepLength }: Plan): PlannedStep[] {
  return Array.from({ length: Math.ceil(work.length / stepLength) }, (_, index) => ({
    id: `${name}-${index}`,
    keys: {},
    do: work.slice(index * stepLength, (index + 1) * stepLength),
  }));
}

/** A limit may be measured as soon as nothing that it depends on is touched any more. */
function soonMeasured(structure: Structure, extras: FamilyExtras): Planned[] {
  const work = fitWork(structure, extras);
  if (!structure.plan.soonMeasured) return work;
  for (const [id, causes] of extras.limits.filter(isPlain)) {
    const ids = causes.flatMap((cause) => [cause, `${cause}-x`]);
    const last = work.findLastIndex(({ object, verb }) => verb !== 'apply' && object.some((one) => ids.includes(one)));
    work.splice(last + 1, 0, planned('measure', id));
  }
  return work;
}

function isPlain([id]: readonly [string, readonly string[]]): boolean {
  return /^limit-\d/.test(id);
}

function lastSteps(structure: Structure, extras: FamilyExtras): PlannedStep[] {
  const { plan } = structure;
  const work: Planned[] = [];
  if (!plan.soonMeasured) work.push(...extras.limits.filter(isPlain).map(([id]) => planned('measure', id)));
  if (plan.calculation) {
    work.push(recorded('read-bore', {}), recorded('read-shaft', {}));
    work.push(planned('calculate', 'limit-worked-out', { from: '[+read-bore, -read-shaft]' }));
  }
  if (extras.group !== undefined) work.push(planned('wait', 'cure'), planned('balance', 'rotor'));
  const repaired = plan.repair ? repairable(structure) : undefined;
  if (repaired !== undefined) {
    const again = [
      planned('loosen', repaired.id),
      ...tightenedAgain(repaired.id),
      planned('measure', 'limit-repaired'),
    ];
    work.push(withIfNot(planned('measure', 'limit-repaired'), {}, again));
  }
  const checks = extras.checks.map(([id]) => planned('check', id));
  return [...chunks('last', work, plan), ...adjusting(plan), ...chunks('prove', checks, plan)];
}

function tightenedAgain(id: string): Planned[] {
  return [planned('tighten', id, { torque: '9 ± 1 N·m', angle: '60 ± 5°' })];
}

function adjusting({ adjuster, work }: Plan): PlannedStep[] {
  if (adjuster === 'none') return [];
  const setting = [planned('adjust', 'adjuster'), planned('tighten', 'lock-nut', { torque: '8 ± 0.8 N·m' })];
  const before = work === 'assembly' ? [] : [planned('loosen', 'lock-nut')];
  const fitting = work === 'assembly' ? [planned('install', ['adjuster', 'lock-nut'])] : [];
  const measuring = planned('measure', 'limit-adjusted');
  const isLoop = adjuster === 'loop';
  return [
    ...(fitting.length === 0 ? [] : [{ id: 'fit-adjuster', keys: {}, do: fitting }]),
    { id: 'set-adjuster', keys: {}, do: [...before, ...setting] },
    {
      id: 'test-adjuster',
      keys: {},
      do: [isLoop ? withIfNot(measuring, { 'go-to': 'set-adjuster', 'at-most': '2' }) : measuring],
    },
  ];
}

/** The case as the real reader reads it, with the steps as they are given. */
export function openCase(drawn: DrawnCase, steps: readonly PlannedStep[] = drawn.steps): ProcedureView {
  const workspace = new Workspace(['file:///drawn']);
  const set = (name: string, text: string) => workspace.set(`file:///drawn/${name}`, { is: 'text', text });
  set('drawn.family.yaml', drawn.family);
  set('drawn.stores.yaml', STORES);
  set('drawn.procedure.yaml', writeProcedure(drawn.head, steps));
  const document = workspace.snapshot.document('file:///drawn/drawn.procedure.yaml');
  const view = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
  if (view === undefined) throw new Error('The drawn procedure cannot be read');
  return view;
}

/** What the reader does not take as it is; nothing, or the generator is wrong. */
export function readingProblems(procedure: ProcedureView): string[] {
  const units = [procedure.unit, ...(procedure.family === undefined ? [] : [documentUnit(procedure.family.document)])];
  return units.flatMap((unit) =>
    unit === undefined
      ? ['unread']
      : unitsIn(unit).flatMap(({ problems }) => problems.map((one) => JSON.stringify(one.kind))),
  );
}
