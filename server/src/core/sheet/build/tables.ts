import type { RecordRow, SheetPhase, SheetStep, SingleSetting, TorqueCallout, TorqueRow, TorqueValue } from '../sheet';
import type { BuildContext } from './buildContext';
import { gatheredByStep } from './byStep';
import { instructionsIn } from './steps';
import { conditioned } from './uses';

type Row = Pick<TorqueRow, 'step' | 'stepId' | 'fastener' | 'pieces' | 'tools' | 'condition'>;

/** Every torque of the sheet once more in one table, in the order of the work. */
export const torqueTable = gatheredByStep((step): TorqueRow[] =>
  instructionsIn(step).flatMap(({ torque, condition = step.condition }) =>
    torque === undefined ? [] : torqueRows(rowOf(step, torque, condition), torque),
  ),
);

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

/** Every measurement and every size that is chosen, with its limits, in the order of the work. */
export function recordTable(phases: readonly SheetPhase[], context: BuildContext): RecordRow[] {
  // The order of two rows of one step stays: it is that of its instructions, and a size is chosen from what was measured.
  return [...measurementRows(phases), ...sizeRows(context)].sort((a, b) => a.step - b.step);
}

const measurementRows = gatheredByStep((step): RecordRow[] =>
  instructionsIn(step).flatMap(({ reading, condition = step.condition }) => {
    if (reading === undefined) return [];
    const { name, ...facts } = reading;
    const row = { step: step.number, stepId: step.id, what: name, ...facts };
    return [condition === undefined ? row : { ...row, condition }];
  }),
);

function sizeRows(context: BuildContext): RecordRow[] {
  const { names, quantities, writing, procedure } = context;
  return context.uses.of('choose').flatMap(({ instruction: one, step, stepId, where }) => {
    if (one.verb !== 'choose' || one.choose === undefined) return [];
    const sizes = procedure.family?.part(one.choose.id)?.sizes;
    const row = {
      step,
      stepId,
      what: `${writing.phrases.sizeChosen}: ${names.part(one.choose.id, where).name}`,
      unit: quantities.unitFor('length', sizes),
      rows: [],
      places: [],
      ...conditioned(where, context),
    };
    return [sizes === undefined ? row : { ...row, limits: quantities.inBrackets(sizes) }];
  });
}
