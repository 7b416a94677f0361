import { nearest } from '../core/text/near';
import { isCheckThread, runCheckThread } from './checking/checkThreads';
import { CHECK_HELP, check } from './commands/check';
import { EXPLAIN_HELP, explain } from './commands/explain';
import { FORMAT_HELP, format } from './commands/format';
import { RECORD_HELP, record } from './commands/record';
import { REVIEW_HELP, review } from './commands/review';
import { SERVE_HELP, serve } from './commands/serve';
import { SHEET_HELP, sheet } from './commands/sheet';
import { VERIFY_HELP, verify } from './commands/verify';
import { WHERE_HELP, where } from './commands/where';
import { CommandProblem } from './problem';
import { processTerminal, type Terminal } from './terminal';
import { version } from './version';

interface Command {
  readonly help: string;
  run(terminal: Terminal, args: readonly string[]): Promise<number> | number;
}

const COMMANDS: Readonly<Record<string, Command>> = {
  check: { help: CHECK_HELP, run: check },
  format: { help: FORMAT_HELP, run: format },
  review: { help: REVIEW_HELP, run: review },
  sheet: { help: SHEET_HELP, run: sheet },
  record: { help: RECORD_HELP, run: record },
  verify: { help: VERIFY_HELP, run: verify },
  where: { help: WHERE_HELP, run: where },
  explain: { help: EXPLAIN_HELP, run: explain },
  serve: { help: SERVE_HELP, run: (_, args) => serve(args) },
};

const HELP = `Witnessmark checks, previews and prints turbocharger rebuild procedures.

  witnessmark check PATH…      check documents
  witnessmark format PATH…     format documents, or say which would change (--check)
  witnessmark sheet FILE…      print the step sheet of a procedure for a build
  witnessmark record FILE…     read filled sheets back and hold every value against its limit
  witnessmark review BASE      say what a change means, worst first
  witnessmark verify FILE.pdf  say whether a printed sheet is that of the current text
  witnessmark where NAME       say what depends on a part, tool, kit or document
  witnessmark explain [RULE]   say what a rule is about, or how a value is worked out (--at)
  witnessmark serve --stdio    run the language server

witnessmark COMMAND --help says more. Local regulations, the maker's data and the judgement of a licensed or
authorised person come before anything that this program says.
`;

/** Runs a command line; gives the exit code. Only this function turns a failure into words and a code. */
export async function run(terminal: Terminal, args: readonly string[]): Promise<number> {
  try {
    return await dispatch(terminal, args);
  } catch (error) {
    const message =
      error instanceof CommandProblem ? error.message : `Something went wrong inside witnessmark: ${String(error)}`;
    terminal.err(`witnessmark: ${message}\n`);
    return 2;
  }
}

async function dispatch(terminal: Terminal, args: readonly string[]): Promise<number> {
  const [name, ...rest] = args;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    terminal.out(HELP);
    return name === undefined ? 2 : 0;
  }
  if (name === '--version') {
    terminal.out(`${version()}\n`);
    return 0;
  }
  const command = Object.hasOwn(COMMANDS, name) ? COMMANDS[name] : undefined;
  if (command === undefined) throw new CommandProblem(unknownCommand(name));
  if (rest.includes('--help') || rest.includes('-h')) {
    terminal.out(command.help);
    return 0;
  }
  return command.run(terminal, rest);
}

function unknownCommand(name: string): string {
  const near = nearest(name, Object.keys(COMMANDS));
  return `There is no command ${name}${near.length === 0 ? '' : `; did you mean ${near[0]}`}; witnessmark --help lists them`;
}

// A reader that stops early, such as a pager, is no fault.
process.stdout.on('error', () => process.exit(0));
if (isCheckThread()) runCheckThread();
else if (require.main === module) {
  run(processTerminal, process.argv.slice(2)).then((code) => {
    process.exitCode = code;
  });
}
