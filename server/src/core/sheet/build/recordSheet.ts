import type { Phase, Tool } from '../../model/generated/types';
import type { BatchRow, DecisionRow, GaugeRow, SheetRecord, SignOff } from '../recordSheet';
import type { ConsumableLine, LooseEnd, SheetPhase, ToolLine } from '../sheet';
import type { BuildContext } from './buildContext';
import { gatheredByStep } from './byStep';
import { benchParts } from './fates';
import { serialRows } from './serials';
import { conditioned } from './uses';
import type { WalkedWork } from './walkedWork';

type ToolKind = NonNullable<Tool['kind']>['value'];

/** Tools that a recorded value comes from. */
const MEASURING: ReadonlySet<ToolKind> = new Set<ToolKind>([
  'torque-wrench',
  'torque-screwdriver',
  'angle-gauge',
  'gauge',
  'micrometer',
  'calliper',
  'bore-gauge',
  'feeler',
  'indicator',
  'scale',
  'balance-machine',
  'thermometer',
  'pressure-gauge',
]);

/** Supplies that leave nothing in the unit, so that nobody asks for their batch later. */
const WITHOUT_BATCH: ReadonlySet<string> = new Set(['wipe', 'plug-cap', 'wire', 'abrasive']);

export interface RecordSources {
  readonly work: WalkedWork | undefined;
  readonly loose: ReadonlyMap<Phase, LooseEnd[]>;
  readonly phases: readonly SheetPhase[];
  readonly tools: readonly ToolLine[];
  readonly consumables: readonly ConsumableLine[];
}

/** What is filed of the work beside torques and measurements, each row with the step that it comes from. */
export function recordOf(
  { work, loose, phases, tools, consumables }: RecordSources,
  context: BuildContext,
): SheetRecord {
  const last = context.procedure.value.phases?.at(-1);
  return {
    serials: serialRows(context, 'all'),
    decisions: decisionRows(work, context),
    gauges: tools.flatMap((tool) => gaugeRow(tool, context)),
    batches: consumables.flatMap((line) => batchRow(line, context)),
    signOffs: signOffsIn(phases),
    ...(work === undefined || last === undefined ? {} : { looseAtEnd: loose.get(last) ?? [] }),
  };
}

function decisionRows(work: WalkedWork | undefined, context: BuildContext): DecisionRow[] {
  return benchParts(work).map(({ part, where }) => {
    const last = context.uses.lastRenewal.get(part);
    return {
      part: context.names.part(part, where).name,
      ...conditioned(where, context, work?.known),
      at: last === undefined ? [] : [last],
    };
  });
}

function gaugeRow({ id, name, calibrationDue }: ToolLine, context: BuildContext): GaugeRow[] {
  const kind = context.names.toolItem(id)?.entry.value.kind?.value;
  if (calibrationDue === undefined && (kind === undefined || !MEASURING.has(kind))) return [];
  const at = context.uses.tools.get(id) ?? [];
  return [{ name, at, ...(calibrationDue === undefined ? {} : { calibrationDue }) }];
}

function batchRow({ id, name, expires }: ConsumableLine, context: BuildContext): BatchRow[] {
  const kind = context.names.consumableItem(id)?.entry.value.kind?.value;
  if (kind !== undefined && WITHOUT_BATCH.has(kind)) return [];
  const at = [...new Set(context.uses.consumables.get(id)?.map(({ place }) => place))];
  return [{ name, at, ...(expires === undefined ? {} : { expires }) }];
}

const signOffsIn = gatheredByStep(({ number, id, title, sign, condition }): SignOff[] =>
  sign === undefined
    ? []
    : [{ step: number, stepId: id, title, who: sign, ...(condition === undefined ? {} : { condition }) }],
);
