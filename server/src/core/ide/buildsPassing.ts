import type { ProcedureView } from '../analysis/procedureView';
import { type BuildSet, type BuildSpace, buildsOf, countBuilds, pickBuild } from '../builds';
import type { Finding } from '../rules/finding';

/** How many builds of a procedure have no error; a build is a variant with the options of the finished unit. */
export interface BuildsPassing {
  readonly count: number;
  readonly passing: number;
}

/** A build that does not pass, with the first error in the text that holds for it. */
export interface FailingBuild {
  /** As a command line takes it: `v4-28r,cover-44`. */
  readonly id: string;
  readonly label: string;
  readonly error: Finding;
}

/**
 * Counts the builds for which no error holds, on any way that the unit may arrive and whatever the bench finds. Decided
 * on the sets of builds as a whole, so the number of builds costs nothing. Undefined where the family cannot be read,
 * since then nobody knows which builds there are.
 */
export function buildsPassing(procedure: ProcedureView, findings: readonly Finding[]): BuildsPassing | undefined {
  if (procedure.family === undefined) return undefined;
  const { space } = procedure;
  const count = countBuilds(space.everything, space);
  const errors = findings.filter(isError).map((error) => holdsFor(error, space));
  return { count, passing: count - countBuilds(space.union(errors), space) };
}

/** The builds that do not pass, the plainest first, at most `limit`. */
export function failingBuilds(
  procedure: ProcedureView,
  findings: readonly Finding[],
  limit: number,
): readonly FailingBuild[] {
  if (procedure.family === undefined) return [];
  const { space } = procedure;
  const errors = findings.filter(isError).map((error) => ({ error, holds: holdsFor(error, space) }));
  const failing = space.union(errors.map(({ holds }) => holds));
  return buildsOf(failing, space, limit).flatMap(({ id, label }) => {
    const picked = pickBuild(space, id);
    const first = picked.kind === 'picked' ? errors.find(({ holds }) => holds.overlaps(picked.set)) : undefined;
    return first === undefined ? [] : [{ id, label, error: first.error }];
  });
}

function isError(finding: Finding): boolean {
  return finding.severity === 'error';
}

/** A set of another space would be of another procedure or an older family; to let it count for all is the safe side. */
function holdsFor(finding: Finding, space: BuildSpace): BuildSet {
  const where = finding.where();
  return where === undefined || where.owner !== space ? space.everything : where;
}
