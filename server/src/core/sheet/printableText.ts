/**
 * Makes text safe to print without changing what it says. Control characters would vanish, and marks that reverse
 * the reading order could turn a torque around, so both are shown as the replacement character.
 */
export function printableText(text: string): string {
  // Nearly every text is printable as it is, and to look is cheaper than to replace nothing.
  if (!changed.test(text)) return text;
  return text.replace(/[\t\n\r\u2028\u2029]+/gu, ' ').replace(unprintable, '\uFFFD');
}

// Controls, bidirectional marks, invisible operators, lone surrogates and the byte-order mark; the soft hyphen stays.
const unprintable = /[\p{Cc}\p{Cs}\u061C\u200E\u200F\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]/gu;
const changed = /[\u2028\u2029\p{Cc}\p{Cs}\u061C\u200E\u200F\u202A-\u202E\u2060-\u206F\uFEFF\uFFF9-\uFFFB]/u;

/**
 * Lets a very long word break at the line's end: a zero-width space after every `every` characters of a word
 * longer than `longest`, so that it can never run off the page.
 */
export function breakLongWords(text: string, longest = 28, every = 14): string {
  return text.replace(/\S+/gu, (word) => {
    const characters = [...word];
    if (characters.length <= longest) return word;
    const pieces: string[] = [];
    for (let at = 0; at < characters.length; at += every) pieces.push(characters.slice(at, at + every).join(''));
    return pieces.join('\u200B');
  });
}

/** Applies `change` to every string value of plain JSON data, except under the keys in `untouched`. */
export function mapTexts<T>(value: T, change: (text: string) => string, untouched: ReadonlySet<string>): T {
  if (typeof value === 'string') return change(value) as T;
  if (Array.isArray(value)) return value.map((entry) => mapTexts(entry, change, untouched)) as T;
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, entry]) => [
    key,
    untouched.has(key) ? entry : mapTexts(entry, change, untouched),
  ]);
  return Object.fromEntries(entries) as T;
}
