import { type Unit, unitsIn } from '../model/facts';
import type { RefKind } from '../model/shape';
import type { Declared, Mention, PathRef } from '../model/values';

/** What the procedure as a whole is asked about again and again, gathered from a stretch of it. */
export interface UnitSummary {
  readonly declared: readonly Declared[];
  /** Ids by kind, without those of lists such as `tools`. */
  readonly named: ReadonlyMap<RefKind, ReadonlySet<string>>;
  /** `<id>` in texts that the fitter reads. */
  readonly mentions: readonly Mention[];
  readonly paths: readonly PathRef[];
}

/**
 * The summaries of a document in the order of its text: one of each step, which is kept with it, and one of each stretch
 * between. So what asks all of a long procedure after each key goes through its steps, and not through all that is in them.
 */
export function* summariesOf(root: Unit): Generator<UnitSummary> {
  yield summaryOf([root]);
  for (const child of root.children) {
    if (child.def === 'procedure/step') yield summaryOfStep(child);
    else if (child.def === 'procedure/phase') yield* summariesOf(child);
    else yield summaryOf(unitsIn(child));
  }
}

function summaryOfStep(step: Unit): UnitSummary {
  const known = step.summary as UnitSummary | undefined;
  if (known !== undefined) return known;
  const summary = summaryOf(unitsIn(step));
  step.summary = summary;
  return summary;
}

function summaryOf(units: readonly Unit[]): UnitSummary {
  const declared: Declared[] = [];
  const named = new Map<RefKind, Set<string>>();
  const mentions: Mention[] = [];
  const paths: PathRef[] = [];
  for (const { facts } of units) {
    declared.push(...facts.declared);
    paths.push(...facts.paths);
    for (const { ref } of facts.refs) if (!ref.listing) setOf(named, ref.kind).add(ref.id);
    for (const { key, prose } of facts.prose) if (key !== 'note') mentions.push(...prose.mentions);
  }
  return { declared, named, mentions, paths };
}

function setOf(named: Map<RefKind, Set<string>>, kind: RefKind): Set<string> {
  const known = named.get(kind) ?? new Set<string>();
  named.set(kind, known);
  return known;
}
