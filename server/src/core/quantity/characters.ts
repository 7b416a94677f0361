/** Characters that look alike or mean the same, each with the one that the reader knows. One code unit for one, so that offsets stay. */
const alike: readonly (readonly [plain: string, variants: string])[] = [
  [
    ' ',
    '\t\n\r\u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u200b\u202f\u205f\u2060\u3000\ufeff',
  ],
  ['-', '\u2010\u2011\u2212\ufe63\uff0d'],
  ['–', '\u2012\u2014\u2015'],
  ['·', '\u2022\u2027\u2219\u22c5\u22c6\u30fb\u00d7\u2a2f'],
  ['µ', '\u03bc'],
  ['Ω', '\u2126'],
  ['°', '\u00ba\u02da'],
  ['K', '\u212a'],
  ["'", '\u2018\u2019\u00b4`'],
  ['"', '\u201c\u201d\u201f'],
  ['≤', '\u2a7d\u2266'],
  ['≥', '\u2a7e\u2267'],
  ['+', '\uff0b'],
];

const plainOf = new Map(
  alike.flatMap(([plain, variants]) => [...variants].map((variant) => [variant, plain] as const)),
);
const anyVariant = new RegExp(`[${alike.map(([, variants]) => variants).join('')}]`, 'gu');

/** `text` with look-alike characters replaced, of the same length, so that offsets into one hold for the other. */
export function plainCharacters(text: string): string {
  return text.replace(anyVariant, (variant) => plainOf.get(variant) ?? variant);
}
