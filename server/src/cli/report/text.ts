import { relative } from 'node:path';
import type { Finding } from '../../core/rules/finding';
import type { LineIndex } from '../../core/text/lineIndex';
import { pathOfUri } from '../../node/nodeFiles';
import type { CheckedDocument } from '../checkPaths';
import { type Terminal, toned } from '../terminal';
import { workingOut } from './workingOut';

/**
 * A finding as a person reads it: where, what, the line with the place marked, and what can be done.
 * @param working whether the calculation that it rests on is shown below it
 */
export function findingText(terminal: Terminal, document: CheckedDocument, finding: Finding, working = false): string {
  const { line, character } = document.lines.position(finding.span.start);
  const place = `${shown(document.path)}:${line + 1}:${character + 1}`;
  const head = `${toned(terminal, 'strong', place)} ${toned(terminal, finding.severity, finding.severity)} ${toned(terminal, 'quiet', finding.rule)}`;
  const parts = [head, `  ${finding.message}`];
  if (finding.builds !== '') parts.push(`  ${buildsText(terminal, finding.builds)}`);
  parts.push(...excerpt(terminal, document.lines, finding));
  for (const related of finding.related)
    parts.push(`  ${toned(terminal, 'quiet', 'see')} ${relatedPlace(document, related)} ${related.message}`);
  const titles = finding.fixes().map((fix) => fix.title);
  if (titles.length > 0) parts.push(`  ${toned(terminal, 'quiet', 'fix')} ${titles.join(' | ')}`);
  if (working) parts.push(...finding.working().flatMap((one) => ['', workingOut(terminal, one, '    ')]));
  return `${parts.join('\n')}\n`;
}

/** The builds by name get a word before them; a condition brings its own. */
function buildsText(terminal: Terminal, builds: string): string {
  return /^(when|with|without|received)\b/.test(builds) ? builds : `${toned(terminal, 'quiet', 'on')} ${builds}`;
}

/** The line of the finding with its place underlined; a place over several lines is marked to the end of its first. */
function excerpt(terminal: Terminal, lines: LineIndex, finding: Finding): string[] {
  const { line, character } = lines.position(finding.span.start);
  const text = lines.lineText(line).replaceAll('\t', ' ');
  const end = lines.position(finding.span.end);
  const length = Math.max(1, (end.line === line ? end.character : text.length) - character);
  const number = String(line + 1);
  const gutter = ' '.repeat(number.length);
  const shift = shiftOf(text);
  const before = width(text.slice(shift, character));
  const mark = '^'.repeat(Math.max(1, width(text.slice(character, character + length))));
  return [
    `  ${toned(terminal, 'quiet', `${number} |`)} ${text.slice(shift)}`,
    `  ${toned(terminal, 'quiet', `${gutter} |`)} ${' '.repeat(before)}${toned(terminal, finding.severity, mark)}`,
  ];
}

/** Deep indentation says nothing here; some of it is kept so that the shape of the line can be seen. */
function shiftOf(text: string): number {
  const indent = text.length - text.trimStart().length;
  return Math.max(0, indent - 4);
}

/** Characters as a terminal shows them: one each for what is written, however it is encoded. */
function width(text: string): number {
  return [...text].length;
}

function relatedPlace(document: CheckedDocument, related: Finding['related'][number]): string {
  const here = related.uri === document.uri;
  const lines = here ? document.lines : document.linesOf(related.uri);
  const line = lines === undefined ? '' : `:${lines.position(related.span.start).line + 1}`;
  return here ? `line ${line.slice(1)}:` : `${shown(pathOfUri(related.uri))}${line}:`;
}

/** A path as short as it can be said from where the command runs. */
export function shown(path: string): string {
  const short = relative(process.cwd(), path);
  return short.startsWith('..') ? path : short;
}

export interface Counts {
  readonly documents: number;
  readonly error: number;
  readonly warning: number;
  readonly info: number;
  readonly conceded: number;
}

/** The last line of a check. */
export function countText(terminal: Terminal, counts: Counts): string {
  const parts = (['error', 'warning', 'info'] as const)
    .filter((severity) => counts[severity] > 0)
    .map((severity) => toned(terminal, severity, plural(counts[severity], severity === 'info' ? 'hint' : severity)));
  const found = parts.length === 0 ? 'Nothing found' : parts.join(', ');
  const conceded = counts.conceded === 0 ? '' : `; ${plural(counts.conceded, 'finding')} let stand by a concession`;
  return `${found} in ${plural(counts.documents, 'document')}${conceded}\n`;
}

export function plural(count: number, noun: string): string {
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
