import type { ProcedureView } from '../../analysis/procedureView';
import type { ItemRange } from '../../syntax/node';
import type { Deed, Failure } from '../../walk/failure';
import { walkOf } from '../../walk/walkProcedure';
import type { Messages } from '../defineRule';
import type { RuleContext } from '../ruleContext';
import { nameOf } from './nameOf';
import { walkFixes } from './walkFixes';

export { nameOf } from './nameOf';

/** What an earlier instruction did, as the place that a finding points to says it. */
const DONE = {
  fitted: 'is fitted here',
  removed: 'is taken off here',
  loosened: 'is loosened here',
  tightened: 'is tightened here',
  cleaned: 'is cleaned here',
  applied: 'is treated here',
  measured: 'was done here',
  seated: 'is seated here',
  marked: 'is marked here',
  adjusted: 'is set here',
  heated: 'is heated here',
  sent: 'leaves here',
  discarded: 'is thrown away here',
} as const satisfies Record<Deed, string>;

/** Reports what the walk found, at the instruction that shows it, with the one that led to it. */
export function reportFailure<M extends Messages, Key extends keyof M & string>(
  ctx: RuleContext<M>,
  failure: Failure,
  key: Key,
  args: Parameters<M[Key]>,
): void {
  const { procedure } = ctx;
  if (procedure === undefined) return;
  const { because } = failure;
  const about = failure.other === undefined ? [failure.about] : [failure.about, failure.other];
  const led = failure.undone ?? (failure.at === undefined ? undefined : because);
  ctx.report(placeOf(procedure, failure), key, args, {
    about,
    where: { set: failure.where, space: procedure.space, forks: (index) => walkOf(procedure)?.forks[index] },
    related:
      led === undefined ? [] : [{ range: led.at, message: `The ${nameOf(procedure, led.part)} ${DONE[led.what]}` }],
    fixes: () => walkFixes(procedure, failure, ctx.around.findingsIn),
  });
}

/** At the end of the work, what led to it is the place to look at; where nothing did, the last step. */
function placeOf(procedure: ProcedureView, failure: Failure): ItemRange {
  const last = procedure.steps.at(-1)?.step;
  return failure.at ?? failure.because?.at ?? last?.step?.node ?? last?.node ?? procedure.unit.node;
}
