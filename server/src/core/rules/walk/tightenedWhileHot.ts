import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const tightenedWhileHot = defineRule({
  id: 'tightened-while-hot',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is tightened while it, or what it holds, is still hot from heating.',
    why: 'The parts shrink as they cool, and the clamping force is lost.',
    wrong: inStep(
      '- remove: [cover-screw, cover]\n- heat: wheel\n  until: 110 ± 5 °C\n- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m',
    ),
    right: inStep(
      '- remove: [cover-screw, cover]\n- heat: wheel\n  until: 110 ± 5 °C\n- cool: wheel\n  until: ≤ 30 °C\n- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m',
    ),
  },
  messages: {
    fails: (fastener: string, hot: string) =>
      `The ${fastener} is tightened while the ${hot} is hot; let it cool first, with a cool or wait instruction`,
    itself: (fastener: string) =>
      `The ${fastener} is tightened while it is hot; let it cool first, with a cool or wait instruction`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'hot-while-tightened') return;
      const { about, other } = failure;
      const fastener = nameOf(ctx.procedure, about);
      if (about === other) reportFailure(ctx, failure, 'itself', [fastener]);
      else reportFailure(ctx, failure, 'fails', [fastener, nameOf(ctx.procedure, other)]);
    },
  },
});
