import { withOtherText } from '../../../analysis/otherText';
import { ProcedureView } from '../../../analysis/procedureView';
import type { Snapshot } from '../../../analysis/snapshot';
import type { BuildSet } from '../../../builds';
import type { SyntaxDocument } from '../../../syntax/readDocument';
import { applyEdits, type TextEdit } from '../../../text/span';
import type { Failure } from '../../../walk/failure';
import type { Trace } from '../../../walk/trace';
import { walkOf } from '../../../walk/walkProcedure';
import type { Finding } from '../../finding';

/** What becomes of a failure when the text is changed. */
export interface Verdict {
  /** It is gone, and nothing fails that did not fail before. */
  readonly mends: boolean;
  /** What fails then and did not before. */
  readonly added: readonly Failure[];
}

const DOES_NOT: Verdict = { mends: false, added: [] };

/** What a check finds in a reading of the document. */
export type Check = (snapshot: Snapshot, document: SyntaxDocument) => readonly Finding[];

/**
 * Makes the change on a copy, walks it and then checks it. A change that leaves the text in a worse shape, or that any
 * other rule has something new to say about, mends nothing.
 */
export function verdictOf(
  procedure: ProcedureView,
  failure: Failure,
  edits: readonly TextEdit[],
  check: Check,
): Verdict {
  const before = walkOf(procedure);
  const text = applyEdits(procedure.document.text, edits);
  const { snapshot, document } = withOtherText(procedure.snapshot, procedure.document, text);
  const changed = ProcedureView.of(snapshot, document);
  if (before === undefined || changed === undefined || problemsOf(changed) > problemsOf(procedure)) return DOES_NOT;
  const after = walkOf(changed);
  if (after === undefined || changed.space !== procedure.space) return DOES_NOT;
  const { mends, added } = compared(before, after, failure);
  return { mends: mends && bringsNothing(procedure, check, check(snapshot, document)), added };
}

/** What was found before any change, once for each check. */
const found = new WeakMap<Check, ReadonlyMap<string, number>>();
/** A fix makes up no amount; that one is missing then is for the writer to mend. */
const LEFT_OPEN: ReadonlySet<string> = new Set(['amount-missing']);

function bringsNothing({ snapshot, document }: ProcedureView, check: Check, after: readonly Finding[]): boolean {
  const before = found.get(check) ?? countsOf(check(snapshot, document));
  found.set(check, before);
  return [...countsOf(after)].every(([kind, count]) => count <= (before.get(kind) ?? 0));
}

/** How often each rule finds something about the same things, wherever it stands. */
function countsOf(findings: readonly Finding[]): Map<string, number> {
  const counts = new Map<string, number>();
  for (const { rule, about } of findings) {
    if (LEFT_OPEN.has(rule)) continue;
    const kind = [rule, ...about].join(' ');
    counts.set(kind, (counts.get(kind) ?? 0) + 1);
  }
  return counts;
}

/** How many problems the text and its shape have. While it has more, the walk is silent about what it cannot know. */
function problemsOf(procedure: ProcedureView): number {
  let count = procedure.document.problems.length;
  for (const unit of procedure.units()) count += unit.problems.length;
  return count;
}

function compared(before: Trace, after: Trace, failure: Failure): Verdict {
  const [old, now] = [byKind(before.failures), byKind(after.failures)];
  // Forks are numbered by their order, so that sets of two walks compare only where both have the same ones.
  const alike = forksOf(before) === forksOf(after);
  const added = [...now].flatMap(([kind, failures]) => {
    const known = old.get(kind) ?? [];
    if (failures.length > known.length) return failures.slice(known.length);
    return alike ? failures.filter(({ where }) => !isCovered(where, known)) : [];
  });
  const kind = kindOf(failure);
  const gone = (now.get(kind)?.length ?? 0) < (old.get(kind)?.length ?? 0);
  return { mends: gone && added.length === 0, added };
}

function forksOf({ forks }: Trace): string {
  return forks.map(({ taken }) => taken).join('\n');
}

function isCovered(where: BuildSet, failures: readonly Failure[]): boolean {
  return failures.reduce((left, one) => left.minus(one.where), where).isEmpty;
}

function byKind(failures: readonly Failure[]): Map<string, Failure[]> {
  const kinds = new Map<string, Failure[]>();
  for (const failure of failures) {
    const kind = kindOf(failure);
    const known = kinds.get(kind);
    if (known === undefined) kinds.set(kind, [failure]);
    else known.push(failure);
  }
  return kinds;
}

function kindOf({ cause, about, other, within }: Failure): string {
  return [cause, about, other, ...(within === undefined ? [] : [kindOf(within)])].join(' ');
}
