import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { nameOf, reportFailure } from '../support/walkFailure';

export const cleaningForbidden = defineRule({
  id: 'cleaning-forbidden',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part is cleaned in a way that the family forbids for it.',
    why: 'The cleaning spoils the part: blasting rounds its edges, caustic eats aluminium.',
    wrong: withFamily(
      inStep('- remove: [cover-screw, cover]\n- clean: wheel\n  by: blast'),
      'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], never-clean-with: [blast] }',
    ),
    right: withFamily(
      inStep('- remove: [cover-screw, cover]\n- clean: wheel\n  by: wash'),
      'parts:\n  wheel: { name: wheel, sits-on: core, fastened-by: [cap-nut], behind: [cover], never-clean-with: [blast] }',
    ),
  },
  messages: {
    fails: (part: string, way: string) =>
      `The ${part} must not be cleaned by "${way}", which the family lists under never-clean-with; clean it in another way`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'cleaning-forbidden') return;
      const cleaning = instructionAt(ctx.procedure, failure.at);
      const way = cleaning?.verb === 'clean' ? cleaning.by?.value : undefined;
      reportFailure(ctx, failure, 'fails', [nameOf(ctx.procedure, failure.about), way ?? '']);
    },
  },
});
