import type { ProcedureView } from '../../../analysis/procedureView';
import type { Failure } from '../../../walk/failure';
import type { FixDraft } from '../../ruleContext';
import type { Candidate } from './candidate';
import { candidatesFor } from './candidates';
import { Scene } from './scene';
import { type Check, verdictOf } from './verify';

/** A walk costs some milliseconds, and a list of findings may ask for all of its fixes at once. */
const MOST_TRIED = 6;
const MOST_OFFERED = 2;

const remembered = new WeakMap<Failure, readonly FixDraft[]>();

/**
 * The changes of the text that certainly mend a failure: each was made on a copy, which was walked and checked: the
 * failure was gone and nothing new was found. None where no change is certain.
 */
export function walkFixes(procedure: ProcedureView, failure: Failure, check: Check): readonly FixDraft[] {
  const known = remembered.get(failure);
  if (known !== undefined) return known;
  const { family, document } = procedure;
  const found =
    family === undefined
      ? []
      : verified(procedure, failure, candidatesFor(new Scene(procedure, family, failure)), check);
  const drafts = found.map(
    ({ title, edits }): FixDraft => ({ title, edits: edits.map((edit) => ({ document, ...edit })) }),
  );
  remembered.set(failure, drafts);
  return drafts;
}

function verified(
  procedure: ProcedureView,
  failure: Failure,
  candidates: readonly Candidate[],
  check: Check,
): Candidate[] {
  const found: Candidate[] = [];
  const waiting = [...candidates];
  const tried = new Set<string>();
  while (tried.size < MOST_TRIED && found.length < MOST_OFFERED) {
    const candidate = waiting.shift();
    if (candidate === undefined) break;
    // Of the ways to do the same, the first that works is offered.
    const change = candidate.edits.map(({ span, text }) => `${span.start} ${span.end} ${text}`).join('\n');
    if (candidate.atLast === true && found.length > 0) break;
    if (tried.has(change) || found.some(({ title }) => title === candidate.title)) continue;
    tried.add(change);
    const verdict = verdictOf(procedure, failure, candidate.edits, check);
    if (verdict.mends) found.push(candidate);
    const further = verdict.mends ? undefined : candidate.further?.(verdict.added);
    if (further !== undefined) waiting.unshift(further);
  }
  return found;
}
