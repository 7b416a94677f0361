import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const removedWhileCovered = defineRule({
  id: 'removed-while-covered',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is taken off, or a fastener, that is behind something still in place.',
    why: 'The fitter cannot reach it, or forces it past what is in the way.',
    wrong: inStep('- remove: cover-screw\n- remove: cap-nut'),
    right: inStep('- remove: [cover-screw, cover, cap-nut]'),
  },
  messages: {
    fails: (part: string, cover: string) =>
      `The ${part} is taken off while it is behind the ${cover}; take off the ${cover} first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'covered')
        reportFailure(ctx, failure, 'fails', [
          nameOf(ctx.procedure, failure.about),
          nameOf(ctx.procedure, failure.other),
        ]);
    },
  },
});
