import { dirname, join } from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';
import { repoPath } from './repoFiles';

/** The compiler's messages about one file of that text, as if it lay in the folder and were compiled with it. */
function messagesFor(folder: string, text: string): string[] {
  const configPath = repoPath(`${folder}/tsconfig.json`);
  const { config } = ts.readConfigFile(configPath, ts.sys.readFile);
  const { options } = ts.parseJsonConfigFileContent(config, ts.sys, dirname(configPath), undefined, configPath);
  const path = join(dirname(configPath), 'planted.ts');
  const program = ts.createProgram(
    [path],
    { ...options, composite: false, emitDeclarationOnly: false, noEmit: true },
    hostWith(options, path, text),
  );
  const diagnostics = ts.getPreEmitDiagnostics(program);
  return diagnostics.map((diagnostic) => ts.flattenDiagnosticMessageText(diagnostic.messageText, '\n'));
}

function hostWith(options: ts.CompilerOptions, path: string, text: string): ts.CompilerHost {
  const host = ts.createCompilerHost(options);
  const { readFile, fileExists, getSourceFile } = host;
  host.fileExists = (name) => name === path || fileExists(name);
  host.readFile = (name) => (name === path ? text : readFile(name));
  host.getSourceFile = (name, version, ...rest) =>
    name === path ? ts.createSourceFile(name, text, version) : getSourceFile(name, version, ...rest);
  return host;
}

const outside = [
  { name: 'node:fs', text: "import { readFileSync } from 'node:fs';\nexport const used = readFileSync;\n" },
  { name: 'process', text: 'export const used = process.env;\n' },
  { name: 'console', text: "console.log('x');\nexport {};\n" },
  { name: 'setTimeout', text: 'setTimeout(() => 0, 1);\nexport {};\n' },
  { name: 'document', text: 'export const used = document.title;\n' },
];

describe.each(['server/src/core', 'server/src/lsp', 'server/src/pdf'])('the compiler, in %s', (folder) => {
  test.each(outside)('rejects $name', ({ name, text }) => {
    expect(messagesFor(folder, text)).toEqual([expect.stringContaining(`Cannot find`)]);
    expect(messagesFor(folder, text)[0]).toContain(name);
  });

  test('accepts what the language itself has', () => {
    expect(messagesFor(folder, 'export const used = [1, 2].toSorted().at(-1);\n')).toEqual([]);
  });

  test('takes no element of a list for granted', () => {
    expect(messagesFor(folder, 'export const used: number = [1, 2][0];\n')).toEqual([
      expect.stringContaining("'undefined' is not assignable"),
    ]);
  });
});

test('the compiler accepts Node where Node is', () => {
  expect(messagesFor('server/src/node', outside[0]?.text ?? '')).toEqual([]);
});
