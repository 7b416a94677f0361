import type { BuildSet } from '../../builds';
import type { TemporaryLine } from '../sheet';
import type { BuildContext } from './buildContext';
import { type Change, changesOf, placesOf } from './changes';
import { combined, more, sum } from './pieceCounts';
import type { WalkedWork } from './walkedWork';

/** Blanks, plugs and pins that go in and must come out again: how many, in which steps. */
export function temporaryLines(work: WalkedWork | undefined, context: BuildContext): TemporaryLine[] {
  if (work === undefined) return [];
  const parts = work.unit.ids.filter((part) => work.unit.isTemporary(part));
  return parts.flatMap((part) => linesOf(part, work, context));
}

/** One line for each number that the open outcomes leave possible. */
function linesOf(part: string, work: WalkedWork, context: BuildContext): TemporaryLine[] {
  const { known } = work;
  const changes = [...changesOf(part, work)];
  const total = changes.reduce(
    (counts, change) => combined(counts, fitted(change, known), known, sum),
    new Map<number, BuildSet>(),
  );
  return [...total].map(([count, where]) => {
    const condition = context.conditions.condition(where, known);
    return {
      part: context.names.part(part, where).name,
      count,
      ...(condition === undefined ? {} : { condition }),
      in: placesOf(
        changes.filter((one) => isAny(fitted(one, where))),
        context,
      ),
      out: placesOf(
        changes.filter((one) => isAny(takenOut(one, where))),
        context,
      ),
    };
  });
}

const isAny = (counts: ReadonlyMap<number, BuildSet>): boolean => counts.size > 0;

function fitted({ before, after }: Change, where: BuildSet): Map<number, BuildSet> {
  return combined(after.pieces, before.pieces, where, more);
}

function takenOut({ before, after }: Change, where: BuildSet): Map<number, BuildSet> {
  return combined(before.pieces, after.pieces, where, more);
}
