import { heldValues, whereUnless } from '../../analysis/heldValues';
import { tightened } from '../../analysis/statedTorques';
import { torquesToReach, torqueToolsFor, torqueToolsNamed } from '../../workings/toolTorque';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import { advice, takeInstead } from '../support/toolFixes';

const STORES = `tools:
  right-wrench: { name: torque wrench for right-hand threads, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, direction: right }
  both-wrench: { name: reversible torque wrench, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, direction: both }`;

export const torqueToolOneWay = defineRule({
  id: 'torque-tool-one-way',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener with a left-hand thread is tightened with a torque tool that measures clockwise only, as the stores state with "direction: right".',
    why: 'The wrench never clicks counter-clockwise. The fitter pulls until it does, and the shaft breaks.',
    wrong: withStores(inStep('- tighten: cap-nut\n  with: [right-wrench, socket-8]'), STORES),
    right: withStores(inStep('- tighten: cap-nut\n  with: [both-wrench, socket-8]'), STORES),
  },
  messages: {
    oneWay: (tool: string, part: string, advised: string) =>
      `The ${tool} measures clockwise only, and the ${part} has a left-hand thread; ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || view.instruction.verb !== 'tighten') return;
      const tools = torqueToolsNamed(procedure, view) ?? [];
      const [first] = tools;
      if (first === undefined || tools.some(({ tool }) => tool.direction?.value !== 'right')) return;
      const { space } = procedure;
      for (const fastener of tightened(procedure, view)) {
        const { held } = heldValues(fastener.part.hand, space, fastener.where);
        const left = space.union(held.flatMap(({ value, where }) => (value.value === 'left' ? [where] : [])));
        if (left.isEmpty) continue;
        const ids = torqueToolsFor(procedure, torquesToReach(procedure, view, fastener)).filter(
          (id) => procedure.tools.get(id)?.entry.value.direction?.value === 'both',
        );
        const advised = advice('take', ids, 'take one that measures both ways');
        ctx.report(first.ref.range, 'oneWay', [first.name, fastener.name, advised], {
          about: [fastener.ref.id, first.id],
          ...whereUnless(left, view.where, space),
          fixes: () => takeInstead(procedure, first.ref, ids),
        });
      }
    },
  },
});
