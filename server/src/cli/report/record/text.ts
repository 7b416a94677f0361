import type { JudgedEntry } from '../../../core/sheet/record/judgeRecord';
import { isSound, type Verdict } from '../../../core/sheet/record/verdict';
import type { RecordFile } from '../../commands/record';
import { type Terminal, toned } from '../../terminal';
import { plural } from '../text';

/** A record as a person reads it: which sheet, what is not in order, and how much is. */
export function recordText(terminal: Terminal, record: RecordFile, all: boolean): string {
  const { plan, entries } = record;
  const shown = entries.filter((entry) => !isSound(entry.verdict) || (all && entry.verdict.is !== 'notAsked'));
  const lines = [
    toned(terminal, 'strong', record.file),
    `  ${plan.document} revision ${plan.revision}, ${plan.build} (${plan.buildId})${statusOf(record)}`,
    ...(plan.digest === undefined ? [] : [`  sources ${shortDigest(plan.digest)}`]),
    ...shown.map((entry) => entryLine(terminal, entry)),
    `  ${totals(entries)}`,
  ];
  return `${lines.join('\n')}\n`;
}

function statusOf({ plan }: RecordFile): string {
  const errors = plan.errors === 0 ? '' : `, ${plural(plan.errors, 'error')}`;
  return plan.status === 'released' && plan.errors === 0 ? '' : `; printed as ${plan.status}${errors}`;
}

function shortDigest(digest: string): string {
  return [0, 4, 8].map((at) => digest.slice(at, at + 4)).join(' ');
}

function entryLine(terminal: Terminal, entry: JudgedEntry): string {
  const { place, what, filled, verdict } = entry;
  const tone = isSound(verdict) ? 'quiet' : 'error';
  const said = filled === '' || entry.kind === 'tick' ? '' : ` ${JSON.stringify(filled)}`;
  const why = 'why' in verdict ? `: ${verdict.why}` : verdict.is === 'within' ? ` ${entry.limits ?? ''}` : '';
  return `  ${place} ${what}${said} ${toned(terminal, tone, WORDS[verdict.is])}${why}`.trimEnd();
}

const WORDS: Readonly<Record<Verdict['is'], string>> = {
  within: 'within',
  noted: 'noted',
  notAsked: 'not asked',
  superseded: 'superseded by a later attempt',
  outside: 'outside',
  missing: 'missing',
  unreadable: 'unreadable',
  contradiction: 'contradiction',
  open: 'open',
};

function totals(entries: readonly JudgedEntry[]): string {
  const count = (is: Verdict['is']) => entries.filter((entry) => entry.verdict.is === is).length;
  const bad = (['outside', 'missing', 'unreadable', 'contradiction', 'open'] as const).flatMap((is) =>
    count(is) === 0 ? [] : [`${count(is)} ${WORDS[is]}`],
  );
  const good = `${plural(count('within'), 'value')} within limits`;
  return bad.length === 0 ? `${good}, nothing missing` : `${bad.join(', ')}; ${good}`;
}
