import { shown } from '../report/text';
import type { ReleasedAnswer, ReleasedSheet } from './releasedSheets';
import type { AttachedSource, SheetIdentity } from './sheetFile';
import type { HistoryAnswer } from './textHistory';

/** What has changed, come or gone between two lists of sources; empty where nothing is known of the earlier one. */
export function changesSince(before: readonly AttachedSource[], now: readonly AttachedSource[]): string {
  if (before.length === 0) return '';
  const old = byName(before);
  const current = byName(now);
  const changed = before.filter(({ name, sha }) => current.has(name) && current.get(name) !== sha);
  const groups: [string, readonly AttachedSource[]][] = [
    ['changed', changed],
    ['new', now.filter(({ name }) => !old.has(name))],
    ['gone', before.filter(({ name }) => !current.has(name))],
  ];
  const told = groups.filter(([, files]) => files.length > 0);
  return told.map(([word, files]) => `${word} ${files.map(({ name }) => name).join(', ')}`).join('; ');
}

function byName(list: readonly AttachedSource[]): ReadonlyMap<string, string> {
  return new Map(list.map(({ name, sha }) => [name, sha]));
}

export function historyWords(answer: HistoryAnswer): string[] {
  if (answer.is === 'no-history') return [`Its history could not be searched: ${answer.why}.`];
  if (answer.is === 'absent')
    return [
      `No commit has its text (${answer.commits} searched): it was printed from a text that was never committed so.`,
    ];
  const { commit, date, subject, revision } = answer;
  return [`It is the text of commit ${commit.slice(0, 10)} of ${date}, revision ${revision}: ${subject}`];
}

export function releasedWords(
  { ofDocument, same, isNewest }: ReleasedAnswer,
  folder: string,
  sheet: SheetIdentity,
): string[] {
  const newest = ofDocument[0];
  if (newest === undefined) return [`${shown(folder)} holds no sheet of ${sheet.document}.`];
  if (same === undefined)
    return [`None of the released sheets of ${sheet.document} is made from its text; the newest is ${named(newest)}.`];
  if (isNewest) return [`Released: it is made from the same text as ${named(same)}, and no later one is there.`];
  return [`Superseded: it is made from the same text as ${named(same)}; the newest is ${named(newest)}.`];
}

function named({ path, sheet }: ReleasedSheet): string {
  return `${shown(path)} (revision ${sheet.revision}${sheet.date === undefined ? '' : ` of ${sheet.date}`})`;
}

/** What others wrote, on one line and without what would steer a terminal. */
export function printableLine(text: string): string {
  return text.replace(/[\p{Cc}\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069]+/gu, ' ');
}
