import { objectRefs } from '../../analysis/instructions';
import type { ProcedureView } from '../../analysis/procedureView';
import type { ItemRange } from '../../syntax/node';
import type { Failure } from '../../walk/failure';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { instructionAt } from '../support/instructionAt';
import { nameOf, reportFailure } from '../support/walkFailure';

export const sealNotRenewed = defineRule({
  id: 'seal-not-renewed',
  group: 'walk',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A joint is closed over the seal that was in it when it was opened.',
    why: 'A seal that was squeezed once does not seal again; oil or gas leaks.',
    wrong: inStep('- remove: [cover-screw, cover]\n- install: cover'),
    right: inStep('- remove: [cover-screw, cover, cover-seal]\n- install: [cover-seal, cover]'),
  },
  messages: {
    fails: (seal: string, part: string) =>
      `The ${part} goes on over the old ${seal}; take the old ${seal} off and fit a new one first`,
  },
  check: {
    failure(failure, ctx) {
      if (failure.cause !== 'seal-used-again') return;
      const { procedure } = ctx;
      const at = closingPart(failure, procedure) ?? failure.at;
      const names = [nameOf(procedure, failure.about), nameOf(procedure, failure.other)] as const;
      reportFailure(ctx, { ...failure, at }, 'fails', [...names]);
    },
  },
});

/** Where the part that closes the joint is named, for the seal is not. */
function closingPart({ at, other }: Failure, procedure: ProcedureView | undefined): ItemRange | undefined {
  const closing = instructionAt(procedure, at);
  const refs = closing === undefined ? [] : objectRefs(closing);
  return refs.find((ref) => ref.id === other)?.range;
}
