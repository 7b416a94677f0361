import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { isEcho } from '../support/tornText';

const HELD =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, hold: shaft hexagon }';

export const counterHoldMissing = defineRule({
  id: 'counter-hold-missing',
  group: 'tools',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A fastener that must be counter-held is loosened or tightened without saying what holds it.',
    why: 'The torque goes through the blades or the bearings, and the shaft bends or twists.',
    wrong: withFamily(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'), HELD),
    right: withFamily(
      inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  hold: { at: shaft hexagon, with: socket-10 }'),
      HELD,
    ),
  },
  messages: {
    missing: (name: string, where: string) =>
      `The ${name} must be counter-held (${where}); say with "hold" where and with what`,
  },
  check: {
    instruction({ instruction, where }, ctx) {
      if (instruction.verb !== 'loosen' && instruction.verb !== 'tighten') return;
      if (instruction.hold !== undefined || instruction.say !== undefined || where.isEmpty) return;
      const turned = instruction.verb === 'loosen' ? instruction.loosen : instruction.tighten;
      for (const ref of turned ?? []) {
        const part = ctx.family?.part(ref.id);
        if (part?.hold === undefined || isEcho(ctx.document, ref.range)) continue;
        ctx.report(ref.range, 'missing', [part.name?.text ?? ref.id, part.hold.text], { about: [ref.id] });
      }
    },
  },
});
