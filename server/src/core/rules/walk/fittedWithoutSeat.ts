import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const fittedWithoutSeat = defineRule({
  id: 'fitted-without-seat',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted to something that was sent out and has not come back.',
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
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'carrier-missing') return;
      const { about, other } = failure;
      const part = nameOf(ctx.procedure, about);
      if (about === other) reportFailure(ctx, failure, 'away', [part]);
      else reportFailure(ctx, failure, 'fails', [part, nameOf(ctx.procedure, other)]);
    },
  },
});
