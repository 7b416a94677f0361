import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const leftLoose = defineRule({
  id: 'left-loose',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A fastener has not got its torque, or a ring or clamp is not seated, when the work is over.',
    why: 'It comes off in service.',
    wrong: inStep('- loosen: cover-screw'),
    right: inStep('- loosen: cover-screw\n- tighten: cover-screw\n  torque: 9 ± 1 N·m'),
  },
  messages: {
    fails: (part: string) => `The ${part} is still loose when the work is over; tighten or seat it`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'left-loose') reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
