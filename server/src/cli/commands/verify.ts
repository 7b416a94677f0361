import { dirname, resolve } from 'node:path';
import { digestOfFiles, shortDigest } from '../../core/sheet/build/proof';
import { readOptions } from '../options';
import { CommandProblem } from '../problem';
import { shown } from '../report/text';
import { type Terminal, toned } from '../terminal';
import { type ProcedureText, proceduresOf } from '../verify/currentText';
import { findReleased } from '../verify/releasedSheets';
import { readSheetFile, type SheetIdentity, sheetOfCode } from '../verify/sheetFile';
import { findInHistory } from '../verify/textHistory';
import { changesSince, historyWords, printableLine, releasedWords } from '../verify/words';

export const VERIFY_HELP = `witnessmark verify FILE.pdf [FOLDER] [options]
witnessmark verify --code TEXT [FOLDER] [options]

Says whether a printed step sheet is that of the current text, and if not, of which earlier one.

  FOLDER           folder with the documents (this folder; with --released none)
  --released DIR   folder with the released sheets: says which of them this one is
  --code TEXT      what the code at the foot of a printed page says, instead of a file

A sheet names its document and the digest of its sources, and the digest is worked out anew from the sources in the
folder. Where they differ, the commits of the git repository there are searched for the text that it was printed from.
A digest finds slips and stale prints. It finds no forgery: for that a workshop signs its PDFs.
Exit code: 0 the current text, 1 another text, 2 could not tell.
`;

/** Runs \`witnessmark verify\`. */
export async function verify(terminal: Terminal, args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions('verify', args, {
    released: { type: 'string' },
    code: { type: 'string' },
  });
  const code = typeof values.code === 'string' ? values.code : undefined;
  const released = typeof values.released === 'string' ? resolve(values.released) : undefined;
  const [file, ...rest] = code === undefined ? positionals : [undefined, ...positionals];
  const [folder, extra] = rest;
  if (extra !== undefined || (file === undefined && code === undefined))
    throw new CommandProblem('Name one printed sheet and at most one folder; see witnessmark verify --help');
  const sheet = code === undefined ? await sheetIn(file ?? '') : sheetFromCode(code);
  terminal.out(`${toned(terminal, 'strong', printableLine(file ?? 'The code'))}: ${nameOf(sheet)}\n`);
  const verdicts: Verdict[] = [];
  if (folder !== undefined || released === undefined) verdicts.push(await byFolder(resolve(folder ?? '.'), sheet));
  if (released !== undefined) verdicts.push(await byReleased(released, sheet));
  if (sheet.isWhole === false) verdicts.push(NOT_WHOLE);
  for (const { lines } of verdicts) terminal.out(lines.map((line) => `${printableLine(line)}\n`).join(''));
  terminal.out(`${toned(terminal, 'quiet', NO_SIGNATURE)}\n`);
  return exitOf(verdicts);
}

const NO_SIGNATURE = 'This tells slips and stale prints, no forgery: for that, check the signature of the PDF.';

interface Verdict {
  readonly exit: 0 | 1 | 2;
  readonly lines: readonly string[];
}

/** One answer that it is another text outweighs one that could not tell. */
function exitOf(verdicts: readonly Verdict[]): number {
  const exits = verdicts.map(({ exit }) => exit);
  return exits.includes(1) ? 1 : Math.max(...exits);
}

const NOT_WHOLE: Verdict = {
  exit: 1,
  lines: ['Changed after printing: the sources attached to it are not those that its digest stands for.'],
};

async function sheetIn(file: string): Promise<SheetIdentity> {
  const read = await readSheetFile(resolve(file));
  if (read.is === 'none') throw new CommandProblem(read.why);
  return read.sheet;
}

function sheetFromCode(code: string): SheetIdentity {
  const sheet = sheetOfCode(code);
  if (sheet === undefined)
    throw new CommandProblem('--code takes all that the code at the foot of a page says; it begins with WITNESSMARK');
  return sheet;
}

function nameOf({ document, revision, build, digest }: SheetIdentity): string {
  const parts = [
    `${document} revision ${revision}`,
    build === '' ? [] : [`build ${build}`],
    `sources ${shortDigest(digest)}`,
  ];
  return printableLine(parts.flat().join(', '));
}

async function byFolder(folder: string, sheet: SheetIdentity): Promise<Verdict> {
  const procedures = await proceduresOf(folder, sheet.document);
  const current = procedures.find(({ proof }) => proof.digest.startsWith(sheet.digest));
  if (current !== undefined) return isCurrent(current);
  const history = await findInHistory(procedures[0] === undefined ? folder : dirname(procedures[0].path), sheet);
  const past = historyWords(history);
  if (procedures.length > 0) return { exit: 1, lines: [...procedures.map((one) => isOther(one, sheet)), ...past] };
  const lines = [`No procedure in ${shown(folder) || 'this folder'} is ${sheet.document}.`, ...past];
  return { exit: history.is === 'found' ? 1 : 2, lines };
}

function isCurrent({ path, status }: ProcedureText): Verdict {
  const withdrawn = status === 'withdrawn' ? ['That text is withdrawn: do not work from it.'] : [];
  return { exit: 0, lines: [`Current: it is made from ${shown(path)} as it is now.`, ...withdrawn] };
}

function isOther({ path, proof, revision }: ProcedureText, sheet: SheetIdentity): string {
  const changes = changesSince(sheet.attached, proof.builtFrom);
  const now = `${shown(path)} is at revision ${revision}, sources ${shortDigest(digestOfFiles(proof.builtFrom))}`;
  return `Not current: ${now}${changes === '' ? '' : `; since this print: ${changes}`}.`;
}

async function byReleased(folder: string, sheet: SheetIdentity): Promise<Verdict> {
  const answer = await findReleased(folder, sheet);
  const exit = answer.ofDocument.length === 0 ? 2 : answer.isNewest ? 0 : 1;
  return { exit, lines: releasedWords(answer, folder, sheet) };
}
