import { defineRule } from '../defineRule';
import { EXAMPLE_HEAD, EXAMPLE_PATHS, EXAMPLE_STORES } from '../exampleDocuments';
import { type Example, inProcedure, withFamily, withFiles } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

/** Instructions of a procedure that lists an oil, on a unit whose nut asks for it. */
function withOil(shown: string): Example {
  const head = EXAMPLE_HEAD.replace('degreaser]', 'degreaser, assembly-oil]');
  const steps = shown.replaceAll(/^/gm, '          ');
  const text = `${head}phases:\n  - phase: Assemble\n    steps:\n      - step: only-step\n        title: Do the work\n        do:\n${steps}\n`;
  return withFiles(
    withFamily(
      inProcedure(shown, text),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [lubricate] }',
    ),
    { [EXAMPLE_PATHS.stores]: `${EXAMPLE_STORES}  assembly-oil: { name: assembly oil, kind: oil }\n` },
  );
}

export const notLubricated = defineRule({
  id: 'not-lubricated',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted that was not lubricated since it came off, although the family asks for it.',
    why: 'A dry part seizes at the first start, or its thread takes up the torque.',
    wrong: withOil('- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut'),
    right: withOil(
      '- remove: [cover-screw, cover, cap-nut]\n- apply: assembly-oil\n  to: cap-nut\n  amount: 1 drop\n- install: cap-nut',
    ),
  },
  messages: {
    fails: (part: string) =>
      `The ${part} is fitted without having been lubricated since it came off; put oil, grease or paste on it before it is fitted`,
    dry: (part: string) =>
      `The ${part} is fitted dry: nothing lubricates it after it was cleaned; put oil, grease or paste on it before it is fitted`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'not-lubricated') return;
      const key = failure.because?.what === 'cleaned' ? 'dry' : 'fails';
      reportFailure(ctx, failure, key, [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
