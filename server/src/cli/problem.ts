/** Something that stops the command: one clear line for whoever typed it, and exit code 2. */
export class CommandProblem extends Error {
  override readonly name = NAME;
}

const NAME = 'CommandProblem';

/** Told by its name, since each part of the program has a class of its own. */
export function isCommandProblem(error: unknown): error is CommandProblem {
  return error instanceof Error && error.name === NAME;
}
