import { whereUnless } from '../../analysis/heldValues';
import { tightened, torquesOfInstruction, torquesOfPart } from '../../analysis/statedTorques';
import type { TightenInstruction } from '../../model/generated/types';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { bareTorquesIn, quantitiesIn } from '../support/proseQuantities';
import { sentencesOf } from '../support/sentences';
import { isHalfTyped } from '../support/unsettled';

const NO_TORQUE = 'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right }';

export const torqueMissing = defineRule({
  id: 'torque-missing',
  group: 'quantities',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A fastener is tightened on a build for which neither the instruction nor the family states a torque or an angle. "Tighten by hand", in own words, asks for none.',
    why: 'The sheet prints "Tighten" and no value, and every fitter has a different feel for it.',
    wrong: withFamily(inStep('- tighten: cap-nut\n  with: socket-8'), NO_TORQUE),
    right: inStep('- tighten: cap-nut\n  with: socket-8'),
  },
  messages: {
    missing: (name: string) =>
      `No torque is stated for the ${name}, here or in the family; write the one that the maker states`,
  },
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      const { instruction } = view;
      if (procedure === undefined || instruction.verb !== 'tighten' || isSaid(instruction)) return;
      const { space } = procedure;
      for (const { ref, part, name, where } of tightened(procedure, view)) {
        const silent = torquesOfInstruction(instruction, space, where).absent.and(
          torquesOfPart(part, space, where).absent,
        );
        if (silent.isEmpty || isHalfTyped(instruction)) continue;
        ctx.report(ref.range, 'missing', [name], {
          about: [ref.id],
          ...whereUnless(silent, where, space),
          related: [
            {
              range: procedure.family?.parts.get(ref.id)?.id.node ?? part.node,
              ...(procedure.family === undefined ? {} : { document: procedure.family.document }),
              message: `The ${name} is declared here`,
            },
          ],
        });
      }
    },
  },
});

const BY_HAND = /\b(?:by hand|hand[- ]tight|finger[- ]tight|with (?:your|the) fingers)\b/i;

/** Whether the writer's own words say how tight; a torque that stands only there is told by another rule. */
function isSaid(instruction: TightenInstruction): boolean {
  return sentencesOf(instruction).some(
    ({ prose }) =>
      BY_HAND.test(prose.text) ||
      bareTorquesIn(prose).length > 0 ||
      quantitiesIn(prose).some(({ dimension }) => dimension === 'torque'),
  );
}
