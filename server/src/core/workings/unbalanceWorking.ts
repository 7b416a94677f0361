import type { FamilyView } from '../analysis/familyView';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import { describeBuilds } from '../builds';
import type { QuantityValue } from '../model/values';
import { findUnit, formatNumber, fromBase, type Unit } from '../quantity';
import { gradeExamples, gradeReached, readBalanceGrade } from '../standards/balanceGrades';
import { threeDigits } from './limitText';
import { type UnbalanceCase, unbalanceCases, wholeUnbalance } from './unbalanceCases';
import type { Working, WorkingRow } from './working';

const gramMillimetre = findUnit('unbalance', 'g·mm');
/** An ounce inch is too much for a small rotor to be read in. */
const gramInch = findUnit('unbalance', 'g·in');

/** What the grade of a balance group allows against what the family states; one working for each build that differs. */
export function unbalanceWorkingsOf(family: FamilyView, id: string): Working[] {
  const { space } = family;
  const cases = unbalanceCases(family, id, space, space.everything);
  return cases.map((one) => unbalanceWorking(one, one.group.permissible));
}

/** The same for what an instruction balances to. */
export function unbalanceWorkingsOfInstruction(procedure: ProcedureView, view: InstructionView): Working[] {
  const { family, space } = procedure;
  const { instruction, where } = view;
  if (family === undefined || instruction.verb !== 'balance' || instruction.balance === undefined) return [];
  const { accept, grade, balance } = instruction;
  const value = accept?.is === 'one' ? accept.value : undefined;
  return unbalanceCases(family, balance.id, space, where, grade?.text).map((one) =>
    unbalanceWorking(one, value ?? one.group.permissible),
  );
}

/** How a stated unbalance stands to what the grade allows. */
export function unbalanceWorking(one: UnbalanceCase, stated: QuantityValue | undefined): Working {
  const { name, where, space, allowed } = one;
  return {
    title: `Permissible unbalance of the ${name}`,
    builds: describeBuilds(where, space),
    rows: [...givenRows(one), ...allowedRows(one), ...(stated === undefined ? [] : statedRows(one, stated))],
    steps: allowed?.steps ?? [],
    missing: missingOf(one),
    sources: allowed === undefined ? [] : ['ISO 21940-11:2016'],
  };
}

/** An unbalance in g·mm, in the unit that the writer used and in the trade's other one. */
export function unbalanceText(unbalance: number, unit: Unit | undefined): string {
  const own = unit?.dimension === 'unbalance' ? unit : gramMillimetre;
  if (own === undefined || gramMillimetre === undefined || gramInch === undefined) return '';
  const other = own === gramMillimetre || own.symbol.endsWith('mm') ? gramInch : gramMillimetre;
  return `${inUnit(unbalance, own)} (${inUnit(unbalance, other)})`;
}

function inUnit(unbalance: number, unit: Unit): string {
  return `${threeDigits(fromBase(unbalance, unit))} ${unit.symbol}`;
}

function givenRows({ grade, mass, speed, planes, group }: UnbalanceCase): WorkingRow[] {
  const number = grade === undefined ? undefined : readBalanceGrade(grade);
  const usual = number === undefined ? undefined : gradeExamples.get(number);
  const summed = mass?.from === 'summed' ? `, the sum of ${mass.parts.join(', ')}` : '';
  return [
    ...(grade === undefined
      ? []
      : [{ label: 'grade', text: `${grade}${usual === undefined ? '' : ` (as ${usual})`}` }]),
    ...(mass === undefined ? [] : [{ label: 'mass', text: `${threeDigits(1000 * mass.mass)} g${summed}` }]),
    ...(speed === undefined ? [] : [{ label: 'highest speed', text: `${formatNumber(speed, 1)} min⁻¹` }]),
    ...(group.planes === undefined ? [] : [{ label: 'correction planes', text: `${planes}` }]),
  ];
}

function allowedRows({ allowed, planes }: UnbalanceCase): WorkingRow[] {
  if (allowed === undefined) return [];
  const whole = { label: 'allowed for the rotor', text: unbalanceText(allowed.unbalance, undefined) };
  if (planes < 2) return [whole];
  const each = `${unbalanceText(allowed.unbalance / planes, undefined)}, where the planes bear alike`;
  return [whole, { label: `allowed for each of ${planes} planes`, text: each }];
}

function statedRows(one: UnbalanceCase, value: QuantityValue): WorkingRow[] {
  const { mass, speed, eachPlane } = one;
  const whole = wholeUnbalance(one, value);
  const rows: WorkingRow[] = [
    { label: eachPlane ? 'stated for each plane' : 'stated for the rotor', text: value.text.trim() },
  ];
  if (whole === undefined) return rows;
  if (eachPlane) rows.push({ label: 'that is for the rotor', text: unbalanceText(whole, undefined) });
  const reached = mass && speed ? gradeReached(whole, mass.mass, speed) : undefined;
  return reached === undefined ? rows : [...rows, { label: 'that is grade', text: `G ${threeDigits(reached)}` }];
}

function missingOf({ grade, mass, speed, name, group, space, where }: UnbalanceCase): string[] {
  const unread = grade !== undefined && readBalanceGrade(grade) === undefined;
  const builds = describeBuilds(where, space);
  return [
    ...(grade === undefined ? [`the balance grade of the ${name}`] : []),
    ...(unread ? [`a grade of ISO 21940-11 for the ${name}; ${grade} is none`] : []),
    ...(mass === undefined
      ? [`the mass of the ${name}, or of each of its parts${builds === '' ? '' : ` on ${builds}`}`]
      : []),
    ...(speed === undefined ? ['the highest speed of the family'] : []),
    ...(group.permissible === undefined ? ['the permissible unbalance that the maker states'] : []),
  ];
}
