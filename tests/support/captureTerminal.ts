import { run } from '../../server/src/cli/main';

export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
}

/** Runs a command line in this process and keeps what it writes. */
export async function ran(...args: string[]): Promise<Ran> {
  let out = '';
  let err = '';
  const code = await run({ out: (text) => (out += text), err: (text) => (err += text), colours: false }, args);
  return { code, out, err };
}
