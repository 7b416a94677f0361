import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const resultVoid = defineRule({
  id: 'result-void',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A measurement is made worthless by what is done after it.',
    why: 'The record holds a value that is not true of the unit that leaves.',
    wrong: withFamily(
      inStep(
        '- measure: end-play\n  with: dial-gauge\n- remove: [cover-screw, cover]\n- loosen: cap-nut\n- tighten: cap-nut',
      ),
      'limits:\n  end-play: { name: end play, accept: 0.04..0.09 mm, void-by: [cap-nut] }',
    ),
    right: withFamily(
      inStep(
        '- remove: [cover-screw, cover]\n- loosen: cap-nut\n- tighten: cap-nut\n- measure: end-play\n  with: dial-gauge',
      ),
      'limits:\n  end-play: { name: end play, accept: 0.04..0.09 mm, void-by: [cap-nut] }',
    ),
  },
  messages: {
    fails: (limit: string) => `The ${limit} is measured here and is not right; measure it again afterwards`,
    undone: (limit: string, part: string) =>
      `The ${limit} is measured here and then made void: the ${part} is touched after it; measure it again afterwards`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'result-void') return;
      const limit = nameOf(ctx.procedure, failure.about);
      const { undone } = failure;
      if (undone === undefined) reportFailure(ctx, failure, 'fails', [limit]);
      else reportFailure(ctx, failure, 'undone', [limit, nameOf(ctx.procedure, undone.part)]);
    },
  },
});
