import { CHANGE_CLASSES, type Change, type ChangeClass } from '../../../core/review/change';
import { CLASS_TITLES, headlineOf, reachWords } from '../../../core/review/changeWords';
import type { Version } from '../../../core/review/version';
import { placeIn, placeOf } from '../../../core/reviewPage/places';
import type { Reviewed } from '../../../core/reviewPage/reviewed';
import { sumLine } from '../../../core/reviewPage/sumLine';
import { type Finding, fullMessage } from '../../../core/rules/finding';

/** A comment longer than this is refused by those that show one; the rest is counted. */
const MOST_LINES = 60;

/** A review for a comment on a pull request: what could hurt is open, the rest folded. */
export function reviewMarkdown(reviewed: Reviewed): string {
  const { labels, changes, findings } = reviewed;
  const parts = [`### Review of ${code(labels.after)} against ${code(labels.before)}`, '', sumLine(reviewed), ''];
  for (const one of CHANGE_CLASSES) {
    const lines = changes.filter((change) => change.class === one).map((change) => changeLine(change, reviewed));
    parts.push(...section(`${CLASS_TITLES[one]}`, lines, one === 'hurt' || one === 'fits'));
  }
  parts.push(
    ...section(
      'New findings',
      findings.added.map((one) => findingLine(one, reviewed.after)),
      true,
    ),
  );
  parts.push(
    ...section(
      'Findings that are gone',
      findings.gone.map((one) => findingLine(one, reviewed.before)),
      false,
    ),
  );
  return `${parts.join('\n').trimEnd()}\n`;
}

function section(title: string, lines: readonly string[], isOpen: boolean): string[] {
  if (lines.length === 0) return [];
  const shown = lines.slice(0, MOST_LINES);
  const rest = lines.length - shown.length;
  const body = [...shown, ...(rest > 0 ? [`- and ${rest} more`] : [])];
  if (isOpen) return [`#### ${title} (${lines.length})`, '', ...body, ''];
  return ['<details>', `<summary>${title} (${lines.length})</summary>`, '', ...body, '', '</details>', ''];
}

function changeLine(change: Change, reviewed: Reviewed): string {
  const place = placeOf(change, reviewed);
  const where = place === undefined ? '' : ` ${code(`${place.file}:${place.line}`)}`;
  const builds = change.builds === '' ? '' : ` [${escaped(change.builds)}]`;
  const reach = reachWords(change).map((words) => `\n  - reaches ${escaped(words)}`);
  return `- ${emphasis(change.class, escaped(headlineOf(change)))}${builds}${where}${reach.join('')}`;
}

function emphasis(one: ChangeClass, text: string): string {
  return one === 'hurt' ? `**${text}**` : text;
}

function findingLine(finding: Finding, version: Version): string {
  const { file, line } = placeIn(version, finding);
  return `- ${finding.severity} ${code(finding.rule)}: ${escaped(fullMessage(finding))} ${code(`${file}:${line}`)}`;
}

/** Nothing that a document says can become markup, a link or a mention. */
function escaped(text: string): string {
  return text
    .replace(/\s+/gu, ' ')
    .replace(/[\\`*_{}[\]()#+!|~]/gu, '\\$&')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('@', '&#64;');
}

/** Text as code, fenced by more backticks than it holds. */
function code(text: string): string {
  const longest = Math.max(0, ...(text.match(/`+/gu) ?? []).map((run) => run.length));
  const fence = '`'.repeat(longest + 1);
  return longest === 0 ? `${fence}${text}${fence}` : `${fence} ${text} ${fence}`;
}
