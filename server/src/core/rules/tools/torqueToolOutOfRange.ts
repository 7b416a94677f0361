import { whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { type Tightened, tightened } from '../../analysis/statedTorques';
import type { NamedTool } from '../../workings/toolNamed';
import {
  type Reach,
  reachOf,
  type TorqueToReach,
  torquesToReach,
  torqueToolsFor,
  torqueToolsNamed,
} from '../../workings/toolTorque';
import { torqueToolWorking } from '../../workings/toolTorqueWorking';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import { advice, takeInstead } from '../support/toolFixes';
import { isHalfTyped } from '../support/unsettled';

const STORES =
  'tools:\n  torque-wrench-50: { name: torque wrench 10–50 N·m, kind: torque-wrench, range: 10..50 N·m, accuracy: 4 % }';

export const torqueToolOutOfRange = defineRule({
  id: 'torque-tool-out-of-range',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is tightened to a torque, or to that of a pass, which none of the torque tools named can be set to; or which lies in the lowest fifth of a scale that begins at zero. The target has to lie within the range: of a range of torques, its middle.',
    why: 'The wrench does not click, or clicks at a torque that nobody vouches for.',
    wrong: withStores(
      inStep('- tighten: cover-screw\n  torque: 9 ± 1 N·m\n  with: [torque-wrench-50, socket-10]'),
      STORES,
    ),
    right: withStores(
      inStep('- tighten: cover-screw\n  torque: 9 ± 1 N·m\n  with: [torque-wrench-10, socket-10]'),
      STORES,
    ),
  },
  messages: {
    below: (tool: string, range: string, torque: string, part: string, advised: string) =>
      `The ${tool} begins above the ${torque} of the ${part} (range ${range}); ${advised}`,
    above: (tool: string, range: string, torque: string, part: string, advised: string) =>
      `The ${tool} ends below the ${torque} of the ${part} (range ${range}); ${advised}`,
    unmarked: (tool: string, range: string, torque: string, part: string, advised: string) =>
      `The ${torque} of the ${part} lies in the lowest fifth of the ${tool} (range ${range}), where its accuracy is not vouched for; ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || view.instruction.verb !== 'tighten') return;
      const tools = torqueToolsNamed(procedure, view);
      if (tools === undefined || tools.length === 0 || isHalfTyped(view.instruction)) return;
      for (const { fastener, torque, all } of outOfReach(procedure, view, tools)) {
        const nearest = nearestOf(tools, torque);
        if (nearest === undefined) continue;
        const { tool, reach } = nearest;
        const ids = torqueToolsFor(procedure, all);
        const one = ids.length > 0 ? ids : torqueToolsFor(procedure, [torque]);
        const args = [
          tool.name,
          tool.tool.range?.text.trim() ?? '',
          torque.value.text.trim(),
          fastener.name,
          advice('take', one, 'no torque tool of the stores reaches it'),
        ] as const;
        ctx.report(tool.ref.range, reach, [...args], {
          about: [fastener.ref.id, tool.id],
          ...whereUnless(torque.where, view.where, procedure.space),
          fixes: () => takeInstead(procedure, tool.ref, one),
          working: () => tools.map((named) => torqueToolWorking(named, torque, procedure.space, view.where)),
        });
      }
    },
  },
});

interface OutOfReach {
  readonly fastener: Tightened;
  readonly torque: TorqueToReach;
  /** All that the fastener is brought to on these builds. */
  readonly all: readonly TorqueToReach[];
}

/** For each fastener the first torque that no tool reaches; a reading that is added leaves open what lies below. */
function outOfReach(procedure: ProcedureView, view: InstructionView, tools: readonly NamedTool[]): OutOfReach[] {
  const { instruction } = view;
  const adds = instruction.verb === 'tighten' && instruction.plus !== undefined;
  return tightened(procedure, view).flatMap((fastener) => {
    const all = torquesToReach(procedure, view, fastener);
    return all
      .filter((torque) => {
        const reaches = tools.map(({ tool }) => reachOf(tool, torque.bounds.nominal));
        const within = reaches.includes('within') || reaches.includes('unknown');
        return !within && !(adds && reaches.some((reach) => reach !== 'above'));
      })
      .slice(0, 1)
      .map((torque) => ({ fastener, torque, all: all.filter((one) => one.where.overlaps(torque.where)) }));
  });
}

type Missed = Exclude<Reach, 'within' | 'unknown'>;

/** The tool that comes nearest to a torque: one whose scale has it, or else the first. */
function nearestOf(
  tools: readonly NamedTool[],
  torque: TorqueToReach,
): { readonly tool: NamedTool; readonly reach: Missed } | undefined {
  const missed = tools.flatMap((tool) => {
    const reach = reachOf(tool.tool, torque.bounds.nominal);
    return reach === 'within' || reach === 'unknown' ? [] : [{ tool, reach }];
  });
  return missed.find(({ reach }) => reach === 'unmarked') ?? missed[0];
}
