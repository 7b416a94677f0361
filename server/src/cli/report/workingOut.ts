import type { Working } from '../../core/workings/working';
import { workingText } from '../../core/workings/workingText';
import { type Terminal, toned } from '../terminal';

/** A working as a terminal shows it, its title standing out; without a line end behind the last line. */
export function workingOut(terminal: Terminal, working: Working, indent = ''): string {
  const [title = '', ...rest] = workingText(working, 100 - indent.length).split('\n');
  return [toned(terminal, 'strong', title), ...rest].map((line) => (line === '' ? line : indent + line)).join('\n');
}
