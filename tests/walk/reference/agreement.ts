import type { ProcedureView } from '../../../server/src/core/analysis/procedureView';
import { fastFirst } from './fastWalk';
import { type FirstFailure, walkWorld } from './referenceWalker';
import { describeWorld, type World } from './world';

/**
 * Where the fast walk and the reference disagree in a world, in words; empty where they agree. Both must name the same
 * instruction first, and the fast walk no cause that the reference does not see. It may leave out what it told before.
 */
export function disagreement(procedure: ProcedureView, world: World): string {
  const slow = walkWorld(procedure, world);
  const fast = fastFirst(procedure, world);
  const seen = new Set(slow.failures.map(causeOf));
  const isSame = fast.instruction === slow.instruction && fast.failures.length > 0 === slow.failures.length > 0;
  if (isSame && fast.failures.every((failure) => seen.has(causeOf(failure)))) return '';
  return `${describeWorld(world)}\n  fast: ${told(procedure, fast)}\n  reference: ${told(procedure, slow)}`;
}

/** What breaks in a loop is told at the loop, whatever it is about. */
function causeOf({ cause, about }: FirstFailure['failures'][number]): string {
  return cause === 'loop-broken' ? cause : `${cause} ${about}`;
}

/** The failures of one instruction in words. */
export function told(procedure: ProcedureView, { instruction, failures }: FirstFailure): string {
  if (failures.length === 0) return 'nothing';
  const span = instruction === 'end' ? undefined : procedure.document.spanOf(instruction.node);
  const text = span === undefined ? 'the end' : procedure.document.text.slice(span.start, span.end).split('\n')[0];
  const line = span === undefined ? '' : ` (line ${procedure.document.text.slice(0, span.start).split('\n').length})`;
  return `${text}${line}: ${failures.map(({ cause, about, other }) => `${cause} ${about} ${other ?? ''}`.trim()).join('; ')}`;
}
