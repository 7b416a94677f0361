import { defineRule } from '../defineRule';
import { EXAMPLE_PATHS, EXAMPLE_STORES } from '../exampleDocuments';
import { inStep, withFamily, withFiles } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const notLubricated = defineRule({
  id: 'not-lubricated',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part is fitted that was not lubricated since it came off, although the family asks for it.',
    why: 'A dry part seizes at the first start, or its thread takes up the torque.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [lubricate] }',
    ),
    right: withFiles(
      withFamily(
        inStep(
          '- remove: [cover-screw, cover, cap-nut]\n- apply: assembly-oil\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut',
        ),
        'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [lubricate] }',
      ),
      { [EXAMPLE_PATHS.stores]: `${EXAMPLE_STORES}  assembly-oil: { name: assembly oil, kind: oil }\n` },
    ),
  },
  messages: {
    fails: (part: string) =>
      `The ${part} is fitted without having been lubricated since it came off; put oil, grease or paste on it before it is fitted`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause === 'not-lubricated')
        reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
