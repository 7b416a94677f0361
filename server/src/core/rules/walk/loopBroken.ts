import { defineRule } from '../defineRule';
import { EXAMPLE_HEAD } from '../exampleDocuments';
import { inProcedure } from '../examples';
import { causeWords } from '../support/causeWords';
import { reportFailure } from '../support/walkFailure';

function twoSteps(target: string): ReturnType<typeof inProcedure> {
  const shown = `- step: open
  title: Open the unit
  do:
    - remove: [cover-screw, cover]
- step: turn
  title: Turn the wheel
  do:
    - check: free-turn
      if-not: { go-to: ${target}, at-most: 2, then: Ask the office. }
- step: close
  title: Close the unit
  do:
    - install: [cover-seal, cover, cover-screw]
    - tighten: cover-screw`;
  const steps = shown.replaceAll(/^/gm, '      ');
  return inProcedure(shown, `${EXAMPLE_HEAD}phases:\n  - phase: Work\n    steps:\n${steps}\n`);
}

export const loopBroken = defineRule({
  id: 'loop-broken',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'An instruction goes back to a step that does not come before it, or to one that cannot be carried out from there.',
    why: 'The fitter is sent to take off a part that is off already, and has to make up the way back.',
    wrong: twoSteps('open'),
    right: twoSteps('turn'),
  },
  messages: {
    fails: (step: string, words: string) =>
      `Step "${step}" cannot be carried out again from here: ${words}; go back to another step, or say what to do first`,
    lost: (step: string) => `Step "${step}" does not come before this one; go back to an earlier step`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'loop-broken') return;
      const { within, about } = failure;
      if (within === undefined) reportFailure(ctx, failure, 'lost', [about]);
      else reportFailure(ctx, failure, 'fails', [about, causeWords(ctx.procedure, within)]);
    },
  },
});
