import { type ParseArgsConfig, parseArgs } from 'node:util';
import { isDay } from '../core/model/readValues';
import { listed } from '../core/rules/support/phrases';
import { CommandProblem } from './problem';

export interface Parsed {
  readonly values: Readonly<Record<string, string | boolean | undefined>>;
  readonly positionals: readonly string[];
}

/** Reads the arguments of a command; an option that it does not have, or a value that is missing, is told in a line. */
export function readOptions(
  command: string,
  args: readonly string[],
  options: NonNullable<ParseArgsConfig['options']>,
): Parsed {
  try {
    const { values, positionals } = parseArgs({ args: [...args], options, allowPositionals: true, strict: true });
    return { values: values as Parsed['values'], positionals };
  } catch (error) {
    throw new CommandProblem(`${refusal(error)}; see witnessmark ${command} --help`);
  }
}

/** What the reader of arguments refused, in our words where it is one of the usual slips. */
function refusal(error: unknown): string {
  const message = error instanceof Error ? (error.message.split('. ')[0] ?? '') : String(error);
  const option = /(--[a-z-]+)/.exec(message)?.[1];
  if (/argument missing|is ambiguous/.test(message)) return `${option} needs a value`;
  if (/does not take an argument/.test(message)) return `${option} takes no value`;
  return message;
}

/** The value of an option that must be one of a few words. */
export function oneOf<const Word extends string>(
  name: string,
  value: string | boolean | undefined,
  words: readonly Word[],
  otherwise: Word,
): Word {
  if (value === undefined) return otherwise;
  const word = words.find((one) => one === value);
  if (word === undefined) throw new CommandProblem(`--${name} takes ${listed(words, 'or')}, not "${value}"`);
  return word;
}

/** A day given as an option, else today where the machine stands. */
export function dayOption(value: string | boolean | undefined): string {
  if (value === undefined) return today();
  if (typeof value !== 'string' || !isDay(value))
    throw new CommandProblem(`--on takes a day such as 2026-10-12, not "${value}"`);
  return value;
}

function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
