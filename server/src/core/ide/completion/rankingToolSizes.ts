import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { tightened } from '../../analysis/statedTorques';
import type { Tool } from '../../model/generated/types';
import { roleOf } from '../../workings/toolGrip';
import { fitOf, isAskedFor, type SizeNeed } from '../../workings/toolSizeNeeds';
import { finenessOf, isTorqueTool, reachOf, type TorqueToReach, torquesToReach } from '../../workings/toolTorque';
import { heldSizes, turningOf } from '../../workings/toolTurning';
import type { Rank } from './rank';
import type { ToolJudge } from './rankingTools';

/** Judges tools by the sizes and torques of what an instruction turns. */
export function judgeBySize(procedure: ProcedureView, view: InstructionView): ToolJudge {
  const turning = turningOf(procedure, view);
  if (turning === undefined) return () => undefined;
  const needs = [...turning.turned.flatMap(({ sizes }) => sizes.needs), ...turning.beside];
  const held = heldSizes(procedure, view).map(({ need }) => need);
  const torques = tightened(procedure, view).flatMap((one) => torquesToReach(procedure, view, one));
  return (tool) => {
    if (isTorqueTool(tool) && torques.length > 0) return judgeTorque(tool, torques);
    if (roleOf(tool) === 'grips') return judgeGrip(tool, needs, held);
    return roleOf(tool) === 'turns' ? judgeHandle(tool, view, needs) : undefined;
  };
}

function judgeGrip(tool: Tool, needs: readonly SizeNeed[], held: readonly SizeNeed[]): Rank | undefined {
  const size = tool.size?.text ?? tool.driveSize?.text ?? 'its drive';
  if (needs.some((need) => isAskedFor(tool, need))) return { rank: 0, why: `fits ${size}` };
  if (held.some((need) => isAskedFor(tool, need))) return { rank: 1, why: `holds ${size}` };
  const fits = needs.map((need) => fitOf(tool, need));
  if (fits.includes('fits')) return { rank: 1, why: `may fit ${size}` };
  return fits.length > 0 && fits.every((fit) => fit === 'fits-not') ? { rank: 3, why: 'another size' } : undefined;
}

function judgeTorque(tool: Tool, torques: readonly TorqueToReach[]): Rank {
  const range = tool.range?.text ?? '';
  const reaches = torques.map(({ bounds }) => reachOf(tool, bounds.nominal));
  if (reaches.includes('above')) return { rank: 3, why: `reaches ${range} only` };
  if (reaches.includes('below')) return { rank: 3, why: `begins above it, ${range}` };
  if (reaches.includes('unmarked')) return { rank: 3, why: `lowest fifth of ${range}` };
  if (reaches.includes('unknown')) return { rank: 1, why: 'range not stated' };
  const isCoarse = torques.some((one) => one.final && finenessOf(tool, one) === 'coarse');
  return isCoarse ? { rank: 2, why: 'too coarse for the tolerance' } : { rank: 0, why: `reaches ${range}` };
}

/** A handle turns whatever a socket takes hold of; what has a torque is not tightened with one. */
function judgeHandle(tool: Tool, { instruction }: InstructionView, needs: readonly SizeNeed[]): Rank | undefined {
  const turns = instruction.verb === 'loosen' || instruction.verb === 'remove';
  if (needs.length === 0) return undefined;
  if (isTorqueTool(tool)) return turns ? { rank: 3, why: 'kept for tightening' } : undefined;
  return turns ? { rank: 1, why: 'turns the socket' } : undefined;
}
