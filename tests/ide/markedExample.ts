import {
  EXAMPLE_FAMILY,
  EXAMPLE_HEAD,
  EXAMPLE_KIT,
  EXAMPLE_STORES,
} from '../../server/src/core/rules/exampleDocuments';

/** Short names for the files of the invented unit, so that a test can be read. All lie in one folder. */
export const FAMILY = 'k1.family.yaml';
export const KIT = 'k1.kit.yaml';
export const STORES = 'bay.stores.yaml';
export const PROCEDURE = 'op.procedure.yaml';

const inOneFolder = (text: string) =>
  text.replace(/\.\.\/\w+\/[\w-]+\.(family|kit|stores)\.yaml/g, (_, kind) => {
    const paths: Record<string, string> = { family: FAMILY, kit: KIT, stores: STORES };
    return paths[kind] ?? '';
  });

export const HEAD = inOneFolder(EXAMPLE_HEAD);
const FAMILY_TEXT = EXAMPLE_FAMILY.replace(
  'base: core\n',
  `identify:
  nut-hand: { name: hand of the nut, values: [left, right], when: k1-b }
base: core
`,
);

/** The documents of the unit, with texts added behind or replaced. `marks` puts marks around the words that it names. */
export function example(
  procedure: string,
  marks: Readonly<Record<string, readonly (readonly [string, string])[]>> = {},
): Record<string, string> {
  const files: Record<string, string> = {
    [FAMILY]: FAMILY_TEXT,
    [KIT]: inOneFolder(EXAMPLE_KIT),
    [STORES]: EXAMPLE_STORES,
    [PROCEDURE]: procedure,
  };
  for (const [path, replacements] of Object.entries(marks)) {
    for (const [from, to] of replacements) {
      const text = files[path] ?? '';
      if (!text.includes(from)) throw new Error(`No "${from}" in ${path}`);
      files[path] = text.replace(from, to);
    }
  }
  return files;
}

/** A procedure of one phase with one step and these instructions. */
export function steps(instructions: string, more = ''): string {
  const lines = instructions
    .trim()
    .split('\n')
    .map((line) => `          ${line}\n`)
    .join('');
  return `${HEAD}${more}phases:
  - phase: Assemble
    steps:
      - step: fit-wheel
        title: Fit the wheel
        do:
${lines}`;
}
