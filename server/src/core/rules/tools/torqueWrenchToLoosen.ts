import type { ProcedureView } from '../../analysis/procedureView';
import { roleOf } from '../../workings/toolGrip';
import { type NamedTool, toolsOfStores, toolsWith } from '../../workings/toolNamed';
import { squareOf } from '../../workings/toolSquare';
import { isTorqueTool } from '../../workings/toolTorque';
import { turningOf } from '../../workings/toolTurning';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import { advice, takeInstead } from '../support/toolFixes';

const STORES = 'tools:\n  ratchet: { name: ratchet, kind: ratchet }';

export const torqueWrenchToLoosen = defineRule({
  id: 'torque-wrench-to-loosen',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A torque wrench is named to loosen or take off a fastener.',
    why: 'A stuck thread takes more than the wrench is made for. After that it no longer clicks where it should, and nobody notices.',
    wrong: withStores(inStep('- loosen: cap-nut\n  with: [torque-wrench-10, socket-8]'), STORES),
    right: withStores(inStep('- loosen: cap-nut\n  with: [ratchet, socket-8]'), STORES),
  },
  messages: {
    loosens: (tool: string, parts: string, advised: string) =>
      `The ${tool} is not for loosening the ${parts}; ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      const { instruction } = view;
      if (procedure === undefined || (instruction.verb !== 'loosen' && instruction.verb !== 'remove')) return;
      const wrench = toolsWith(procedure, instruction).tools.find(({ tool }) => isTorqueTool(tool));
      const [first] = wrench === undefined ? [] : (turningOf(procedure, view)?.turned ?? []);
      if (wrench === undefined || first === undefined) return;
      const ids = turningInstead(procedure, wrench);
      ctx.report(wrench.ref.range, 'loosens', [wrench.name, first.name, advice('take', ids, 'take another tool')], {
        about: [first.ref.id, wrench.id],
        fixes: () => takeInstead(procedure, wrench.ref, ids),
      });
    },
  },
});

/** Handles of the stores whose square is the same, as far as the stores state it. */
function turningInstead(procedure: ProcedureView, wrench: NamedTool): string[] {
  const square = squareOf(wrench.tool);
  return toolsOfStores(procedure, (tool) => {
    const other = squareOf(tool);
    const meets = square === undefined || other === undefined || square === other;
    return roleOf(tool) === 'turns' && !isTorqueTool(tool) && meets;
  });
}
