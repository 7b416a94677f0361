import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const sealNotRenewed = defineRule({
  id: 'seal-not-renewed',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A joint is closed over the seal that was in it when it was opened.',
    why: 'A seal that was squeezed once does not seal again; oil or gas leaks.',
    wrong: inStep('- remove: [cover-screw, cover]\n- install: cover'),
    right: inStep('- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, cover]'),
  },
  messages: {
    fails: (seal: string, part: string) =>
      `The ${part} goes on over the old ${seal}; take the old ${seal} off and fit a new one first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'seal-used-again')
        reportFailure(ctx, failure, 'fails', [
          nameOf(ctx.procedure, failure.about),
          nameOf(ctx.procedure, failure.other),
        ]);
    },
  },
});
