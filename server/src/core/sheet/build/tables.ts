import type { RecordRow, SheetPhase, SheetStep, SingleSetting, TorqueCallout, TorqueRow, TorqueValue } from '../sheet';
import { instructionsIn } from './steps';

type Row = Pick<TorqueRow, 'step' | 'stepId' | 'fastener' | 'pieces' | 'tools' | 'condition'>;

/** Every torque of the sheet once more in one table, in the order of the work. */
export function torqueTable(phases: readonly SheetPhase[]): TorqueRow[] {
  return [...instructionsIn(phases)].flatMap(({ step, instruction }) => {
    if (instruction.torque === undefined) return [];
    const condition = instruction.condition ?? step.condition;
    return torqueRows(rowOf(step, instruction.torque, condition), instruction.torque);
  });
}

function rowOf(step: SheetStep, torque: TorqueCallout, condition: Row['condition']): Row {
  const { fastener, tools, pieces } = torque;
  const row = { step: step.number, stepId: step.id, fastener, tools, ...(pieces === undefined ? {} : { pieces }) };
  return condition === undefined ? row : { ...row, condition };
}

function torqueRows(row: Row, { setting }: TorqueCallout): TorqueRow[] {
  if (setting.kind !== 'byOutcome') return [{ ...row, ...settingCells(setting) }];
  return setting.branches.map((branch) => ({
    ...row,
    condition: { kind: 'outcome', text: branch.condition },
    ...settingCells(branch.setting),
  }));
}

function settingCells(setting: SingleSetting): Partial<TorqueRow> {
  if (setting.kind === 'one') return { ...valueCells(setting.value), ...bandCells(setting) };
  return { ...(setting.turn === undefined ? {} : { turn: setting.turn }), ...bandCells(setting) };
}

function bandCells({ bands }: SingleSetting): Partial<TorqueRow> {
  return bands === undefined ? {} : { bands };
}

function valueCells({ passes: _, ...cells }: TorqueValue): Omit<TorqueValue, 'passes'> {
  return cells;
}

/** Every measurement of the sheet with its limits, to be filled in once more on one page. */
export function recordTable(phases: readonly SheetPhase[]): RecordRow[] {
  return [...instructionsIn(phases)].flatMap(({ step, instruction }) => {
    if (instruction.reading === undefined) return [];
    const { name, ...facts } = instruction.reading;
    const condition = instruction.condition ?? step.condition;
    const row = { step: step.number, stepId: step.id, what: name, ...facts };
    return [condition === undefined ? row : { ...row, condition }];
  });
}
