const NARROW = /[ijl.,:;'()|ftr\-I ]/u;
const WIDE = /[mwMWA-HJ-Z@%—]/u;

/** A text cut with an ellipsis to about a width in pixels. Widths are estimated, since nothing can be measured here. */
export function shortened(text: string, width: number, size: number): string {
  if (widthOf(text, size) <= width) return text;
  const kept: string[] = [];
  let used = widthOf('…', size);
  for (const character of text) {
    used += widthOf(character, size);
    if (used > width) break;
    kept.push(character);
  }
  const cut = kept.join('').trimEnd();
  return cut === '' ? '' : `${cut}…`;
}

function widthOf(text: string, size: number): number {
  let width = 0;
  for (const character of text) width += NARROW.test(character) ? 0.33 : WIDE.test(character) ? 0.74 : 0.565;
  return width * size;
}
