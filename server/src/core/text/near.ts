import { distance } from 'fastest-levenshtein';

/** Those of the candidates that a misspelt name may have meant, nearest first, three at most. */
export function nearest(name: string, candidates: Iterable<string>): string[] {
  const wanted = plain(name);
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  const scored: { candidate: string; score: number }[] = [];
  for (const candidate of new Set(candidates)) {
    const score = closeness(wanted, plain(candidate), limit);
    if (score <= limit) scored.push({ candidate, score });
  }
  scored.sort((a, b) => a.score - b.score || a.candidate.localeCompare(b.candidate));
  return scored.slice(0, 3).map((one) => one.candidate);
}

/** Hyphens, spaces and underscores are the same slip. */
function plain(text: string): string {
  return text.toLowerCase().replace(/[\s_-]+/g, '-');
}

/** How many letters differ; words in another order are one slip. Texts whose lengths alone differ too much are not compared. */
function closeness(wanted: string, candidate: string, limit: number): number {
  if (Math.abs(wanted.length - candidate.length) > limit) return Number.POSITIVE_INFINITY;
  const straight = distance(wanted, candidate);
  if (straight <= 1 || wanted.length !== candidate.length) return straight;
  if (straight === 2 && sorted(wanted, '') === sorted(candidate, '')) return 1;
  return wanted.includes('-') && sorted(wanted, '-') === sorted(candidate, '-') ? 1 : straight;
}

/** The letters or words of a text in order: two letters that changed places are the commonest slip of all. */
function sorted(text: string, separator: string): string {
  return text.split(separator).sort().join(separator);
}
