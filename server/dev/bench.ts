import { coldCheck } from './bench/coldCheck';
import { keystrokes } from './bench/keystrokes';
import { manyProcedures, oneProcedure } from './bench/procedures';
import { walks } from './bench/walks';

/**
 * CPU time and memory of the checker, each beside a bare parse of the same text by the YAML library in the same run:
 * on a busy machine the ratios say more than the milliseconds.
 */
async function main(): Promise<void> {
  console.log(
    'CPU milliseconds are medians; "bare" is parseDocument with a LineCounter of the yaml package on the same text.\n',
  );
  await oneProcedure();
  await manyProcedures(Number(process.argv[2] ?? 1000));
  await keystrokes();
  coldCheck();
  await walks();
}

await main();
