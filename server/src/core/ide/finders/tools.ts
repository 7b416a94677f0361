import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { tightened } from '../../analysis/statedTorques';
import { isGauge, measurandsOf } from '../../workings/gaugeFit';
import { gaugeWorking } from '../../workings/gaugeWorking';
import { extensionWorking, type OffsetHead, offsetHeads } from '../../workings/toolExtension';
import { toolFitWorkings } from '../../workings/toolFitWorking';
import { type NamedTool, toolsHolding, toolsWith } from '../../workings/toolNamed';
import { isTorqueTool, torquesToReach } from '../../workings/toolTorque';
import { torqueToolWorking } from '../../workings/toolTorqueWorking';
import { type Finder, type FoundWorking, finder, foundEverywhere, foundOn } from './finder';

export const toolFinders: readonly Finder[] = [
  finder('instruction', ['with', 'hold'], ({ procedure, view }, { key, value }) => {
    const { instruction } = view;
    const { tools } = key === 'with' ? toolsWith(procedure, instruction) : toolsHolding(procedure, instruction);
    const pointed = tools.filter(({ ref }) => value.is !== 'ref' || ref === value.ref);
    return pointed.flatMap((tool) => toolFound(procedure, view, tool, key));
  }),
];

/** A torque tool is held against the torque, a gauge against what it measures, any other tool against the fastener. */
function toolFound(procedure: ProcedureView, view: InstructionView, named: NamedTool, key: string): FoundWorking[] {
  if (isTorqueTool(named.tool)) return torqueToolFound(procedure, view, named);
  if (isGauge(named.tool)) return gaugeFound(procedure, view, named);
  // What is counter-held is a place in words, of which nobody knows the size.
  if (key !== 'with') return [];
  const sizes = tightened(procedure, view).flatMap(({ ref, where }) => toolFitWorkings(procedure, ref.id, where));
  return [...sizes.map(foundEverywhere), ...headFound(procedure, view, named)];
}

/** With a head that stands out from the wrench, what it has to be set to as well. */
function torqueToolFound(procedure: ProcedureView, view: InstructionView, named: NamedTool): FoundWorking[] {
  const { space } = procedure;
  const heads = headsOf(procedure, view).filter(({ wrench }) => wrench.ref === named.ref);
  return torquesOf(procedure, view).flatMap(({ torque, served }) => [
    foundOn(torqueToolWorking(named, torque, space, served), torque.where, space),
    ...heads.map((head) => foundOn(extensionWorking(head, torque, space, served), torque.where, space)),
  ]);
}

/** A head that stands out from the wrench is held against the lever as well as against the fastener. */
function headFound(procedure: ProcedureView, view: InstructionView, named: NamedTool): FoundWorking[] {
  const { space } = procedure;
  const heads = headsOf(procedure, view).filter(({ head }) => head.ref === named.ref);
  return torquesOf(procedure, view).flatMap(({ torque, served }) =>
    heads.map((head) => foundOn(extensionWorking(head, torque, space, served), torque.where, space)),
  );
}

function headsOf(procedure: ProcedureView, { instruction }: InstructionView): OffsetHead[] {
  return offsetHeads(instruction, toolsWith(procedure, instruction).tools);
}

function torquesOf(procedure: ProcedureView, view: InstructionView) {
  return tightened(procedure, view).flatMap((fastener) =>
    torquesToReach(procedure, view, fastener).map((torque) => ({ torque, served: fastener.where })),
  );
}

function gaugeFound(procedure: ProcedureView, view: InstructionView, named: NamedTool): FoundWorking[] {
  const { space } = procedure;
  return measurandsOf(procedure, view).map((one) =>
    foundOn(gaugeWorking(named, one, space, view.where), one.where, space),
  );
}
