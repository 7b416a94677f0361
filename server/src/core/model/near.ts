import { distance } from 'fastest-levenshtein';

/** Those of the candidates that a misspelt name may have meant, nearest first, three at most. */
export function nearest(name: string, candidates: Iterable<string>): string[] {
  const wanted = name.toLowerCase();
  const limit = Math.max(1, Math.floor(wanted.length / 3));
  const scored: { candidate: string; score: number }[] = [];
  for (const candidate of new Set(candidates)) {
    const score = closeness(wanted, candidate.toLowerCase());
    if (score <= limit) scored.push({ candidate, score });
  }
  scored.sort((a, b) => a.score - b.score || a.candidate.localeCompare(b.candidate));
  return scored.slice(0, 3).map((one) => one.candidate);
}

/** Hyphens, spaces and underscores are the same slip; words in another order are a slip as well. */
function closeness(wanted: string, candidate: string): number {
  const plain = (text: string): string => text.replace(/[\s_-]+/g, '-');
  const sorted = (text: string): string => plain(text).split('-').sort().join('-');
  const straight = distance(plain(wanted), plain(candidate));
  if (straight === 0) return 0;
  if (straight === 2 && isSwap(wanted, candidate)) return 1;
  return Math.min(straight, sorted(wanted) === sorted(candidate) ? 1 : straight);
}

/** Two letters in the wrong order are the commonest slip of all: `titel`. */
function isSwap(wanted: string, candidate: string): boolean {
  const letters = (text: string): string => [...text].sort().join('');
  return wanted.length === candidate.length && letters(wanted) === letters(candidate);
}
