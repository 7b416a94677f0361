import { styleText } from 'node:util';

/** Where a command writes, and whether colours are welcome there. */
export interface Terminal {
  out(text: string): void;
  err(text: string): void;
  readonly colours: boolean;
  /** Whether somebody looks on as errors are written, so that progress is worth a line that comes and goes. */
  readonly isShown?: boolean;
}

export const processTerminal: Terminal = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  colours: process.stdout.isTTY === true && (process.env.NO_COLOR ?? '') === '',
  isShown: process.stderr.isTTY === true,
};

export type Tone = 'error' | 'warning' | 'info' | 'strong' | 'quiet';

const FORMATS = {
  error: ['red', 'bold'],
  warning: ['yellow', 'bold'],
  info: ['cyan', 'bold'],
  strong: ['bold'],
  quiet: ['dim'],
} as const;

export function toned(terminal: Terminal, tone: Tone, text: string): string {
  if (!terminal.colours) return text;
  return FORMATS[tone].reduce((styled, format) => styleText(format, styled), text);
}
