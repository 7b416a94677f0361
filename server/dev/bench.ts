import { coldCheck } from './bench/coldCheck';
import { askingTimes, folderMemory, startTimes } from './bench/editing/asking';
import { latency } from './bench/editing/latency';
import { keystrokes } from './bench/keystrokes';
import { checkOfFolder } from './bench/manyFiles';
import { printing } from './bench/printing';
import { manyProcedures, oneProcedure } from './bench/procedures';
import { reviewOfRepository } from './bench/reviews';
import { sheetKeystrokes } from './bench/sheets';
import { walks } from './bench/walks';

/**
 * CPU time and memory of the checker, each beside a bare parse of the same text by the YAML library in the same run:
 * on a busy machine the ratios say more than the milliseconds.
 */
async function main(): Promise<void> {
  const [part, number] = process.argv.slice(2);
  if (part === 'folder') return checkOfFolder(Number(number ?? 1000));
  if (part === 'review') return reviewOfRepository(Number(number ?? 500));
  if (part === 'sheets') return sheetKeystrokes();
  if (part === 'sheet') return printing(number === undefined ? undefined : [Number(number)]);
  if (part === 'asking') {
    await askingTimes();
    return folderMemory(Number(number ?? 1000));
  }
  if (part === 'editing') return editing(number === undefined ? undefined : Number(number));
  console.log(
    'CPU milliseconds are medians; "bare" is parseDocument with a LineCounter of the yaml package on the same text.\n',
  );
  await oneProcedure();
  await manyProcedures(Number(process.argv[2] ?? 1000));
  await keystrokes();
  await sheetKeystrokes();
  await printing();
  coldCheck();
  await walks();
  await checkOfFolder(Number(process.argv[2] ?? 1000));
  await reviewOfRepository(500);
  await editing();
}

/** What somebody feels who types: alone with `npm run bench -- editing`, or for one size with `-- editing 300`. */
async function editing(steps?: number): Promise<void> {
  await startTimes();
  await latency(steps);
  if (steps !== undefined) return;
  await askingTimes();
  await folderMemory(1000);
}

await main();
