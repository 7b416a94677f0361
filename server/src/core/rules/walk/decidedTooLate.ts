import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { nameOf, reportFailure } from '../support/walkFailure';

export const decidedTooLate = defineRule({
  id: 'decided-too-late',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'An instruction depends on what has not been found out, decided, measured or chosen by then.',
    why: 'The fitter stands before a step that nobody can tell whether to do, and guesses.',
    wrong: inStep('- say: Balance the rotor.\n  when: wheel=renewed\n- inspect: wheel\n  if-not: { replace: wheel }'),
    right: inStep(
      '- remove: [cover-screw, cover]\n- inspect: wheel\n  if-not: { replace: wheel }\n- say: Balance the rotor.\n  when: wheel=renewed',
    ),
  },
  messages: {
    decided: (part: string) =>
      `Whether the ${part} is used again or renewed is not decided by now; inspect or measure it first, and say with "if-not" when it is renewed`,
    found: (outcome: string) => `The ${outcome} is not known by now; identify it first`,
    measured: (what: string) => `The ${what} has not been taken by now; measure it first`,
    chosen: (part: string) => `The size of the ${part} has not been chosen by now; choose it before it is fitted`,
  },
  check: {
    failure(failure, ctx) {
      const { cause, about, other } = failure;
      const name = nameOf(ctx.procedure, about);
      if (cause === 'size-not-chosen') reportFailure(ctx, failure, 'chosen', [name]);
      if (cause === 'not-measured') reportFailure(ctx, failure, 'measured', [nameOf(ctx.procedure, other)]);
      if (cause !== 'undecided-yet') return;
      const isPart = ctx.family?.part(about) !== undefined;
      reportFailure(ctx, failure, isPart ? 'decided' : 'found', [name]);
    },
  },
});
