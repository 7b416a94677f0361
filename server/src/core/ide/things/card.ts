import { escaped } from '../../workings/workingMarkdown';

/** One thing that is known of something, with a line for each way it can be. */
export interface CardRow {
  readonly label: string;
  readonly lines: readonly string[];
  /** Left out beside a calculation, which says the same or needs the room. */
  readonly givesWay?: true;
}

/** What is known of a thing: as much as fits on a screen, the most asked first. */
export interface Card {
  readonly name: string;
  /** What sort of thing it is: `part: nut`, `torque wrench`. */
  readonly kind: string;
  /** Undefined where the name is all that it has. */
  readonly id: string | undefined;
  readonly rows: readonly CardRow[];
}

/** Lines of one label that are read at a glance; more than these are counted. */
const mostLines = 5;
/** What a hover holds in a line. */
const mostCharacters = 160;

/** A row with its first lines, or nothing where there is nothing to say. */
export function row(
  label: string,
  lines: string | readonly (string | undefined)[] | undefined,
  most = mostLines,
): CardRow[] {
  const all = typeof lines === 'string' ? [lines] : (lines ?? []);
  const told = all.filter((line): line is string => line !== undefined && line !== '');
  return told.length === 0 ? [] : [{ label, lines: shownLines(told, most) }];
}

/** As `row`, for what is left out beside a calculation. */
export function sideRow(label: string, lines: Parameters<typeof row>[1]): CardRow[] {
  return row(label, lines).map((one) => ({ ...one, givesWay: true }));
}

/** The card as a table, as calculations are shown: its head says what it is. */
export function cardMarkdown({ name, kind, id, rows }: Card): string {
  const what = [escaped(kind), id === undefined ? '' : `\`${id.replaceAll('`', '')}\``].filter((one) => one !== '');
  const head = [`| **${escaped(oneLine(name))}** | ${what.join(' · ')} |`, '|:--|:--|'];
  const lines = rows.flatMap(({ label, lines: told }) =>
    told.map((line, i) => `| ${i === 0 ? escaped(label) : ''} | ${escaped(line)} |`),
  );
  return [...head, ...lines].join('\n');
}

/** The same for a client without markup: labels in a column of their own. */
export function cardText({ name, kind, id, rows }: Card): string {
  const width = Math.max(0, ...rows.map(({ label }) => label.length));
  const lines = rows.flatMap(({ label, lines: told }) =>
    told.map((line, i) => `  ${(i === 0 ? label : '').padEnd(width)}  ${line}`),
  );
  const what = [kind, id].filter((one) => one !== undefined && one !== '').join(', ');
  return [`${oneLine(name)} (${what})`, ...lines].join('\n');
}

/** The card as far as there is room for it beside a calculation. */
export function besideWorking(card: Card): Card {
  return { ...card, rows: card.rows.filter(({ givesWay }) => givesWay !== true) };
}

function shownLines(lines: readonly string[], most: number): string[] {
  // One line more is shorter than saying that there is one.
  const shown = lines.length <= most + 1 ? lines : lines.slice(0, most);
  const more = lines.length - shown.length;
  return [...shown.map((line) => cut(oneLine(line))), ...(more === 0 ? [] : [`and ${more} more`])];
}

function cut(line: string): string {
  const characters = [...line];
  return characters.length <= mostCharacters ? line : `${characters.slice(0, mostCharacters - 1).join('')}…`;
}

export function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
