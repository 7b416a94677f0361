import { EXAMPLE_FAMILY, EXAMPLE_HEAD, EXAMPLE_KIT, EXAMPLE_PATHS, EXAMPLE_STORES } from './exampleDocuments';
import type { ReleasedText } from './ruleContext';

/** An example of a rule: what is shown in the documentation, and the documents in which it really runs. */
export interface Example {
  /** The lines that matter, as documentation shows them. */
  readonly shown: string;
  /** Path of the document that is checked. */
  readonly at: string;
  /** All documents by relative path. */
  readonly files: Readonly<Record<string, string>>;
  /** The released text that it is compared with, for a rule about what has changed since. */
  readonly released?: ReleasedText;
}

const BASE: Readonly<Record<string, string>> = {
  [EXAMPLE_PATHS.family]: EXAMPLE_FAMILY,
  [EXAMPLE_PATHS.kit]: EXAMPLE_KIT,
  [EXAMPLE_PATHS.stores]: EXAMPLE_STORES,
};

/** Made when somebody asks: a check loads the rules and never looks at their examples. */
function example(shown: string, at: string, make: () => Example['files'], released?: ReleasedText): Example {
  let files: Example['files'] | undefined;
  return {
    shown,
    at,
    get files() {
      files ??= make();
      return files;
    },
    ...(released === undefined ? {} : { released }),
  };
}

/** Instructions, in the only step of a procedure. The text is the entries of `do`. */
export function inStep(shown: string): Example {
  return procedureOf(
    shown,
    () => `${EXAMPLE_HEAD}phases:
  - phase: Assemble
    steps:
      - step: only-step
        title: Do the work
        do:
${indented(shown, 10)}`,
  );
}

/** Keys of a step, its `do` included: everything below the dash of the step. */
export function asStep(shown: string): Example {
  return procedureOf(
    shown,
    () => `${EXAMPLE_HEAD}phases:
  - phase: Assemble
    steps:
      - step: only-step
${indented(shown, 8)}`,
  );
}

/** Keys at the head of the procedure, in place of those of the same name, before a step that uses every tool listed. */
export function inHead(shown: string, steps = '- install: cover'): Example {
  return procedureOf(
    shown,
    () => `${withKeys(EXAMPLE_HEAD, shown)}phases:
  - phase: Assemble
    steps:
      - step: only-step
        title: Do the work
        do:
${indented(steps, 10)}`,
  );
}

/** A whole procedure; `shown` is what the documentation shows of it. */
export function inProcedure(shown: string, text: string): Example {
  return procedureOf(shown, () => text);
}

function procedureOf(shown: string, text: () => string): Example {
  return example(shown, EXAMPLE_PATHS.procedure, () => ({ ...BASE, [EXAMPLE_PATHS.procedure]: text() }));
}

/** A whole document of any kind, shown as it is. */
export function wholeDocument(at: string, text: string): Example {
  return example(text.trimEnd(), at, () => ({ ...BASE, [at]: text }));
}

/** Keys at the root of the family, in place of those of the same name; below \`parts\`, entries are added or replaced. */
export function inFamily(shown: string): Example {
  const at = EXAMPLE_PATHS.family;
  return example(shown, at, () => ({ ...BASE, [at]: withEntries(EXAMPLE_FAMILY, shown) }));
}

/** Lines of the kit in place of its own. */
export function inKit(shown: string): Example {
  const at = EXAMPLE_PATHS.kit;
  return example(shown, at, () => ({ ...BASE, [at]: kitWith(shown) }));
}

function kitWith(lines: string): string {
  return `${EXAMPLE_KIT.slice(0, EXAMPLE_KIT.indexOf('lines:'))}lines:\n${indented(lines, 2)}`;
}

/** Keys at the root of the stores, in place of those of the same name; below \`tools\` and \`consumables\`, entries are added. */
export function inStores(shown: string): Example {
  const at = EXAMPLE_PATHS.stores;
  return example(shown, at, () => ({ ...BASE, [at]: withEntries(EXAMPLE_STORES, shown) }));
}

/** The same example with other documents in place of the base ones, by relative path. */
export function withFiles(base: Example, files: Readonly<Record<string, string>>): Example {
  return changed(base, () => files);
}

function changed(base: Example, files: () => Example['files']): Example {
  return example(base.shown, base.at, () => ({ ...base.files, ...files() }), base.released);
}

/** The example with its family changed: entries are added below the keys that are given. */
export function withFamily(base: Example, changes: string): Example {
  return changed(base, () => ({ [EXAMPLE_PATHS.family]: withEntries(EXAMPLE_FAMILY, changes) }));
}

/** The example with its stores changed: entries are added below the keys that are given. */
export function withStores(base: Example, changes: string): Example {
  return changed(base, () => ({ [EXAMPLE_PATHS.stores]: withEntries(EXAMPLE_STORES, changes) }));
}

/** The example with the lines of its kit changed. */
export function withKit(base: Example, lines: string): Example {
  return changed(base, () => ({ [EXAMPLE_PATHS.kit]: kitWith(lines) }));
}

function indented(text: string, by: number): string {
  return text
    .split('\n')
    .map((line) => (line === '' ? '' : ' '.repeat(by) + line))
    .join('\n')
    .concat('\n');
}

interface Block {
  readonly key: string;
  readonly lines: readonly string[];
}

/** Cuts a text at the keys of its first column. */
function blocksOf(text: string, indent = ''): Block[] {
  const blocks: { key: string; lines: string[] }[] = [];
  for (const line of text.split('\n')) {
    const key = line.startsWith(indent) ? /^([\w-]+):/.exec(line.slice(indent.length))?.[1] : undefined;
    if (key !== undefined) blocks.push({ key, lines: [line] });
    else blocks.at(-1)?.lines.push(line);
  }
  return blocks;
}

function withKeys(base: string, changes: string): string {
  const come = blocksOf(changes);
  const kept = blocksOf(base).filter((block) => !come.some((one) => one.key === block.key));
  return [...kept, ...come]
    .map((block) => block.lines.filter((line) => line !== '').join('\n'))
    .join('\n')
    .concat('\n');
}

/** Like withKeys, but a block with entries of its own keeps those that are not named anew. */
function withEntries(base: string, changes: string): string {
  const blocks = blocksOf(base);
  const merged = blocksOf(changes).map((block): Block => {
    const old = blocks.find((one) => one.key === block.key);
    if (old === undefined || block.lines.length === 1) return block;
    const entries = blocksOf(block.lines.slice(1).join('\n'), '  ');
    const kept = blocksOf(old.lines.slice(1).join('\n'), '  ').filter(
      (entry) => !entries.some((one) => one.key === entry.key),
    );
    return { key: block.key, lines: [block.lines[0] ?? '', ...[...kept, ...entries].flatMap((entry) => entry.lines)] };
  });
  return withKeys(base, merged.map((block) => block.lines.join('\n')).join('\n'));
}
