import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const sentWhileFitted = defineRule({
  id: 'sent-while-fitted',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is sent out, given back or thrown away while it is still in the unit.',
    why: 'Nobody can send what is not off, so the fitter takes it off without instructions, or sends the wrong piece.',
    wrong: inStep(
      '- remove: [cover-screw, cover]\n- send: cap-nut\n  to: Plating shop\n- receive: cap-nut\n- install: cap-nut\n- tighten: cap-nut',
    ),
    right: inStep(
      '- remove: [cover-screw, cover, cap-nut]\n- send: cap-nut\n  to: Plating shop\n- receive: cap-nut\n- install: cap-nut\n- tighten: cap-nut',
    ),
  },
  messages: {
    fails: (part: string) => `The ${part} is still in the unit here; take it off before it leaves`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'still-in-unit')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
