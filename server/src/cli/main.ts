import { nearest } from '../core/text/near';
import { CHECK_HELP, check } from './commands/check';
import type { Command } from './commands/command';
import { CommandProblem, isCommandProblem } from './problem';
import { processTerminal, type Terminal } from './terminal';
import { version } from './version';

/** What runs most often comes with the entry; all that the others take is read once one of them is asked for. */
const COMMANDS = {
  check: async () => ({ help: CHECK_HELP, run: check }),
  format: async () => (await others()).format,
  review: async () => (await others()).review,
  sheet: async () => (await others()).sheet,
  record: async () => (await others()).record,
  verify: async () => (await others()).verify,
  where: async () => (await others()).where,
  explain: async () => (await others()).explain,
  serve: async () => (await others()).serve,
} satisfies Record<string, () => Promise<Command>>;

async function others() {
  return (await import('./commands/otherCommands')).OTHER_COMMANDS;
}

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
    const message = isCommandProblem(error)
      ? error.message
      : `Something went wrong inside witnessmark: ${String(error)}`;
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
  if (!isCommand(name)) throw new CommandProblem(unknownCommand(name));
  const command: Command = await COMMANDS[name]();
  if (rest.includes('--help') || rest.includes('-h')) {
    terminal.out(command.help);
    return 0;
  }
  return command.run(terminal, rest);
}

function isCommand(name: string): name is keyof typeof COMMANDS {
  return Object.hasOwn(COMMANDS, name);
}

function unknownCommand(name: string): string {
  const near = nearest(name, Object.keys(COMMANDS));
  return `There is no command ${name}${near.length === 0 ? '' : `; did you mean ${near[0]}`}; witnessmark --help lists them`;
}

// A reader that stops early, such as a pager, is no fault.
process.stdout.on('error', () => process.exit(0));
if (require.main === module) {
  run(processTerminal, process.argv.slice(2)).then((code) => {
    process.exitCode = code;
  });
}
