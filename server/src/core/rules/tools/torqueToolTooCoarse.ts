import { whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { type Tightened, tightened } from '../../analysis/statedTorques';
import type { NamedTool } from '../../workings/toolNamed';
import { significant } from '../../workings/toolSizeText';
import {
  type Deviation,
  deviationAt,
  finenessOf,
  reachOf,
  type TorqueToReach,
  toleranceOf,
  torquesToReach,
  torqueToolsFor,
  torqueToolsNamed,
} from '../../workings/toolTorque';
import { newtonMetres, torqueToolWorking } from '../../workings/toolTorqueWorking';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import { advice, takeInstead } from '../support/toolFixes';
import { isHalfTyped } from '../support/unsettled';

const STORES =
  'tools:\n  torque-wrench-6: { name: electronic torque wrench 1–6 N·m, kind: torque-wrench, range: 1..6 N·m, accuracy: 1 % }';

export const torqueToolTooCoarse = defineRule({
  id: 'torque-tool-too-coarse',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'The permissible deviation of the torque tool, at the torque that it is set to, is wider than the tolerance of that torque. The deviation is the accuracy that the stores state, or else what ISO 6789 permits the class of the tool.',
    why: 'A wrench that passes every calibration can still leave the fastener outside of its tolerance.',
    wrong: withStores(
      inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.1 N·m\n  with: [torque-wrench-10, socket-8]'),
      STORES,
    ),
    right: withStores(
      inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.1 N·m\n  with: [torque-wrench-6, socket-8]'),
      STORES,
    ),
  },
  messages: {
    coarse: (tool: string, percent: string, amount: string, torque: string, advised: string) =>
      `The ${tool} may be out by ± ${percent} %, here ± ${amount}, which is more than ${torque} allows; ${advised}`,
    class: (tool: string, percent: string, amount: string, torque: string, advised: string) =>
      `The ${tool} may be out by ± ${percent} % (ISO 6789 for its class), here ± ${amount}, which is more than ${torque} allows; ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || view.instruction.verb !== 'tighten') return;
      const tools = torqueToolsNamed(procedure, view);
      if (tools === undefined || tools.length === 0 || isHalfTyped(view.instruction)) return;
      for (const { fastener, torque, tool, deviation } of tooCoarse(procedure, view, tools)) {
        const ids = torqueToolsFor(procedure, [torque]).filter((id) => {
          const other = procedure.tools.get(id)?.entry.value;
          return other !== undefined && finenessOf(other, torque) === 'fine';
        });
        const key = deviation.from === 'stores' ? 'coarse' : 'class';
        const none = 'the stores have no finer torque tool for it';
        const args = [
          significant(deviation.percent, 2),
          newtonMetres(deviation.amount),
          torque.value.text.trim(),
        ] as const;
        ctx.report(tool.ref.range, key, [tool.name, ...args, advice('take', ids, none)], {
          about: [fastener.ref.id, tool.id],
          ...whereUnless(torque.where, view.where, procedure.space),
          fixes: () => takeInstead(procedure, tool.ref, ids),
          working: () => [torqueToolWorking(tool, torque, procedure.space, view.where)],
        });
      }
    },
  },
});

interface TooCoarse {
  readonly fastener: Tightened;
  readonly torque: TorqueToReach;
  readonly tool: NamedTool;
  readonly deviation: Deviation;
}

/** The final torques that no tool which can be set to them meets; the finest of those tools is told of. */
function tooCoarse(procedure: ProcedureView, view: InstructionView, tools: readonly NamedTool[]): TooCoarse[] {
  return tightened(procedure, view).flatMap((fastener) =>
    torquesToReach(procedure, view, fastener).flatMap((torque): TooCoarse[] => {
      const { nominal } = torque.bounds;
      if (!torque.final || toleranceOf(torque.bounds) === undefined) return [];
      // Which tool cannot be set to the torque at all is told by another rule.
      const set = tools.filter(
        ({ tool }) => reachOf(tool, nominal) === 'within' || reachOf(tool, nominal) === 'unknown',
      );
      if (set.length === 0 || set.some(({ tool }) => finenessOf(tool, torque) !== 'coarse')) return [];
      const [finest] = set
        .flatMap((tool) => {
          const deviation = deviationAt(tool.tool, nominal);
          return deviation === undefined ? [] : [{ fastener, torque, tool, deviation }];
        })
        .sort((a, b) => a.deviation.amount - b.deviation.amount);
      return finest === undefined ? [] : [finest];
    }),
  );
}
