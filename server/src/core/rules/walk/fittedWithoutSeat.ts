import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { nameOf, reportFailure } from '../support/walkFailure';

export const fittedWithoutSeat = defineRule({
  id: 'fitted-without-seat',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted that was sent out and has not come back, or to something that was.',
    why: 'There is nothing to fit it to, so a step that fetches the other part is missing.',
    wrong: inStep('- remove: [cover-screw, cover]\n- send: core\n  to: the machine shop\n- install: cover'),
    right: inStep(
      '- remove: [cover-screw, cover]\n- send: core\n  to: the machine shop\n- receive: core\n- install: cover',
    ),
  },
  messages: {
    away: (part: string) =>
      `The ${part} is fitted here, but it was sent out and has not come back; take it in again before this`,
    fails: (part: string, carrier: string) =>
      `The ${part} is fitted to the ${carrier}, which was sent out; take the ${carrier} in again before this`,
    returned: (part: string) => `The ${part} is fitted here, but it was given back; leave one of the two out`,
    carrierReturned: (part: string, carrier: string) =>
      `The ${part} is fitted to the ${carrier}, which was given back; leave one of the two out`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'carrier-missing') return;
      const { about, other, because } = failure;
      const part = nameOf(ctx.procedure, about);
      const isReturned = instructionAt(ctx.procedure, because?.at)?.verb === 'return';
      if (about === other) reportFailure(ctx, failure, isReturned ? 'returned' : 'away', [part]);
      else reportFailure(ctx, failure, isReturned ? 'carrierReturned' : 'fails', [part, nameOf(ctx.procedure, other)]);
    },
  },
});
