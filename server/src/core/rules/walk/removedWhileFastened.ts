import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const removedWhileFastened = defineRule({
  id: 'removed-while-fastened',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is taken off while a fastener still holds it.',
    why: 'Whoever follows the step pulls or levers against the fastener and bends the part or tears its thread.',
    wrong: inStep('- remove: cover'),
    right: inStep('- remove: [cover-screw, cover]'),
  },
  messages: {
    fails: (part: string, fastener: string) =>
      `The ${part} is taken off while the ${fastener} still holds it; take off or loosen the ${fastener} first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'still-fastened')
        reportFailure(ctx, failure, 'fails', [
          nameOf(ctx.procedure, failure.about),
          nameOf(ctx.procedure, failure.other),
        ]);
    },
  },
});
