import type { ProcedureView } from '../../analysis/procedureView';
import { gatherer } from '../../analysis/stepRuns';
import type { Ref } from '../../model/values';
import { isGauge } from '../../workings/gaugeFit';
import { type NamedTool, toolsWith } from '../../workings/toolNamed';
import { isTorqueTool } from '../../workings/toolTorque';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';

const STEP = '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]';

function wrenchDue(day: string): string {
  return `tools:\n  torque-wrench-10: { name: torque wrench 2–10 N·m, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, calibration-due: ${day} }`;
}

export const calibrationOverdue = defineRule({
  id: 'calibration-overdue',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A tool that tightens or measures is past the day on which its calibration ends. It is reported once, where the procedure lists the tool.',
    why: 'What it shows proves nothing, and everything that was tightened or measured with it is open to doubt.',
    wrong: withStores(inStep(STEP), wrenchDue('2026-06-30')),
    right: withStores(inStep(STEP), wrenchDue('2027-06-30')),
  },
  messages: {
    overdue: (name: string, day: string) =>
      `The calibration of the ${name} ended on ${day}; have it calibrated or take another one`,
  },
  check: {
    procedure(procedure, ctx) {
      for (const { id, name, tool, ref } of proving(procedure).values()) {
        const day = tool.calibrationDue?.day;
        // Days as 2027-03-01 stand in the order of time when they stand in the order of their letters.
        if (day === undefined || day >= ctx.today) continue;
        const stores = procedure.tools.get(id);
        ctx.report((listing(procedure, id) ?? ref).range, 'overdue', [name, day], {
          about: [id],
          related:
            stores === undefined || tool.calibrationDue === undefined
              ? []
              : [
                  {
                    range: tool.calibrationDue.node,
                    document: stores.document,
                    message: `The stores say so here`,
                  },
                ],
        });
      }
    },
  },
});

/** The tools that tighten to a torque or measure something, by id, with the first use. */
function proving(procedure: ProcedureView): Map<string, NamedTool> {
  const used = new Map<string, NamedTool>();
  for (const tools of provingByRun(procedure)) for (const one of tools) if (!used.has(one.id)) used.set(one.id, one);
  return used;
}

const provingByRun = gatherer(
  (steps, procedure) => {
    const used = new Map<string, NamedTool>();
    for (const { instruction } of steps.flatMap((step) => step.instructions)) {
      for (const one of toolsWith(procedure, instruction).tools) {
        if (!used.has(one.id) && (isTorqueTool(one.tool) || isGauge(one.tool))) used.set(one.id, one);
      }
    }
    return [...used.values()];
  },
  (procedure) => procedure.tools,
);

function listing(procedure: ProcedureView, id: string): Ref | undefined {
  return procedure.value.tools?.find((ref) => ref.id === id);
}
