import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const dispositionMissing = defineRule({
  id: 'disposition-missing',
  group: 'walk',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A part that is renewed on condition goes back and nothing says on what condition, or a part that leaves the unit for good is neither thrown away nor given back.',
    why: 'A worn part goes back because nobody was told to look, or a customer misses a part that belongs to them.',
    wrong: inStep(
      '- remove: [cover-screw, cover, cap-nut, wheel]\n- install: wheel\n- inspect: wheel\n  look-for: cracks and rub marks\n  if-not: { replace: wheel }',
    ),
    right: inStep(
      '- remove: [cover-screw, cover, cap-nut, wheel]\n- inspect: wheel\n  look-for: cracks and rub marks\n  if-not: { replace: wheel }\n- install: wheel',
    ),
  },
  messages: {
    undecided: (part: string) =>
      `The ${part} is renewed on condition, but nothing decides whether it is used again; inspect or measure it before it is fitted, with "if-not"`,
    fate: (part: string) =>
      `The ${part} comes off and does not go back, and nothing says what becomes of it; discard it or return it`,
  },
  check: {
    failure(failure, ctx) {
      const name = nameOf(ctx.procedure, failure.about);
      if (failure.cause === 'undecided') reportFailure(ctx, failure, 'undecided', [name]);
      if (failure.cause === 'fate-open') reportFailure(ctx, failure, 'fate', [name]);
    },
  },
});
