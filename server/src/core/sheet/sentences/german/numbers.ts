/** Figures that were written with a point, with the comma that German has: `G 6.3` gives `G 6,3`. */
export function decimalComma(written: string): string {
  return written.replace(/(?<=\d)\.(?=\d)/gu, ',');
}
