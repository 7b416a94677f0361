import * as fc from 'fast-check';

/** How a text is brought into disorder without changing what it says. */
export interface Disorder {
  readonly seed: number;
  /** Twice the indentation, dashes as far from what they open. */
  readonly wide: boolean;
  readonly lineEnd: '\n' | '\r\n';
  /** How many lines in a hundred are touched in each way. */
  readonly share: number;
}

export const disorders: fc.Arbitrary<Disorder> = fc.record({
  seed: fc.nat(),
  wide: fc.boolean(),
  lineEnd: fc.constantFrom('\n' as const, '\r\n' as const),
  share: fc.integer({ min: 2, max: 40 }),
});

const OPENING = /^( *)((?:- )*)([\w-]+):( .*)?$/;

/** The text with keys of one line exchanged, comments, blank lines and spaces put in. */
export function disordered(text: string, { seed, wide, lineEnd, share }: Disorder): string {
  const random = randomFrom(seed);
  const often = (): boolean => random() * 100 < share;
  let lines = text.trimEnd().split('\n');
  lines = exchanged(lines, often);
  if (wide)
    lines = lines.map((line) =>
      line.replace(/^ *(?:- )*/, (lead) => lead.replaceAll('- ', '-   ').replace(/^ +/, '$&$&')),
    );
  let count = 0;
  return lines
    .flatMap((line) => {
      if (!isStructure(line)) return [line];
      const indent = ' '.repeat(Math.floor(random() * 9));
      const above = often() ? [`${indent}# above ${count++}: it's "so"`] : [];
      const blank = often() ? ['', random() < 0.5 ? '   ' : ''] : [];
      const loose = often() ? spaced(line) : line;
      const behind = often() && !/#|[|>]$/.test(line) ? `  # behind ${count++}` : '';
      return [...blank, ...above, loose + behind + (often() ? '   ' : '')];
    })
    .concat(often() ? ['', ''] : [])
    .join(lineEnd);
}

/** Whether the line opens an entry, so that something may be put above it. */
function isStructure(line: string): boolean {
  return /^ *(?:- |[\w-]+:(?: |$))/.test(line);
}

/** Keys side by side that stand on one line each change places. */
function exchanged(lines: readonly string[], often: () => boolean): string[] {
  const result = [...lines];
  for (let i = 0; i + 1 < result.length; i++) {
    const [a, b, next] = [OPENING.exec(result[i] ?? ''), OPENING.exec(result[i + 1] ?? ''), result[i + 2] ?? ''];
    if (a === null || b === null || a[4] === undefined || b[4] === undefined || b[2] !== '') continue;
    const column = (a[1] ?? '').length + (a[2] ?? '').length;
    if (column !== (b[1] ?? '').length || /[|>]$/.test(a[0] + b[0]) || indentOf(next) > column || !often()) continue;
    if (/^[a-z-]+\/|^\s*(?:- )?(?:adjust|mark|check)/.test(a[0])) continue;
    result[i] = `${a[1]}${a[2]}${b[3]}:${b[4]}`;
    result[i + 1] = `${' '.repeat(column)}${a[3]}:${a[4]}`;
  }
  return result;
}

function indentOf(line: string): number {
  return line.trim() === '' ? 0 : line.length - line.trimStart().length;
}

/** More spaces than needed behind a colon and in brackets. */
function spaced(line: string): string {
  const [, head = '', value = ''] = /^( *(?:- +)*[\w-]+:)( .*)?$/.exec(line) ?? [];
  if (head === '' || value.trim() === '') return line;
  const wide = /^ [[{][^"'#]*[\]}]$/.test(value) ? value.replaceAll(', ', ' ,   ').replace(/[\]}]$/, '   $&') : value;
  return `${head}   ${wide}`;
}

function randomFrom(seed: number): () => number {
  let state = (seed % 2147483646) + 1;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}
