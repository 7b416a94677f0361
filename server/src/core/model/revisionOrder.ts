/** How a shop counts its revisions. */
export interface RevisionLetters {
  /** Letters that are left out since they are mistaken for others, in capitals, for example `IOQSXZ` (ASME Y14.35). */
  readonly skip: string;
}

interface Counted {
  /** 0 for a revision by number, 1 by letters: where both are used the letters come later, as a release follows drafts. */
  readonly series: 0 | 1;
  readonly main: number;
  readonly minor: number;
}

/** Where a revision stands in its series; undefined for a word that is in none, such as `draft`, or a letter that is skipped. */
function countOf(revision: string, { skip }: RevisionLetters): Counted | undefined {
  const [, letters = '', number = '', minor = ''] =
    /^([A-Z]*)(\d*)(?:[.-](\d+))?$/.exec(revision.trim().toUpperCase()) ?? [];
  if (letters === '' && number === '') return undefined;
  if (letters === '') return { series: 0, main: Number(number), minor: minor === '' ? 0 : Number(minor) };
  const main = countOfLetters(letters, alphabet(skip));
  return main === undefined ? undefined : { series: 1, main, minor: number === '' ? 0 : Number(number) };
}

function alphabet(skip: string): string {
  return [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].filter((letter) => !skip.toUpperCase().includes(letter)).join('');
}

/** A is 1, Z (or the last that is used) is followed by AA. */
function countOfLetters(letters: string, used: string): number | undefined {
  let count = 0;
  for (const letter of letters) {
    const place = used.indexOf(letter);
    if (place < 0) return undefined;
    count = count * used.length + place + 1;
  }
  return count;
}

function lettersOf(count: number, used: string): string {
  let letters = '';
  for (let rest = count; rest > 0; rest = Math.floor((rest - 1) / used.length))
    letters = (used[(rest - 1) % used.length] ?? '') + letters;
  return letters;
}

/** Below 0 where the first revision is the earlier one, 0 where they are one; undefined where nobody can tell. */
export function compareRevisions(first: string, second: string, letters: RevisionLetters): number | undefined {
  const [a, b] = [countOf(first, letters), countOf(second, letters)];
  if (a === undefined || b === undefined) return first.trim() === second.trim() ? 0 : undefined;
  return a.series - b.series || a.main - b.main || a.minor - b.minor;
}

/** The revision that follows: `C` after `B`, `J` after `H` where I is skipped, `1.3` after `1.2`; undefined where none can be told. */
export function nextRevision(revision: string, letters: RevisionLetters): string | undefined {
  const counted = countOf(revision, letters);
  const [, head = '', digits = ''] = /^(.*?)(\d*)$/s.exec(revision.trim()) ?? [];
  if (counted === undefined) return undefined;
  if (digits !== '') return `${head}${String(Number(digits) + 1).padStart(digits.length, '0')}`;
  return lettersOf(counted.main + 1, alphabet(letters.skip));
}
