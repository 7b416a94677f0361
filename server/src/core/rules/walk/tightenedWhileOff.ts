import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { nameOf, reportFailure } from '../support/walkFailure';

export const tightenedWhileOff = defineRule({
  id: 'tightened-while-off',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is tightened, or a ring seated, before what it holds is there.',
    why: 'The torque goes into nothing and is given as done.',
    wrong: inStep(
      '- remove: [cover-screw, cover, cover-seal]\n- install: cover-seal\n- install: cover-screw\n- tighten: cover-screw\n  torque: 9 ± 1 N·m\n- install: cover',
    ),
    right: inStep(
      '- remove: [cover-screw, cover, cover-seal]\n- install: cover-seal\n- install: cover\n- install: cover-screw\n- tighten: cover-screw\n  torque: 9 ± 1 N·m',
    ),
  },
  messages: {
    fails: (fastener: string, held: string) =>
      `The ${fastener} is tightened while the ${held} is not there; fit the ${held} first`,
    seated: (fastener: string, held: string) =>
      `The ${fastener} is seated while the ${held} is not there; fit the ${held} first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'nothing-held') return;
      const { procedure } = ctx;
      const key = instructionAt(procedure, failure.at)?.verb === 'seat' ? 'seated' : 'fails';
      reportFailure(ctx, failure, key, [nameOf(procedure, failure.about), nameOf(procedure, failure.other)]);
    },
  },
});
