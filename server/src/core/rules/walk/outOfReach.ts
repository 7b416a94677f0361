import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const outOfReach = defineRule({
  id: 'out-of-reach',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is cleaned, oiled, inspected or treated while something covers it.',
    why: 'The fitter cannot do it and passes over it.',
    wrong: inStep('- remove: [cover-screw, cover]\n- install: cover\n- clean: wheel\n  using: degreaser'),
    right: inStep('- remove: [cover-screw, cover]\n- clean: wheel\n  using: degreaser\n- install: cover'),
  },
  messages: {
    fails: (part: string, cover: string) =>
      `The ${part} cannot be reached behind the ${cover}; do this before the ${cover} goes on, or take the ${cover} off first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'unreachable')
        reportFailure(ctx, failure, 'fails', [
          nameOf(ctx.procedure, failure.about),
          nameOf(ctx.procedure, failure.other),
        ]);
    },
  },
});
