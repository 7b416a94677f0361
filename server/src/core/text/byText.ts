/** Longer texts are rarely met twice. */
const LONGEST = 500;

/**
 * A function of a text that remembers what it gave for the texts that it met last. Documents of one shop say the same
 * things over and over: the same torques, the same sentences. What it gives must depend on the text alone and never change.
 *
 * @param most how many texts are remembered at least; twice as many at most
 */
export function rememberedByText<Value>(work: (text: string) => Value, most = 2000): (text: string) => Value {
  let young = new Map<string, Value>();
  let old = new Map<string, Value>();
  return (text) => {
    const known = young.get(text);
    if (known !== undefined) return known;
    if (text.length > LONGEST) return work(text);
    if (young.size >= most) {
      old = young;
      young = new Map();
    }
    const own = copyOf(text);
    const value = old.get(own) ?? work(own);
    young.set(own, value);
    return value;
  };
}

/** A stretch of a document keeps the whole document in memory as long as it is kept itself; its copy does not. */
function copyOf(text: string): string {
  return JSON.parse(JSON.stringify(text)) as string;
}
