export const TASK_TYPE = 'witnessmark';

/** A check as `tasks.json` writes it. */
export interface CheckTaskDefinition {
  readonly type: string;
  /** File or folder, relative to the workspace folder; the whole folder where it is left out. */
  readonly path?: string;
  readonly atLeast?: string;
  /** Which program runs: the one in the extension, or the one that the folder has installed. */
  readonly program?: 'extension' | 'workspace';
}

/** The arguments of the command line for a task. */
export function checkArguments({ path, atLeast }: CheckTaskDefinition): string[] {
  return ['check', path ?? '.', ...(atLeast === undefined ? [] : ['--at-least', atLeast])];
}
