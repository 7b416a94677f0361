import type { ProcedureView } from '../../analysis/procedureView';
import { type BuildSet, valuesByBuild } from '../../builds';
import type { Part } from '../../model/generated/types';
import type { Ref } from '../../model/values';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';

const SCREW =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { k1-a: right }, torque: 4.6 ± 0.3 N·m }';

export const threadHandMissing = defineRule({
  id: 'thread-hand-missing',
  group: 'threads',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is turned on a build for which the family does not say whether its thread is left-hand or right-hand.',
    why: 'A left-hand nut that is loosened the usual way is tightened until it breaks off.',
    wrong: withFamily(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'), SCREW),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
  },
  messages: {
    missing: (name: string) =>
      `The family does not state the hand of the ${name} that is turned here; state left or right for every build`,
  },
  check: {
    instruction({ instruction, where }, ctx) {
      const { procedure } = ctx;
      if (procedure?.family === undefined) return;
      if (instruction.verb !== 'loosen' && instruction.verb !== 'tighten') return;
      const turned = instruction.verb === 'loosen' ? instruction.loosen : instruction.tighten;
      for (const ref of turned ?? []) {
        const part = procedure.family.part(ref.id);
        if (part === undefined || !isTurned(part)) continue;
        const silent = where.and(silentBuilds(procedure, ref, part));
        if (silent.isEmpty) continue;
        ctx.report(ref.range, 'missing', [part.name?.text ?? ref.id], {
          about: [ref.id],
          where: { set: silent, space: procedure.space },
          related: [
            {
              range: part.hand?.node ?? procedure.family.parts.get(ref.id)?.id.node ?? part.node,
              document: procedure.family.document,
              message: `The ${part.name?.text ?? ref.id} is declared here`,
            },
          ],
        });
      }
    },
  },
});

/** Only what has a thread is turned; a retaining ring is loosened without turning. */
function isTurned(part: Part): boolean {
  return (
    part.thread !== undefined || ['nut', 'bolt', 'screw', 'stud', 'plug', 'fitting'].includes(part.kind?.value ?? '')
  );
}

function silentBuilds(procedure: ProcedureView, ref: Ref, part: Part): BuildSet {
  const present = procedure.presence(ref.id);
  if (part.hand?.is === 'one') return procedure.space.nothing;
  const cases = part.hand?.cases ?? [];
  const entries = cases.flatMap((one) => (one.expr === undefined ? [] : [{ key: one.key.text, expr: one.expr }]));
  return valuesByBuild(procedure.space, entries, { otherwise: cases.some((one) => one.otherwise), within: present })
    .absent;
}
