import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const removedTwice = defineRule({
  id: 'removed-twice',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is loosened or taken off that is not there any more.',
    why: 'A step that cannot be done makes the fitter doubt all the others, and the step that was meant is missing.',
    wrong: inStep('- remove: cover-screw\n- remove: cover-screw'),
    right: inStep('- remove: cover-screw'),
  },
  messages: {
    fails: (part: string) => `The ${part} is not in place here; leave this out, or fit the ${part} before it`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'not-fitted') reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
