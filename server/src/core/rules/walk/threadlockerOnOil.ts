import { defineRule } from '../defineRule';
import { EXAMPLE_PATHS, EXAMPLE_STORES } from '../exampleDocuments';
import { inStep, withFiles } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const threadlockerOnOil = defineRule({
  id: 'threadlocker-on-oil',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'Threadlocker is put on a thread that was oiled.',
    why: 'Threadlocker does not cure on oil, and the fastener works loose in service.',
    wrong: withFiles(
      inStep(
        '- remove: [cover-screw, cover, cap-nut]\n- apply: assembly-oil\n  to: cap-nut\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop',
      ),
      { [EXAMPLE_PATHS.stores]: `${EXAMPLE_STORES}  assembly-oil: { name: assembly oil, kind: oil }\n` },
    ),
    right: withFiles(
      inStep(
        '- remove: [cover-screw, cover, cap-nut]\n- clean: cap-nut\n  using: degreaser\n- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop',
      ),
      { [EXAMPLE_PATHS.stores]: `${EXAMPLE_STORES}  assembly-oil: { name: assembly oil, kind: oil }\n` },
    ),
  },
  messages: {
    fails: (part: string) =>
      `Threadlocker goes on the oiled thread of the ${part}; clean the thread first, or keep the oil off it`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'threadlocker-on-oil')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
