import type { ProcedureView } from '../../analysis/procedureView';
import type { Failure } from '../../walk/failure';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { type ShortPass, shortPassOf } from '../support/shortPass';
import { nameOf, reportFailure } from '../support/walkFailure';

export const leftLoose = defineRule({
  id: 'left-loose',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener has not got its torque, or a ring or clamp is not seated, when the work is over.',
    why: 'It comes off in service.',
    wrong: inStep('- loosen: cover-screw\n  with: socket-10'),
    right: inStep(
      '- loosen: cover-screw\n  with: socket-10\n- tighten: cover-screw\n  torque: 9 ± 1 N·m\n  with: [torque-wrench-10, socket-10]',
    ),
  },
  messages: {
    fails: (part: string) => `The ${part} is still loose when the work is over; tighten or seat it`,
    pass: (part: string, written: string, stated: string) =>
      `The last pass for the ${part} is ${written}, below the ${stated} that the family states; add the final pass`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'left-loose') return;
      const name = nameOf(ctx.procedure, failure.about);
      const short = shortPass(failure, ctx.procedure);
      if (short === undefined) reportFailure(ctx, failure, 'fails', [name]);
      // Of a number that is right in another unit, the rule about torques tells.
      else if (!short.isSlip) reportFailure(ctx, failure, 'pass', [name, short.written, short.stated]);
    },
  },
});

/** The tightening that left it loose, where that is because its passes stop too early. */
function shortPass({ about, because, where }: Failure, procedure: ProcedureView | undefined): ShortPass | undefined {
  const tightening = instructionAt(procedure, because?.at);
  if (procedure === undefined || tightening?.verb !== 'tighten') return undefined;
  return shortPassOf(procedure, tightening, about, where);
}
