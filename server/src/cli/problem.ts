/** Something that stops the command: one clear line for whoever typed it, and exit code 2. */
export class CommandProblem extends Error {}
