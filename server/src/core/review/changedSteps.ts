import { documentValue } from '../analysis/documentUnit';
import type { Uri } from '../analysis/uri';
import type { Change } from './change';
import type { Comparison } from './compareVersions';

/** Which steps of a procedure print otherwise than in an earlier text, for one build. */
export interface StepsChanged {
  /** The revision then, where it was another one. */
  readonly revision: string | undefined;
  readonly steps: ReadonlySet<string>;
  /** Titles of the steps that are gone. */
  readonly gone: readonly string[];
}

/** Nothing where the comparison does not hold the procedure in both versions. */
export function stepsChanged(comparison: Comparison, uri: Uri, build: string): StepsChanged | undefined {
  const earlier = earlierOf(comparison, uri);
  if (earlier === undefined) return undefined;
  const shown = comparison.changes.filter((change) => change.class !== 'looks');
  const steps = shown.flatMap((change) => stepsOn(change, uri, build));
  const gone = shown.filter(
    ({ kind, of, before: side }) => kind === 'removed' && of.kind === 'step' && side?.uri === earlier.uri,
  );
  const goneIds = new Set(gone.map(({ of }) => of.id));
  const then = documentValue(earlier.document, 'procedure')?.revision?.text;
  return {
    revision: then,
    steps: new Set(steps.filter((id) => !goneIds.has(id))),
    gone: gone.map(({ of }) => of.name),
  };
}

function earlierOf({ pairs }: Comparison, uri: Uri) {
  const pair = pairs.find(({ after }) => after.uri === uri);
  return pair === undefined ? undefined : { uri: pair.before.uri, document: pair.before };
}

function stepsOn({ reached }: Change, uri: Uri, build: string): readonly string[] {
  return reached.flatMap((one) => {
    const isOn = one.uri === uri && (one.more > 0 || one.builds.some((id) => isSameBuild(id, build)));
    return isOn ? one.steps : [];
  });
}

/** How the unit arrives is not said of a finished build. */
function isSameBuild(listed: string, picked: string): boolean {
  const finished = (id: string) =>
    id
      .split(',')
      .filter((name) => !name.includes('='))
      .toSorted()
      .join(',');
  return finished(listed) === finished(picked);
}
