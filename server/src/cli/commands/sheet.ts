import { closePdfEngines } from '../../node/pdf/pdfEngine';
import { plural } from '../report/text';
import { chosenBuilds, openProcedure, procedureFiles } from '../sheet/openProcedure';
import { type Printed, printSheets } from '../sheet/printSheets';
import { readSheetRequest, type SheetRequest } from '../sheet/sheetRequest';
import { checkTarget, wantsFolder } from '../sheet/sheetTargets';
import { untilInterrupted } from '../sheet/untilInterrupted';
import { watchSheets } from '../sheet/watchSheets';
import type { Terminal } from '../terminal';
import { writeChart } from './sheetChart';

export const SHEET_HELP = `witnessmark sheet FILE… [options]

Prints the step sheet of a procedure for a build.

  --build BUILD            variant and options of the finished unit, for example v4-28r,cover-44;
                           arrives=OPTION says how the unit comes in. Without it, the builds are listed
  --all-builds             one sheet for each build
  --paper a4|letter        paper (as the settings say, else a4)
  --sides single|double    one side of the paper, or both with mirrored margins (as the settings say, else single)
  --language en|de|es      language of the sheet (as the settings say, else en)
  -o, --out FILE.pdf|.html where to write it (the procedure's name and build, as PDF, in this folder);
                           of several sheets, the folder that they go to
  --fillable               a PDF with a field for every box and blank; witnessmark record reads it back
  --archive                a PDF for the archive, PDF/A-3a beside PDF/UA-1; needs the date of the revision
  --torque-bands           show in the torque table what each thread and class usually takes, worked out;
                           the maker's value stays the one to tighten to
  --changed-since BASE     mark the steps that differ from a revision of git, and list them at the front
  --watch                  print again when the procedure or anything it links to changes, until Ctrl+C
  --chart                  draw the walk instead: every part against every step, findings included
  --format html|svg        how the chart is written (as the name of the file says, else html)
  --on DATE                judge dates as of this day when the errors are counted (today)

A folder stands for the procedures in it. A procedure with errors prints with the band "not released".
Exit code: 0 written, 2 something could not be.
`;

/** Runs \`witnessmark sheet\`. */
export async function sheet(terminal: Terminal, args: readonly string[]): Promise<number> {
  const request = readSheetRequest(args);
  if (request.chart) return drawChart(terminal, request);
  try {
    return await (request.watch ? watchAndPrint(terminal, request) : printAll(terminal, request));
  } finally {
    await closePdfEngines();
  }
}

async function printAll(terminal: Terminal, request: SheetRequest): Promise<number> {
  const files = procedureFiles(request.files);
  const isFolder = wantsFolder(request, files);
  checkTarget(request, isFolder);
  const printed = await printSheets(terminal, request, files, isFolder);
  if (isFolder) terminal.out(summary(printed));
  return printed.failed === 0 ? 0 : 2;
}

async function watchAndPrint(terminal: Terminal, request: SheetRequest): Promise<number> {
  const files = procedureFiles(request.files);
  const isFolder = wantsFolder(request, files);
  checkTarget(request, isFolder);
  await untilInterrupted((stop) =>
    watchSheets(
      terminal,
      async (sources) => {
        // Known before it is read, so that a file that cannot be read yet is waited for.
        sources(files);
        const printed = await printSheets(terminal, request, files, isFolder, sources);
        if (isFolder) terminal.out(summary(printed));
      },
      stop,
    ),
  );
  return 0;
}

function summary({ written, notReleased, failed }: Printed): string {
  const parts = [`${plural(written, 'sheet')} written`];
  if (notReleased > 0) parts.push(`${notReleased} not released`);
  if (failed > 0) parts.push(`${failed} failed`);
  return `${parts.join(', ')}\n`;
}

async function drawChart(terminal: Terminal, request: SheetRequest): Promise<number> {
  const [file = ''] = procedureFiles(request.files);
  const open = await openProcedure(file, request.today);
  for (const picked of chosenBuilds(open, request.build, false))
    writeChart(terminal, open.procedure, picked, open.findings, { file, format: request.format, out: request.out });
  return 0;
}
