import { whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import {
  type StatedTorques,
  type Tightened,
  tightened,
  torquesOfInstruction,
  torquesOfPart,
} from '../../analysis/statedTorques';
import type { Tool } from '../../model/generated/types';
import { formatQuantity } from '../../quantity';
import { toolsOfStores, toolsWith } from '../../workings/toolNamed';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import { useFixes } from '../support/onlyNamedFixes';
import { advice } from '../support/toolFixes';
import { isHalfTyped } from '../support/unsettled';

const STORES = 'tools:\n  angle-disc: { name: angle disc, kind: angle-gauge, range: 0..360°, resolution: 1° }';
const STEP = '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  angle: 60 ± 5°\n  with: ';

export const angleToolMissing = defineRule({
  id: 'angle-tool-missing',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is turned on by an angle, but the instruction names no angle gauge.',
    why: 'The fitter guesses the angle. Past the torque every degree stretches the bolt or shaft further, so that a guess of ten degrees is what the tolerance forbids.',
    wrong: withStores(inStep(`${STEP}[torque-wrench-10, socket-8]`), STORES),
    right: withStores(inStep(`${STEP}[torque-wrench-10, socket-8, angle-disc]`), STORES),
  },
  messages: {
    missing: (name: string, angle: string, advised: string) =>
      `The ${name} is turned on by ${angle}, but no angle gauge is named; ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || view.instruction.verb !== 'tighten') return;
      if (mayMeasureAngle(procedure, view) || isHalfTyped(view.instruction)) return;
      for (const fastener of tightened(procedure, view)) {
        const angles = anglesOf(procedure, view, fastener);
        const [first] = angles;
        if (first === undefined) continue;
        const ids = toolsOfStores(procedure, measuresAngle);
        const where = procedure.space.union(angles.map((one) => one.where));
        const text = angles.length > 1 ? 'an angle' : formatQuantity(first.value.angle);
        const advised = advice('add', ids, 'the stores have none');
        ctx.report(fastener.ref.range, 'missing', [fastener.name, text, advised], {
          about: [fastener.ref.id],
          ...whereUnless(where, view.where, procedure.space),
          fixes: () => useFixes(procedure, view.instruction, 'tool', ids),
        });
      }
    },
  },
});

/** The angles that the instruction states, and those of the family where it states neither torque nor angle. */
function anglesOf(
  { space }: ProcedureView,
  { instruction }: InstructionView,
  { part, where }: Tightened,
): StatedTorques['angles'] {
  if (instruction.verb !== 'tighten') return [];
  const own = torquesOfInstruction(instruction, space, where);
  return [...own.angles, ...torquesOfPart(part, space, own.absent).angles];
}

function measuresAngle({ kind, range }: Tool): boolean {
  return kind?.value === 'angle-gauge' || range?.reading.quantity?.dimension === 'angle';
}

/** A tool that no stores have, or of a kind that tells nothing, may be the one. */
function mayMeasureAngle(procedure: ProcedureView, { instruction }: InstructionView): boolean {
  const { tools, complete } = toolsWith(procedure, instruction);
  const known = tools.every(({ tool }) => tool.kind?.value !== undefined && tool.kind.value !== 'other');
  return !complete || !known || tools.some(({ tool }) => measuresAngle(tool));
}
