import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { tightened } from '../../analysis/statedTorques';
import { isGauge, measurandsOf } from '../../workings/gaugeFit';
import { gaugeWorking } from '../../workings/gaugeWorking';
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
  return tightened(procedure, view).flatMap(({ ref, where }) =>
    toolFitWorkings(procedure, ref.id, where).map(foundEverywhere),
  );
}

function torqueToolFound(procedure: ProcedureView, view: InstructionView, named: NamedTool): FoundWorking[] {
  const { space } = procedure;
  return tightened(procedure, view).flatMap((fastener) =>
    torquesToReach(procedure, view, fastener).map((torque) =>
      foundOn(torqueToolWorking(named, torque, space, fastener.where), torque.where, space),
    ),
  );
}

function gaugeFound(procedure: ProcedureView, view: InstructionView, named: NamedTool): FoundWorking[] {
  const { space } = procedure;
  return measurandsOf(procedure, view).map((one) =>
    foundOn(gaugeWorking(named, one, space, view.where), one.where, space),
  );
}
