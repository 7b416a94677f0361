import { documentUnit } from '../analysis/documentUnit';
import { ProcedureView } from '../analysis/procedureView';
import { UNIT_SHAPES } from '../model/generated/shapes';
import { camel } from '../model/typeNames';
import type { Entry } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import { subjectOfDocument } from './documentChanges';
import { matchEntries } from './entryChanges';
import { type Matched, type Matching, matchSequence, wordLikeness } from './matchSequence';
import type { Renamed } from './meaning';
import { matchSteps } from './stepChanges';
import { documentsOf, nameIn, type Version } from './version';

/** The documents of two versions: by path, then by number or id, then by what is in them. */
export function matchDocuments(before: Version, after: Version): Matching<SyntaxDocument> {
  const names = new Map<SyntaxDocument, string>();
  for (const version of [before, after])
    for (const document of documentsOf(version)) names.set(document, nameIn(version, document.uri));
  return matchSequence(documentsOf(before), documentsOf(after), {
    identity: (document) => names.get(document),
    likeness: (a, b) => (a.kind === b.kind ? documentLikeness(a, b) : 0),
    least: 0.6,
  });
}

function documentLikeness(a: SyntaxDocument, b: SyntaxDocument): number {
  const [first, second] = [subjectOfDocument(a).id, subjectOfDocument(b).id];
  if (first !== '' && first === second) return 1;
  return a.text === b.text ? 1 : wordLikeness(a.text, b.text) * 0.99;
}

/**
 * What the ids that were renamed are called now: of parts, tools, limits and steps. An id that is renamed in one document
 * and stays in another is looked for under both names wherever this is asked.
 */
export function renamesIn(pairs: readonly Matched<SyntaxDocument>[], before: Version, after: Version): Renamed {
  const names = new Map<string, string>();
  for (const pair of pairs) {
    if (pair.before.text === pair.after.text) continue;
    entryRenames(pair, names);
    stepRenames(pair, before, after, names);
  }
  return names.size === 0 ? (id) => id : (id) => names.get(id) ?? id;
}

function entryRenames({ before, after }: Matched<SyntaxDocument>, names: Map<string, string>): void {
  const value = (document: SyntaxDocument) =>
    documentUnit(document)?.value as Readonly<Record<string, unknown>> | undefined;
  const [old, now] = [value(before), value(after)];
  if (old === undefined || now === undefined) return;
  for (const [key, { shape }] of Object.entries(UNIT_SHAPES[after.kind]?.shape.keys ?? {})) {
    if (shape.as !== 'entries' || shape.declares === undefined) continue;
    const [first, second] = [old[camel(key)] ?? [], now[camel(key)] ?? []];
    const matched = matchEntries({ before: first as Entry<unknown>[], after: second as Entry<unknown>[] }, shape);
    for (const pair of matched.pairs)
      if (pair.before.id.id !== pair.after.id.id) names.set(pair.before.id.id, pair.after.id.id);
  }
}

function stepRenames(pair: Matched<SyntaxDocument>, before: Version, after: Version, names: Map<string, string>): void {
  const old = ProcedureView.of(before.snapshot, pair.before);
  const now = ProcedureView.of(after.snapshot, pair.after);
  if (old === undefined || now === undefined) return;
  for (const step of matchSteps({ before: old, after: now }).pairs)
    if (step.before.id !== step.after.id) names.set(step.before.id, step.after.id);
}
