import type { ProcedureView } from '../../analysis/procedureView';
import { type Misfit, type NeedUnmet, toolFit, toolsFor } from '../../workings/toolFit';
import { toolFitWorkings } from '../../workings/toolFitWorking';
import { gripOfTool } from '../../workings/toolGrip';
import { gripText, needText } from '../../workings/toolSizeText';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { listed } from '../support/phrases';
import { advice, takeInstead } from '../support/toolFixes';
import { isHalfTyped } from '../support/unsettled';

const NUT =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, across-flats: 8 mm, torque: 4.6 ± 0.3 N·m }';

export const toolWrongSize = defineRule({
  id: 'tool-wrong-size',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A socket, spanner, key or bit does not fit the fastener that the instruction turns or counter-holds with it. The size is the one that the family states, or else, for nuts and bolts, that of the standard hexagon for their thread; then only a width that is not met with at all is reported.',
    why: 'The fitter looks for the right one, or rounds the corners with one that nearly fits.',
    wrong: withFamily(
      inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-10]'),
      NUT,
    ),
    right: withFamily(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]'), NUT),
  },
  messages: {
    turns: (tool: string, parts: string, advised: string) => `The ${tool} does not fit ${parts}; ${advised}`,
    holds: (tool: string, parts: string, advised: string) =>
      `The ${tool} is to counter-hold, but it does not fit ${parts}; ${advised}`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || view.where.isEmpty) return;
      const { misfits } = toolFit(procedure, view);
      if (misfits.length === 0 || isHalfTyped(view.instruction)) return;
      for (const misfit of misfits) {
        const { tool, unmet, where } = misfit;
        const holds = unmet[0].ref === undefined;
        const ids = candidates(procedure, misfit);
        const none = 'no tool of the stores does';
        ctx.report(
          tool.ref.range,
          holds ? 'holds' : 'turns',
          [sized(misfit), listed(partsText(unmet)), advice('take', ids, none)],
          {
            about: [tool.id, ...new Set(unmet.flatMap(({ ref }) => ref?.id ?? []))],
            ...(where.equals(view.where) ? {} : { where: { set: where, space: procedure.space } }),
            fixes: () => takeInstead(procedure, tool.ref, ids),
            working: () =>
              [...new Set(unmet.flatMap(({ ref }) => ref?.id ?? []))].flatMap((id) =>
                toolFitWorkings(procedure, id, where),
              ),
          },
        );
      }
    },
  },
});

/** The tool, with its size where its name does not give it in millimetres. */
function sized({ tool }: Misfit): string {
  const grip = gripOfTool(tool.tool);
  if (grip === undefined || grip.is === 'named') return tool.name;
  const [metric = ''] = gripText(grip).split(' (');
  return tool.name.includes(metric) ? tool.name : `${tool.name} (${metric})`;
}

function partsText(unmet: readonly NeedUnmet[]): string[] {
  return [...new Set(unmet.map(({ name, need }) => `the ${name}, ${needText(need)}`))];
}

/** Tools that fit all that this one was for, or else the first of it. */
function candidates(procedure: ProcedureView, { tool, unmet }: Misfit): string[] {
  const [first, ...others] = unmet.map(({ need }) => toolsFor(procedure, need, tool));
  const all = (first ?? []).filter((id) => others.every((ids) => ids.includes(id)));
  return (all.length > 0 ? all : (first ?? [])).filter((id) => id !== tool.id);
}
