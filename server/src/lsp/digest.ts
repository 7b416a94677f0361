/**
 * A short text that stands for a long one: two sums of different kinds (FNV-1a and Adler-like) and the length. That all
 * three agree by chance is not to be feared.
 */
export function digestOf(text: string): string {
  let product = 0x811c9dc5;
  let sum = 1;
  let sums = 0;
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    product = Math.imul(product ^ code, 0x01000193);
    sum = (sum + code) % 65521;
    sums = (sums + sum) % 65521;
  }
  return `${text.length} ${product} ${sum} ${sums}`;
}
