/** Where a word of a text stands, with the form in which it is compared. */
export interface Word {
  readonly from: number;
  readonly to: number;
  readonly stem: string;
}

/** The words of a text: runs of letters and digits, so that a hyphen and a space between two words are the same. */
export function wordsOf(text: string): Word[] {
  return Array.from(text.matchAll(WORD), (match): Word => {
    const [word] = match;
    return { from: match.index, to: match.index + word.length, stem: stemOf(word.toLowerCase()) };
  });
}

const WORD = /[\p{L}\p{N}]+/gu;

/** One and several are the same word: socket and sockets, press and presses, body and bodies. */
function stemOf(word: string): string {
  if (word.length > 4 && word.endsWith('ies')) return `${word.slice(0, -3)}y`;
  if (/(?:ss|x|z|ch|sh)es$/.test(word)) return word.slice(0, -2);
  return word.length > 2 && word.endsWith('s') && !word.endsWith('ss') ? word.slice(0, -1) : word;
}

interface TrieNode<Value> {
  readonly next: Map<string, TrieNode<Value>>;
  readonly values: Value[];
}

/** Names by their words, so that all names that start at a word are found in one walk along the text. */
export class WordTrie<Value> {
  readonly #root: TrieNode<Value> = { next: new Map(), values: [] };

  add(name: string, value: Value): void {
    const words = wordsOf(name);
    if (words.length === 0) return;
    let node = this.#root;
    for (const { stem } of words) {
      const next = node.next.get(stem) ?? { next: new Map(), values: [] };
      node.next.set(stem, next);
      node = next;
    }
    if (!node.values.includes(value)) node.values.push(value);
  }

  /** The longest name that starts at a word of a text, with the number of its words. */
  longestAt(words: readonly Word[], start: number, text: string): { length: number; values: readonly Value[] } {
    let node: TrieNode<Value> | undefined = this.#root;
    let longest: { length: number; values: readonly Value[] } = { length: 0, values: [] };
    for (let at = start; at < words.length; at++) {
      if (at > start && !areJoined(text, words[at - 1], words[at])) break;
      node = node.next.get(words[at]?.stem ?? '');
      if (node === undefined) break;
      if (node.values.length > 0) longest = { length: at - start + 1, values: node.values };
    }
    return longest;
  }
}

/** Words on two sides of a comma or a full stop are not parts of one name. */
function areJoined(text: string, one: Word | undefined, next: Word | undefined): boolean {
  return one !== undefined && next !== undefined && !/[,;:!?()]|\.\s/.test(text.slice(one.to, next.from));
}
