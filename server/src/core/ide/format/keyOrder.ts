import type { Keys } from '../../model/shape';
import { BLANK, isBlank, isTrivia, type Line } from './line';

/** An entry of a map or list: the comments and blank lines above it, and its own lines. */
export interface Entry {
  readonly key: string | undefined;
  readonly lead: readonly Line[];
  readonly body: readonly Line[];
}

/** Entries that no blank line parts; `head` is what stands above them, down to the last blank line. */
interface Group {
  readonly head: readonly Line[];
  readonly entries: readonly Entry[];
}

/**
 * Puts the entries of a map into the order of its definition. Blank lines part groups that the writer made: each is put
 * in order by itself and stays together, and the groups follow each other by their first keys. A key that the definition
 * does not have stays behind the one it stood behind; where a key stands twice, the first counts, so nothing moves.
 */
export function inKeyOrder(entries: readonly Entry[], keys: Keys): readonly Entry[] {
  const known = new Map(Object.keys(keys).map((key, rank) => [key, rank]));
  if (new Set(entries.map(({ key }) => key)).size < entries.length) return entries;
  const groups = groupsOf(entries).map(({ head, entries }) => ({ head, entries: inRankOrder(entries, known) }));
  const ordered = ranked(groups, (group) => lowestRank(group, known));
  return ordered.flatMap((group, i) => withHead(group, ordered[i - 1], group === groups[0]));
}

function groupsOf(entries: readonly Entry[]): Group[] {
  const groups: { head: readonly Line[]; entries: Entry[] }[] = [];
  for (const entry of entries) {
    const own = entry.lead.findLastIndex(isBlank) + 1;
    const rest = { ...entry, lead: entry.lead.slice(own) };
    const group = groups.at(-1);
    if (group === undefined || own > 0 || endsApart(group))
      groups.push({ head: entry.lead.slice(0, own), entries: [rest] });
    else group.entries.push(rest);
  }
  return groups;
}

function inRankOrder(entries: readonly Entry[], known: ReadonlyMap<string, number>): Entry[] {
  return ranked(entries, (entry) => known.get(entry.key ?? ''));
}

function lowestRank({ entries }: Group, known: ReadonlyMap<string, number>): number | undefined {
  const ranks = entries.flatMap(({ key }) => known.get(key ?? '') ?? []);
  return ranks.length === 0 ? undefined : Math.min(...ranks);
}

/** Sorts by rank; what has none goes with what stands before it. */
function ranked<One>(all: readonly One[], rankOf: (one: One) => number | undefined): One[] {
  let last = -1;
  const withRanks = all.map((one) => {
    last = rankOf(one) ?? last;
    return { one, rank: last };
  });
  return withRanks.sort((a, b) => a.rank - b.rank).map(({ one }) => one);
}

/** Whether a blank line stands among the comments at the end of a group. */
function endsApart({ entries }: Group): boolean {
  const body = entries.at(-1)?.body ?? [];
  return body.slice(body.findLastIndex((line) => !isTrivia(line)) + 1).some(isBlank);
}

/** A blank line stands between groups wherever they went, and none comes to stand above the first. */
function withHead({ head, entries }: Group, before: Group | undefined, wasFirst: boolean): Entry[] {
  const from = before === undefined && !wasFirst ? head.findIndex((line) => !isBlank(line)) : 0;
  const kept = from < 0 ? [] : head.slice(from);
  const isApart = before === undefined || kept.some(isBlank) || endsApart(before);
  const parted = isApart ? kept : [BLANK, ...kept];
  return entries.map((entry, i) => (i === 0 ? { ...entry, lead: [...parted, ...entry.lead] } : entry));
}
