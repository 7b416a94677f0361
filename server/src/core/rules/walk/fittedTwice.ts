import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const fittedTwice = defineRule({
  id: 'fitted-twice',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted that is in place already.',
    why: 'Either a removal is missing before it or a part is called by the wrong name, and the right one is forgotten.',
    wrong: inStep('- remove: cover-screw\n- install: cover'),
    right: inStep('- remove: [cover-screw, cover]\n- install: cover'),
  },
  messages: {
    fails: (part: string) => `The ${part} is in place already; leave this out, or take the ${part} off before it`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'fitted-already')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
