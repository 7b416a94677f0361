import { describe, expect, test } from 'vitest';
import { DOCUMENT_TEMPLATES, type TemplateKind } from '../../client/src/templates/documentTemplates';
import { type Answers, asValue, fillTemplate, plainDocument } from '../../client/src/templates/fillTemplate';
import { fileNameFor, kitPartOf, relativePath } from '../../client/src/templates/relatedPaths';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { TODAY } from '../support/checkText';
import { openFiles } from '../support/memoryFiles';

const PATHS: Readonly<Record<TemplateKind, string>> = {
  family: 'families/my-unit.family.yaml',
  kit: 'kits/k-100.kit.yaml',
  stores: 'stores/bay-1.stores.yaml',
  procedure: 'procedures/op-100.procedure.yaml',
  settings: 'witnessmark.yaml',
};
const KINDS = Object.keys(PATHS) as TemplateKind[];

/** A folder in which every document was begun from its template. */
function begun(answers: Partial<Record<TemplateKind, Answers>> = {}, paths = PATHS): Record<string, string> {
  const documents = KINDS.map((kind) => [
    paths[kind],
    plainDocument(fillTemplate(DOCUMENT_TEMPLATES[kind], answers[kind] ?? {})),
  ]);
  return Object.fromEntries(documents);
}

async function foundIn(files: Record<string, string>, at: string): Promise<string[]> {
  const { workspace, document } = await openFiles(files, at);
  const { findings } = checkDocument(workspace.snapshot, document, { today: TODAY });
  return findings.map(({ severity, rule, message }) => `${severity} ${rule}: ${message}`);
}

describe.each(KINDS)('a %s begun from its template', (kind) => {
  test('has no finding as it stands', async () => {
    expect(await foundIn(begun(), PATHS[kind])).toEqual([]);
  });

  test('has no error, whatever was answered', async () => {
    const odd = `Größe: "8" #3 } \${1:x} \\ – {a, b}`;
    const paths = { ...PATHS, family: 'familien/größe 8 & mehr.family.yaml' };
    const family = '../familien/größe 8 & mehr.family.yaml';
    const answers: Partial<Record<TemplateKind, Answers>> = {
      family: { id: 'unit-8', name: odd },
      kit: { id: odd, name: odd, family, part: 'cover-seal' },
      stores: { id: odd },
      procedure: { id: odd, name: odd, family },
    };
    const files = begun(answers, paths);
    expect((await foundIn(files, paths[kind])).filter((one) => one.startsWith('error'))).toEqual([]);
    if (kind === 'stores') expect(files[paths.stores]).toContain(JSON.stringify(odd));
  });

  test('states no torque', () => {
    expect(begun()[PATHS[kind]]).not.toMatch(/torque: *\d/);
  });
});

test('an answer stays a placeholder that can be written over', () => {
  const filled = fillTemplate(DOCUMENT_TEMPLATES.procedure, { id: 'OP-410', family: '../a }.family.yaml' });
  expect(filled).toContain(`procedure: \${1:OP-410}\n`);
  expect(filled).toContain(`family: \${4:"../a \\}.family.yaml"}\n`);
});

test('a placeholder that comes twice is filled twice', () => {
  const template = { snippet: `\${1:a}: \${1:a}`, answers: { id: 1 } };
  expect(fillTemplate(template, { id: 'b' })).toBe(`\${1:b}: \${1:b}`);
});

test.each([
  ['OP-410', 'OP-410'],
  ['Größe 8', 'Größe 8'],
  ['a: b', '"a: b"'],
  ['a #3', '"a #3"'],
  ['- a', '"- a"'],
  ['a ', '"a "'],
])('%s is written %s', (text, value) => {
  expect(asValue(text)).toBe(value);
});

test.each([
  ['/w/procedures', '/w/families/a.family.yaml', '../families/a.family.yaml'],
  ['/w', '/w/families/a.family.yaml', 'families/a.family.yaml'],
  ['/w', '/w/a.family.yaml', 'a.family.yaml'],
  ['/w/a/b', '/w/c d/é.family.yaml', '../../c d/é.family.yaml'],
])('from %s to %s the path is %s', (folder, file, path) => {
  expect(relativePath(folder, file)).toBe(path);
});

test('a file name keeps letters and spaces, and takes what a system refuses for a hyphen', () => {
  expect(fileNameFor('Größe 8/2: neu?')).toBe('Größe 8-2- neu-');
  expect(fileNameFor(' .. ')).toBe('new');
});

describe('the part that a new kit begins with', () => {
  test('is the first that is always renewed', () => {
    expect(kitPartOf(begun()[PATHS.family] ?? '')).toBe('cover-seal');
    expect(kitPartOf('parts:\n    a-part: { name: a }\n    b-part:\n      renew: always\nlimits:\n')).toBe('b-part');
  });
  test('is else the first, and none where there is no part', () => {
    expect(kitPartOf('parts:\r\n  # first\r\n  a-part: { name: a }\r\n')).toBe('a-part');
    expect(kitPartOf('family: x\n')).toBeUndefined();
  });
});
