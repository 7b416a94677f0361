import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { nameOf, reportFailure } from '../support/walkFailure';

export const notCleaned = defineRule({
  id: 'not-cleaned',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part is fitted that was not cleaned since it came off, although the family asks for it.',
    why: 'Dirt under a part moves it out of line, and dirt on a thread takes up the torque.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- install: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [clean] }',
    ),
    right: withFamily(
      inStep('- remove: [cover-screw, cover, cap-nut]\n- clean: cap-nut\n  using: degreaser\n- install: cap-nut'),
      'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, behind: [cover], before-fitting: [clean] }',
    ),
  },
  messages: {
    fails: (part: string) =>
      `The ${part} is fitted without having been cleaned since it came off; clean it before it is fitted`,
    blasted: (part: string) =>
      `The ${part} is fitted with the dirt of blasting on it; wash it after it is blasted and before it is fitted`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'not-cleaned') return;
      // Of the ways to clean, blasting alone leaves dirt behind.
      const before = instructionAt(ctx.procedure, failure.because?.at);
      const key = before?.verb === 'clean' && before.by?.value === 'blast' ? 'blasted' : 'fails';
      reportFailure(ctx, failure, key, [nameOf(ctx.procedure, failure.about)]);
    },
  },
});
