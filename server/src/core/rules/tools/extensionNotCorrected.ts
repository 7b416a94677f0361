import { whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { tightened } from '../../analysis/statedTorques';
import {
  extensionWorking,
  needsNoCorrection,
  type OffsetHead,
  offsetHeads,
  saysSetting,
  settingFor,
} from '../../workings/toolExtension';
import { toolsWith } from '../../workings/toolNamed';
import { type TorqueToReach, torquesToReach } from '../../workings/toolTorque';
import { newtonMetres } from '../../workings/toolTorqueWorking';
import { defineRule } from '../defineRule';
import { inStep, withStores } from '../examples';
import type { FixDraft } from '../ruleContext';
import { addKey } from '../support/mapKey';
import { isHalfTyped } from '../support/unsettled';

const STORES =
  'tools:\n  torque-wrench-10: { name: torque wrench 2–10 N·m, kind: torque-wrench, range: 2..10 N·m, accuracy: 4 %, length: 200 mm }\n  crow-foot-8: { name: 8 mm crow-foot, kind: crow-foot, size: 8 mm, offset: 30 mm }';
const STEP = '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, crow-foot-8]';

export const extensionNotCorrected = defineRule({
  id: 'extension-not-corrected',
  group: 'tools',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A torque wrench is used with a crow-foot or another head that stands out from it, and neither the stores nor the instruction say that it is set square to the wrench, nor does the instruction give the setting that makes up for the longer lever. What makes the lever longer is the "offset" of the head; an extension bar in line with the socket changes nothing.',
    why: 'Straight on, a head of 30 mm on a lever of 200 mm gives 15 % more than what the wrench clicks at.',
    wrong: withStores(inStep(STEP), STORES),
    right: withStores(inStep(`${STEP}\n  notice: Set the crow-foot at 90° to the wrench.`), STORES),
  },
  messages: {
    straight: (head: string, amount: string, torque: string, setting: string) =>
      `The ${head} makes the lever longer; say that it is set at 90° to the wrench, or give the setting: straight on, ${setting} for ${torque} (otherwise ${amount} reaches the fastener)`,
    angled: (head: string, angle: string, torque: string, setting: string) =>
      `The ${head} is set at ${angle} to the wrench; for ${torque} the wrench has to be set to ${setting}, and the instruction does not say so`,
    unknown: (head: string, wrench: string) =>
      `The ${head} makes the lever longer; say that it is set at 90° to the wrench, or state the length of the ${wrench} in the stores and give the setting here`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      const { instruction } = view;
      if (procedure === undefined || instruction.verb !== 'tighten') return;
      const heads = offsetHeads(instruction, toolsWith(procedure, instruction).tools).filter(
        (head) => !needsNoCorrection(head),
      );
      if (heads.length === 0 || isHalfTyped(instruction)) return;
      for (const { head, torque, setting, id } of uncorrected(procedure, view, heads)) {
        const { head: tool, wrench, angle } = head;
        const text = torque.value.text.trim();
        const details = {
          about: [id, tool.id],
          ...whereUnless(torque.where, view.where, procedure.space),
          fixes: () => squareNotice(view, head),
          working: () => [extensionWorking(head, torque, procedure.space, view.where)],
        };
        if (setting === undefined) ctx.report(tool.ref.range, 'unknown', [tool.name, wrench.name], details);
        else if (angle !== undefined) {
          ctx.report(tool.ref.range, 'angled', [tool.name, `${angle}°`, text, newtonMetres(setting, 3)], details);
        } else {
          const reaches = newtonMetres(torque.bounds.nominal ** 2 / setting, 3);
          ctx.report(tool.ref.range, 'straight', [tool.name, reaches, text, newtonMetres(setting, 3)], details);
        }
      }
    },
  },
});

interface Uncorrected {
  readonly id: string;
  readonly head: OffsetHead;
  readonly torque: TorqueToReach;
  /** In N·m, straight on where no angle is stated; undefined where the lever is not known. */
  readonly setting: number | undefined;
}

/** The final torques for which the wrench has to be set to something else; the first of each head. */
function uncorrected(procedure: ProcedureView, view: InstructionView, heads: readonly OffsetHead[]): Uncorrected[] {
  const torques = tightened(procedure, view).flatMap((fastener) =>
    torquesToReach(procedure, view, fastener).flatMap((torque) =>
      torque.final ? [{ id: fastener.ref.id, torque }] : [],
    ),
  );
  return heads.flatMap((head): Uncorrected[] => {
    const all = torques.map(({ id, torque }): Uncorrected => {
      const setting = settingFor({ ...head, angle: head.angle ?? 0 }, torque.bounds.nominal)?.setting;
      return { id, head, torque, setting };
    });
    const open = all.filter(({ setting }) => setting === undefined || !saysSetting(view.instruction, setting));
    return open.slice(0, 1);
  });
}

/** The one fix that needs no number: the head stands square to the wrench. */
function squareNotice({ instruction }: InstructionView, { head, angle }: OffsetHead): FixDraft[] {
  const { node } = instruction;
  if (angle !== undefined || node.kind !== 'map' || instruction.notice !== undefined) return [];
  const edit = addKey(node, undefined, 'notice', `Set the ${head.name} at 90° to the wrench.`);
  return edit === undefined ? [] : [{ title: 'Say that it is set at 90° to the wrench', edits: [edit] }];
}
