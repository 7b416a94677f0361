import type { CheckedFile, FileChecker } from './checkOne';

/** What a thread that checks documents is started with. */
export interface Ground {
  readonly witnessmark: 'check';
  readonly roots: readonly string[];
  readonly today: string;
}

export interface Asked {
  readonly id: number;
  readonly path: string;
}

export type Answered = { readonly id: number } & ({ readonly file: CheckedFile } | { readonly problem: string });

/** What cannot be read is an answer as well: it is told when its turn comes. */
export function answerBy(checker: FileChecker, { id, path }: Asked): Promise<Answered> {
  return checker.check(path).then(
    (file) => ({ id, file }),
    (error: unknown) => ({ id, problem: error instanceof Error ? error.message : String(error) }),
  );
}
