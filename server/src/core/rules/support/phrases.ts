/** `a`, `a and b`, `a, b and c`; with `or` where that is the last word. */
export function listed(items: readonly string[], last: 'and' | 'or' = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** `; did you mean "a" or "b"?`-like endings of a message, or what to do where nothing comes near. */
export function didYouMean(near: readonly string[], otherwise: string): string {
  return near.length === 0
    ? otherwise
    : `did you mean ${listed(
        near.map((one) => `"${one}"`),
        'or',
      )}?`;
}

/** A text cut to a length that a message can hold. */
export function shortened(text: string, most = 40): string {
  return text.length > most ? `${text.slice(0, most - 1)}…` : text;
}
