import { seededRandom } from './seededRandom';

/** One change of a text, as a client sends it: offsets of the text before it. */
export interface Edit {
  readonly from: number;
  readonly to: number;
  readonly text: string;
  /** While `broken`, the text cannot be read as a whole. */
  readonly state: 'whole' | 'broken';
}

/**
 * What a writer does, as one change after another: seven of ten type a character inside a value, one adds a line, one
 * adds, removes or moves a step, and one opens a quote and types ten characters before it is closed. The script is made
 * beforehand, so that two servers are sent the very same.
 */
export function editScript(text: string, count: number, seed: number): Edit[] {
  const random = seededRandom(seed);
  const script = new Script(text, random);
  for (let i = 0; i < count; i++) {
    const share = random();
    if (share < 0.7) script.typeInValue();
    else if (share < 0.8) script.addLine();
    else if (share < 0.9) script.changeSteps();
    else script.breakForTenKeys();
  }
  return script.edits;
}

export function applied(text: string, { from, to, text: added }: Edit): string {
  return text.slice(0, from) + added + text.slice(to);
}

const VALUE = /^\s+(?:- )?[a-z-]+: (?=[^\s{["'>|])/;
const STEP = /^ {6}- step: /gm;

class Script {
  readonly edits: Edit[] = [];
  #text: string;
  readonly #random: () => number;
  readonly #newline: string;

  constructor(text: string, random: () => number) {
    this.#text = text;
    this.#random = random;
    this.#newline = text.includes('\r\n') ? '\r\n' : '\n';
  }

  typeInValue(): void {
    const at = this.#inValue();
    this.#insert(at, this.#letter(), 'whole');
  }

  addLine(): void {
    this.#insert(this.#lineEnd(this.#inValue()), this.#newline, 'whole');
  }

  changeSteps(): void {
    const starts = [...this.#text.matchAll(STEP)].map((match) => match.index);
    const nth = 1 + Math.floor(this.#random() * (starts.length - 3));
    const [from = 0, to = 0, next = 0] = starts.slice(nth, nth + 3);
    const step = this.#text.slice(from, to);
    const kind = this.#random();
    // A heading of a phase between two steps stays where it is.
    if (/^ {2}- phase: /m.test(step)) this.typeInValue();
    else if (kind < 1 / 3) this.#replace(from, to, '', 'whole');
    else if (kind < 2 / 3)
      this.#insert(from, step.replace(/- step: (\S+)/, `- step: $1-${this.edits.length}`), 'whole');
    else this.#replace(from, next, this.#text.slice(to, next) + step, 'whole');
  }

  breakForTenKeys(): void {
    const at = this.#inValue();
    const start = this.#text.lastIndexOf(': ', at) + 2;
    this.#insert(start, '"', 'broken');
    for (let i = 1; i <= 10; i++) this.#insert(start + i, this.#letter(), 'broken');
    this.#insert(this.#lineEnd(start), '"', 'whole');
  }

  /** A place inside the value of a key somewhere in the steps. */
  #inValue(): number {
    const first = this.#text.search(STEP);
    for (;;) {
      const somewhere = first + Math.floor(this.#random() * (this.#text.length - first));
      const start = this.#text.lastIndexOf('\n', somewhere) + 1;
      const line = this.#text.slice(start, this.#lineEnd(start));
      const key = VALUE.exec(line)?.[0];
      if (key !== undefined && !line.includes('"') && !line.includes(' #')) {
        return start + key.length + Math.floor(this.#random() * (line.length - key.length + 1));
      }
    }
  }

  #lineEnd(at: number): number {
    const end = this.#text.indexOf('\n', at);
    if (end < 0) return this.#text.length;
    return this.#text.charAt(end - 1) === '\r' ? end - 1 : end;
  }

  #letter(): string {
    return String.fromCharCode(97 + Math.floor(this.#random() * 26));
  }

  #insert(at: number, text: string, state: Edit['state']): void {
    this.#replace(at, at, text, state);
  }

  #replace(from: number, to: number, text: string, state: Edit['state']): void {
    const edit = { from, to, text, state };
    this.edits.push(edit);
    this.#text = applied(this.#text, edit);
  }
}
