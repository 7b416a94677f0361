import { type CalculationLine, calculationLines, equationLines, lengthOf } from './calculationText';
import type { Working } from './working';

/** How wide a working is written where nobody says: what a terminal and a printed page hold. */
const usualWidth = 100;
const widestLabel = 30;

/** A working as plain text for a terminal, the title on the first line; without a line end behind the last. */
export function workingText(working: Working, width = usualWidth): string {
  const { rows, steps, missing, sources } = working;
  const calculation = calculationBlocks(calculationLines(steps));
  const labels = [...rows, ...calculation].map(({ label }) => label);
  const column = Math.min(widestLabel, Math.max(0, ...labels.map(lengthOf)));
  const room = width - column - 4;
  const cited = sources.length === 0 ? [] : [`Sources: ${sources.join('; ')}`];
  const blocks = [
    rows.flatMap(({ label, text }) => labelled(shownLabel(label), wrapped(text, room), column)),
    calculation.flatMap(({ label, linesIn }) => labelled(shownLabel(label), linesIn(room), column)),
    [...missing.map(notKnown), ...cited].flatMap((note) => indented(wrapped(note, width - 2))),
  ];
  const written = blocks.filter((block) => block.length > 0).map((block) => block.join('\n'));
  const title = wrapped(workingTitle(working), width).join('\n ');
  return [title, written.join('\n\n')].filter((part) => part !== '').join('\n');
}

interface CalculationBlock {
  readonly label: string;
  linesIn(width: number): string[];
}

/** Each line of a calculation with its name before it; what is given in a row stands together. */
function calculationBlocks(lines: readonly CalculationLine[]): CalculationBlock[] {
  return runsOf(lines).map((run) => {
    const [first] = run;
    if (first === undefined || first.isGiven)
      return { label: 'given', linesIn: (width) => wrappedList(run.map(givenText), width) };
    return { label: first.name, linesIn: (width) => equationLines(first, width) };
  });
}

/** Lines that are given one after another as one run, every other line as a run of its own. */
export function runsOf(lines: readonly CalculationLine[]): CalculationLine[][] {
  const runs: CalculationLine[][] = [];
  for (const line of lines) {
    const last = runs.at(-1);
    if (line.isGiven && last?.[0]?.isGiven === true) last.push(line);
    else runs.push([line]);
  }
  return runs;
}

function givenText({ symbol, name, equals, source }: CalculationLine): string {
  const said = [name, source].filter((part) => part !== '').join(', ');
  return `${symbol} = ${equals.join(' = ')}${said === '' ? '' : ` (${said})`}`;
}

/** The title with the builds that it holds for. */
export function workingTitle({ title, builds }: Working): string {
  return builds === '' ? shownLabel(title) : `${shownLabel(title)} (${builds})`;
}

/** A label or title as it is shown: whoever wrote it need not think of what stands around it. */
export function shownLabel(label: string): string {
  return label.charAt(0).toUpperCase() + label.slice(1);
}

/** A fact that the documents do not state, as a line. */
export function notKnown(fact: string): string {
  return `Not known: ${fact}`;
}

/** A label in its column and the lines beside it; a label too long for the column stands on a line of its own. */
function labelled(label: string, lines: readonly string[], column: number): string[] {
  const isLong = lengthOf(label) > column;
  const head = isLong ? [`  ${label}`] : [];
  return [
    ...head,
    ...lines.map((line, i) => `  ${padded(i === 0 && !isLong ? label : '', column)}  ${line}`.trimEnd()),
  ];
}

function indented(lines: readonly string[]): string[] {
  return lines.map((line, i) => (i === 0 ? `  ${line}` : `    ${line}`));
}

function padded(text: string, width: number): string {
  return text + ' '.repeat(Math.max(0, width - lengthOf(text)));
}

/** A text in lines of at most so many characters, broken at spaces but never between a number and its unit. */
export function wrapped(text: string, width: number): string[] {
  return filledLines(text.split(/(?<![\d±≤≥Ø]) +| +(?=[a-z]{3,}\b)/), ' ', width);
}

/** A list in lines of at most so many characters, with commas between; no entry is broken. */
export function wrappedList(entries: readonly string[], width: number): string[] {
  return filledLines(
    entries.map((entry, i) => (i + 1 < entries.length ? `${entry},` : entry)),
    ' ',
    width,
  );
}

function filledLines(words: readonly string[], between: string, width: number): string[] {
  const lines: string[] = [];
  for (const word of words) {
    const together = `${lines.at(-1)}${between}${word}`;
    if (lines.length > 0 && lengthOf(together) <= width) lines[lines.length - 1] = together;
    else lines.push(word);
  }
  return lines;
}
