import { CHANGE_CLASSES, type Change, type ChangeClass } from '../../../core/review/change';
import { CLASS_TITLES, headlineOf, reachWords } from '../../../core/review/changeWords';
import type { Version } from '../../../core/review/version';
import { placeIn, placeOf } from '../../../core/reviewPage/places';
import type { Reviewed } from '../../../core/reviewPage/reviewed';
import { sumLine } from '../../../core/reviewPage/sumLine';
import { type Finding, fullMessage } from '../../../core/rules/finding';
import { type Terminal, type Tone, toned } from '../../terminal';
import { plural } from '../text';

const TONES: Readonly<Record<ChangeClass, Tone>> = { hurt: 'error', fits: 'warning', says: 'info', looks: 'quiet' };

/** A review as a person reads it in a terminal. */
export function reviewText(terminal: Terminal, reviewed: Reviewed): string {
  const { labels, files, changes, findings } = reviewed;
  const head = `${labels.before} → ${labels.after}: ${plural(files.length, 'file')} differ${files.length === 1 ? 's' : ''}`;
  const parts = [toned(terminal, 'strong', head)];
  for (const one of CHANGE_CLASSES) {
    const here = changes.filter((change) => change.class === one);
    if (here.length > 0) parts.push('', toned(terminal, TONES[one], `${CLASS_TITLES[one]} (${here.length})`));
    for (const change of here) parts.push(...changeLines(terminal, change, reviewed));
  }
  parts.push(...findingLines(terminal, 'New findings', findings.added, reviewed.after));
  parts.push(...findingLines(terminal, 'Findings that are gone', findings.gone, reviewed.before));
  return `${[...parts, '', sumLine(reviewed)].join('\n')}\n`;
}

function changeLines(terminal: Terminal, change: Change, reviewed: Reviewed): string[] {
  const place = placeOf(change, reviewed);
  const where = place === undefined ? '' : toned(terminal, 'quiet', `${place.file}:${place.line}:${place.column}`);
  const lines = [`  ${headlineOf(change)}${change.builds === '' ? '' : ` [${change.builds}]`}`, `      ${where}`];
  return [...lines, ...reachWords(change).map((words) => `      ${toned(terminal, 'quiet', 'reaches')} ${words}`)];
}

function findingLines(terminal: Terminal, title: string, findings: readonly Finding[], version: Version): string[] {
  if (findings.length === 0) return [];
  const lines = findings.map((finding) => {
    const { file, line, column } = placeIn(version, finding);
    const place = toned(terminal, 'quiet', `${file}:${line}:${column}`);
    return `  ${toned(terminal, finding.severity, finding.severity)} ${finding.rule} ${place} ${fullMessage(finding)}`;
  });
  return ['', toned(terminal, 'strong', `${title} (${findings.length})`), ...lines];
}
