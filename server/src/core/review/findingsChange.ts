import { type Finding, identityOf } from '../rules/finding';

/** Findings of two versions: those that are new, those that are gone, and those that are in both. */
export interface FindingsChange {
  readonly added: readonly Finding[];
  readonly gone: readonly Finding[];
  readonly still: readonly Finding[];
}

/**
 * Tells by the identity of findings which are new: rule, document, step and what it is about, never a line. Where one
 * identity stands several times, only as many as there are more are new. `nameOf` gives a document's name in both.
 */
export function compareFindings(
  before: readonly Finding[],
  after: readonly Finding[],
  nameOf: (finding: Finding) => string,
): FindingsChange {
  const open = new Map<string, Finding[]>();
  for (const one of before) {
    const id = identityOf(one, nameOf(one));
    open.set(id, [...(open.get(id) ?? []), one]);
  }
  const added: Finding[] = [];
  const still: Finding[] = [];
  for (const one of after) {
    const left = open.get(identityOf(one, nameOf(one)));
    if (left?.shift() === undefined) added.push(one);
    else still.push(one);
  }
  return { added, still, gone: [...open.values()].flat() };
}
