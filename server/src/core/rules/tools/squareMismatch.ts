import type { ProcedureView } from '../../analysis/procedureView';
import { gripOfTool, gripsMeet, roleOf } from '../../workings/toolGrip';
import { toolsOfStores, toolsWith } from '../../workings/toolNamed';
import { type SquareMismatch, squareMismatches, squareOf, squareText } from '../../workings/toolSquare';
import { isTorqueTool } from '../../workings/toolTorque';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import type { FixDraft } from '../ruleContext';
import { takeInstead } from '../support/toolFixes';

const STORES = `tools:
  ratchet-small: { name: small ratchet, kind: ratchet, square: 6.3 mm }
  ratchet-big: { name: big ratchet, kind: ratchet, square: 10 mm }
  socket-8: { name: 8 mm socket, kind: socket, size: 8 mm, square: 6.3 mm }`;

export const squareMismatch = defineRule({
  id: 'square-mismatch',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'The driving square of a socket or bit is not that of the handle, torque wrench or extension that it is used with.',
    why: 'The two do not go together. The fitter fetches an adapter, or another handle whose torque nobody stated.',
    wrong: withStores(inStep('- loosen: cap-nut\n  with: [ratchet-big, socket-8]'), STORES),
    right: withStores(inStep('- loosen: cap-nut\n  with: [ratchet-small, socket-8]'), STORES),
  },
  messages: {
    mismatch: (socket: string, square: string, handle: string, other: string) =>
      `The ${socket} has a ${square} square and does not go on the ${handle}, which has ${other}; name an adapter, or tools that go together`,
  },
  check: {
    instruction({ instruction }, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || instruction.with === undefined) return;
      const { tools, complete } = toolsWith(procedure, instruction);
      if (!complete) return;
      for (const mismatch of squareMismatches(tools)) {
        const { socket, square, handle, other } = mismatch;
        const args = [socket.name, squareText(square), handle.name, squareText(other)] as const;
        ctx.report(socket.ref.range, 'mismatch', [...args], {
          about: [socket.id, handle.id],
          fixes: () => goTogether(procedure, mismatch),
        });
      }
    },
  },
});

/** Another handle of the same kind for the socket, or the same size of socket for the handle. */
function goTogether(procedure: ProcedureView, { socket, square, handle, other }: SquareMismatch): FixDraft[] {
  const size = gripOfTool(socket.tool);
  const sockets = toolsOfStores(procedure, (tool) => {
    const grip = gripOfTool(tool);
    const same = grip !== undefined && size !== undefined && gripsMeet(grip, size);
    return roleOf(tool) === 'grips' && squareOf(tool) === other && same;
  });
  // Another torque wrench has another range, which is for a person to choose.
  const handles = isTorqueTool(handle.tool)
    ? []
    : toolsOfStores(procedure, (tool) => tool.kind?.value === handle.tool.kind?.value && squareOf(tool) === square);
  return [...takeInstead(procedure, handle.ref, handles), ...takeInstead(procedure, socket.ref, sockets)];
}
