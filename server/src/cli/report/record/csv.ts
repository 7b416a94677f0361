import type { RecordFile } from '../../commands/record';

const COLUMNS = [
  'file',
  'document',
  'revision',
  'build',
  'digest',
  'name',
  'place',
  'what',
  'kind',
  'filled',
  'value',
  'unit',
  'limits',
  'verdict',
  'why',
] as const;

/** One line for each field of each sheet, as RFC 4180 writes tables: a head, CR LF, quotes where they are needed. */
export function recordCsv(records: readonly RecordFile[]): string {
  const rows = records.flatMap(({ file, plan, entries }) =>
    entries.map((entry) => [
      file,
      plan.document,
      plan.revision,
      plan.buildId,
      plan.digest ?? '',
      entry.name,
      entry.place,
      entry.what,
      entry.kind,
      entry.filled,
      entry.number === undefined ? '' : String(entry.number),
      entry.unit ?? '',
      entry.limits ?? '',
      entry.verdict.is,
      'why' in entry.verdict ? entry.verdict.why : '',
    ]),
  );
  return [COLUMNS, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
}

/**
 * A cell that begins with one of these would be computed by a spreadsheet, so that what was typed on the bench could run
 * there; an apostrophe before it makes it words. A plain number, signed or not, stays one.
 */
const FORMULA = /^[=+\-@\t\r]/u;
const PLAIN_NUMBER = /^[+-]?\d+(?:[.,]\d+)?(?:e[+-]?\d+)?$/u;

function cell(text: string): string {
  const safe = FORMULA.test(text) && !PLAIN_NUMBER.test(text) ? `'${text}` : text;
  return /[",\r\n]/u.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
