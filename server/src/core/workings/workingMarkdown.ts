import { type CalculationLine, calculationLines, equationLines, lengthOf } from './calculationText';
import { isUnitRow } from './quantityWorking';
import type { Working, WorkingRow } from './working';
import { notKnown, runsOf, shownLabel, workingTitle, wrappedList } from './workingText';

/** How many characters a block of code in the hover of an editor holds before it has to be scrolled, in a window of usual width. */
const codeWidth = 80;

/** A working as Markdown for a hover: a table of what is stated and follows, the calculation as a block of code. */
export function workingMarkdown(working: Working): string {
  const { rows, steps, missing, sources } = working;
  const parts = [
    ...(rows.length === 0 ? [heading(working)] : [table(working)]),
    ...missing.map((fact) => `*${escaped(notKnown(fact))}*`),
    ...(steps.length === 0 ? [] : [['```text', ...codeLines(calculationLines(steps)), '```'].join('\n')]),
    ...(sources.length === 0 ? [] : [escaped(`Sources: ${sources.join('; ')}`)]),
  ];
  return parts.join('\n\n');
}

function heading(working: Working): string {
  return `**${escaped(workingTitle(working))}**`;
}

/** The title is the head of the table, so that nothing is spent on an empty one. */
function table({ title, builds, rows }: Working): string {
  const lines = inFewRows(rows).map(({ label, text }) => `| ${escaped(shownLabel(label))} | ${escaped(text)} |`);
  return [`| ${escaped(shownLabel(title))} | ${escaped(builds)} |`, '|:--|:--|', ...lines].join('\n');
}

/** A hover shows eight rows or so before it has to be scrolled, so all units share one. */
function inFewRows(rows: readonly WorkingRow[]): WorkingRow[] {
  const first = rows.findIndex(isUnitRow);
  const units = rows.filter(isUnitRow).map(({ text }) => text);
  const others = rows.filter((row) => !isUnitRow(row));
  return units.length < 2 ? [...rows] : others.toSpliced(first, 0, { label: 'in other units', text: units.join('; ') });
}

/** What is given stands on common lines; each thing that follows has its own, with its name behind it. */
function codeLines(lines: readonly CalculationLine[]): string[] {
  return runsOf(lines).flatMap((run) => {
    const [first] = run;
    if (first === undefined || first.isGiven) return wrappedList(run.map(givenText), codeWidth);
    return named(first);
  });
}

function givenText({ symbol, equals, source }: CalculationLine): string {
  return `${symbol} = ${equals.join(' = ')}${source === '' ? '' : ` (${source})`}`;
}

/** An equation with what it gives behind its last line, for which room is kept. */
function named(line: CalculationLine): string[] {
  const lines = equationLines(line, codeWidth);
  const name = `  ${line.name}`;
  const fits = lengthOf(`${lines.at(-1)}${name}`) <= codeWidth;
  const roomy = fits ? lines : equationLines(line, codeWidth - lengthOf(name));
  return [...roomy.slice(0, -1), `${roomy.at(-1)}${name}`];
}

/** Text that Markdown would take for markup, as it is meant. */
export function escaped(text: string): string {
  return text.replace(/[\\`*_|<>[\]#~]/g, '\\$&').replace(/\s*\n\s*/g, ' ');
}
