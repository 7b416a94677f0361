import { readFileSync } from 'node:fs';
import { type JudgedRecord, judgeRecord } from '../../core/sheet/record/judgeRecord';
import { reasonOf } from '../../node/nodeFiles';
import { readForm } from '../../pdf/form/readForm';
import { oneOf, readOptions } from '../options';
import { CommandProblem } from '../problem';
import { recordCsv } from '../report/record/csv';
import { recordJson } from '../report/record/json';
import { recordText } from '../report/record/text';
import type { Terminal } from '../terminal';

export const RECORD_HELP = `witnessmark record FILE.pdf… [options]

Reads filled sheets back, printed with witnessmark sheet --fillable, and holds every value against its limit.

  --format text|csv|json           how the record is written (text)
  --all                            in the text also show what is in order
  --signatures required|optional   whether a hold point needs a signature in the file, or a name and a date will do,
                                   because it is signed on paper (required)

A value may have a decimal point or comma and a unit of its own; without one it is in the unit that the sheet prints.
In CSV a cell that a spreadsheet would take for a formula has an apostrophe before it; plain numbers stay numbers.
Exit code: 0 all is there and within its limits, 1 something is not, 2 could not run.
`;

/** A filled sheet and where it lies. */
export interface RecordFile extends JudgedRecord {
  readonly file: string;
}

/** Runs \`witnessmark record\`. */
export async function record(terminal: Terminal, args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions('record', args, {
    format: { type: 'string' },
    all: { type: 'boolean' },
    signatures: { type: 'string' },
  });
  if (positionals.length === 0)
    throw new CommandProblem('Say which filled sheets to read; see witnessmark record --help');
  const format = oneOf('format', values.format, ['text', 'csv', 'json'], 'text');
  const signatures = oneOf('signatures', values.signatures, ['required', 'optional'], 'required');
  const records: RecordFile[] = [];
  let failed = 0;
  for (const file of positionals) {
    const form = await readForm(contentOf(file));
    if ('problem' in form) {
      failed += 1;
      terminal.err(`witnessmark: Cannot read ${file}: ${form.problem}\n`);
    } else records.push({ file, ...judgeRecord(form.plan, form.filled, signatures) });
  }
  if (format === 'csv') terminal.out(recordCsv(records));
  else if (format === 'json') terminal.out(recordJson(records));
  else terminal.out(records.map((one) => recordText(terminal, one, values.all === true)).join('\n'));
  if (failed > 0) return 2;
  return records.every((one) => one.isSound) ? 0 : 1;
}

function contentOf(file: string): Uint8Array {
  try {
    return readFileSync(file);
  } catch (error) {
    throw new CommandProblem(`Cannot read ${file}: ${reasonOf(error)}`);
  }
}
