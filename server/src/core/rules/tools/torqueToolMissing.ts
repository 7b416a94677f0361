import type { ProcedureView } from '../../analysis/procedureView';
import type { Instruction, Tool } from '../../model/generated/types';
import type { QuantityValue } from '../../model/values';
import { boundsOf, liesWithin } from '../../quantity';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { useFixes } from '../support/onlyNamedFixes';
import { storesUses } from '../support/storesUses';
import { tightenings } from '../support/tightening';
import { isHalfTyped } from '../support/unsettled';

export const torqueToolMissing = defineRule({
  id: 'torque-tool-missing',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is tightened to a torque, but the instruction names no torque wrench or torque screwdriver.',
    why: 'The fitter takes the wrench that lies nearest, or tightens by feel, and nobody knows the torque that was reached.',
    wrong: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: socket-8'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]'),
  },
  messages: {
    missing: (name: string, torque: string) =>
      `The ${name} is tightened to ${torque}, but no torque tool is named; add one under "with"`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      const { instruction } = view;
      if (procedure === undefined || !procedure.storesComplete || !certainlyNone(procedure, instruction)) return;
      for (const { ref, name, where, torques } of tightenings(procedure, view)) {
        const [torque] = torques;
        if (torque === undefined || isHalfTyped(instruction)) continue;
        ctx.report(
          ref.range,
          'missing',
          [name, torques.length > 1 || isUnread(torque) ? 'a torque' : torque.text.trim()],
          {
            about: [ref.id],
            ...(where.equals(view.where) ? {} : { where: { set: where, space: procedure.space } }),
            fixes: () => useFixes(procedure, instruction, 'tool', fittingTools(procedure, torques)),
          },
        );
      }
    },
  },
});

/** A value that is half typed is not worth repeating. */
function isUnread({ reading }: QuantityValue): boolean {
  return reading.quantity === undefined;
}

function isTorqueTool(tool: Tool): boolean {
  return tool.kind?.value === 'torque-wrench' || tool.kind?.value === 'torque-screwdriver';
}

/** A tool that no stores have, or whose kind nobody can read, may be the one. */
function certainlyNone(procedure: ProcedureView, instruction: Instruction): boolean {
  return (instruction.with ?? []).every(({ tool: ref }) => {
    const tool = ref === undefined ? undefined : procedure.tools.get(ref.id)?.entry.value;
    return tool?.kind?.value !== undefined && !isTorqueTool(tool);
  });
}

/** The torque tools whose range covers every torque: those that the procedure lists first, then the finest. */
function fittingTools(procedure: ProcedureView, torques: readonly QuantityValue[]): string[] {
  const { listed } = storesUses(procedure, 'tool');
  const candidates = [...procedure.tools].flatMap(([id, { entry }]) => {
    const range = isTorqueTool(entry.value) ? entry.value.range?.reading.quantity : undefined;
    if (range === undefined) return [];
    const covers = torques.every(({ reading: { quantity } }) => quantity !== undefined && liesWithin(quantity, range));
    return covers ? [{ id, highest: boundsOf(range).highest }] : [];
  });
  candidates.sort((a, b) => Number(listed.has(b.id)) - Number(listed.has(a.id)) || a.highest - b.highest);
  return candidates.map((one) => one.id);
}
