import type { ProcedureView } from '../../../server/src/core/analysis/procedureView';
import type { BuildSet } from '../../../server/src/core/builds';
import type { Instruction } from '../../../server/src/core/model/generated/types';
import type { Failure } from '../../../server/src/core/walk/failure';
import { walkOf } from '../../../server/src/core/walk/walkProcedure';
import type { FirstFailure } from './referenceWalker';
import type { World } from './world';

/** The world with the ways that it goes at each fork, as a set in which nothing is left open. */
export function pointOf(procedure: ProcedureView, world: World): BuildSet {
  let point = world.point;
  world.forks.forEach((taken, index) => {
    const side = procedure.space.fork(index);
    point = taken ? point.and(side) : point.minus(side);
  });
  return point;
}

/** What the fast walk says of one world: the failures of the first instruction that fails in it. */
export function fastFirst(procedure: ProcedureView, world: World): FirstFailure {
  const point = pointOf(procedure, world);
  const failures = (walkOf(procedure)?.failures ?? []).filter((failure) => holds(failure.where, point));
  const places = failures.map((failure) => placeOf(procedure, failure));
  const first = Math.min(...places);
  const here = failures.filter((_failure, index) => places[index] === first);
  return { instruction: instructionsOf(procedure)[first] ?? 'end', failures: here };
}

function holds(where: BuildSet, point: BuildSet): boolean {
  if (point.isWithin(where)) return true;
  if (point.overlaps(where)) throw new Error('A failure depends on something that the world leaves open');
  return false;
}

export function instructionsOf(procedure: ProcedureView): Instruction[] {
  return procedure.steps.flatMap(({ instructions }) => instructions.map(({ instruction }) => instruction));
}

/** The number of the innermost instruction around a failure; of the next one where it stands above all of a step. */
function placeOf(procedure: ProcedureView, { at }: Failure): number {
  const spans = instructionsOf(procedure).map(({ node }) => procedure.document.spanOf(node));
  if (at === undefined) return spans.length;
  const { start } = procedure.document.spanOf(at);
  const around = spans.findLastIndex((span) => span.start <= start && start < span.end);
  return around >= 0 ? around : spans.findIndex((span) => span.start >= start);
}
