import type { Command } from './command';
import { EXPLAIN_HELP, explain } from './explain';
import { FORMAT_HELP, format } from './format';
import { RECORD_HELP, record } from './record';
import { REVIEW_HELP, review } from './review';
import { SERVE_HELP, serve } from './serve';
import { SHEET_HELP, sheet } from './sheet';
import { VERIFY_HELP, verify } from './verify';
import { WHERE_HELP, where } from './where';

/** Every command but `check`, in a part of the program that is read once one of them is asked for. */
export const OTHER_COMMANDS = {
  format: { help: FORMAT_HELP, run: format },
  review: { help: REVIEW_HELP, run: review },
  sheet: { help: SHEET_HELP, run: sheet },
  record: { help: RECORD_HELP, run: record },
  verify: { help: VERIFY_HELP, run: verify },
  where: { help: WHERE_HELP, run: where },
  explain: { help: EXPLAIN_HELP, run: explain },
  serve: { help: SERVE_HELP, run: (_, args) => serve(args) },
} satisfies Record<string, Command>;
