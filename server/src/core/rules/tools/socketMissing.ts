import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { toolFit, toolsFor } from '../../workings/toolFit';
import { toolFitWorkings } from '../../workings/toolFitWorking';
import { roleOf } from '../../workings/toolGrip';
import { type NamedTool, toolsWith } from '../../workings/toolNamed';
import type { SizeNeed } from '../../workings/toolSizeNeeds';
import { needText } from '../../workings/toolSizeText';
import { turningOf } from '../../workings/toolTurning';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { useFixes } from '../support/onlyNamedFixes';
import { advice } from '../support/toolFixes';
import { isHalfTyped } from '../support/unsettled';

export const socketMissing = defineRule({
  id: 'socket-missing',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A torque wrench, a ratchet or a T-handle is named to turn a fastener, but no socket, bit or crow-foot that goes on it; or the tools that are named fit only the other fasteners of the instruction.',
    why: 'The fitter stands at the step without the one thing that takes hold of the fastener, and picks by eye.',
    wrong: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: torque-wrench-10'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]'),
  },
  messages: {
    nothing: (driver: string, part: string, advised: string) =>
      `The ${driver} is named, but nothing that takes hold of the ${part}; ${advised}`,
    unfit: (part: string, size: string, advised: string) =>
      `None of the tools named here fits the ${part}, ${size}; ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || view.where.isEmpty) return;
      const { space } = procedure;
      const driver = bareDriver(procedure, view);
      const found = driver === undefined ? undriven(procedure, view) : ungripped(procedure, view);
      if (found.length === 0 || isHalfTyped(view.instruction)) return;
      for (const { ref, name, needs, where, first } of found) {
        const ids = [...new Set(needs.flatMap((need) => toolsFor(procedure, need)))];
        const details = {
          about: [ref.id],
          ...(where.equals(view.where) ? {} : { where: { set: where, space } }),
          fixes: () => useFixes(procedure, view.instruction, 'tool', ids.slice(0, 3)),
          working: () => toolFitWorkings(procedure, ref.id, where),
        };
        const advised = advice('add', ids, needs.length === 0 ? 'name it' : 'the stores have none that fits');
        if (driver !== undefined) ctx.report(ref.range, 'nothing', [driver.name, name, advised], details);
        else if (first !== undefined) ctx.report(ref.range, 'unfit', [name, needText(first), advised], details);
      }
    },
  },
});

/** The tool that turns, where certainly nothing of what is named takes hold. */
function bareDriver(procedure: ProcedureView, { instruction }: InstructionView): NamedTool | undefined {
  const { tools, complete } = toolsWith(procedure, instruction);
  if (!complete || tools.some(({ tool }) => roleOf(tool) === 'grips' || roleOf(tool) === 'unknown')) return undefined;
  return tools.find(({ tool }) => roleOf(tool) === 'turns');
}

function ungripped(procedure: ProcedureView, view: InstructionView) {
  const turned = turningOf(procedure, view)?.turned ?? [];
  return turned.flatMap((one) => {
    if (one.part.drive?.value === 'knurl') return [];
    return [{ ...one, needs: one.sizes.needs, first: one.sizes.needs[0] }];
  });
}

function undriven(procedure: ProcedureView, view: InstructionView) {
  return toolFit(procedure, view).undriven.flatMap(({ ref, name, need }) => {
    if (ref === undefined) return [];
    const needs: readonly SizeNeed[] = [need];
    return [{ ref, name, where: need.where, needs, first: need }];
  });
}
