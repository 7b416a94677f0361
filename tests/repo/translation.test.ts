import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { repoFiles, repoPath } from './repoFiles';
import { asked, bareTexts, keysNamed, placesIn, untranslated } from './translationRules';

type Texts = Record<string, string>;

const read = (path: string) => readFileSync(repoPath(path), 'utf8');
const texts = (path: string): Texts => JSON.parse(read(path));
const manifest = JSON.parse(read('package.json'));
const sources = repoFiles('client/src').filter((path) => path.endsWith('.ts'));

describe('the rules see what they are for', () => {
  test('a text of the manifest that is not a key is reported by its place', () => {
    const contributes = {
      commands: [{ command: 'a.b', title: 'Do it', category: 'Witnessmark' }],
      configuration: { properties: { x: { description: '%x%', enumDescriptions: ['Yes'], enum: ['yes'] } } },
    };
    expect(untranslated({ description: 'A tool', contributes })).toEqual([
      'description',
      'contributes.commands.0.title',
      'contributes.configuration.properties.x.enumDescriptions.0',
    ]);
  });

  test('a text that is shown without being looked up is reported, an id or a key is not', () => {
    const source = `
      void vscode.window.showInformationMessage('Something happened.');
      const options = { title: 'Print it', placeHolder: \`Choose \${one}\`, command: 'a.b' };
      item.tooltip = 'More about it';
      void vscode.window.showErrorMessage(vscode.l10n.t('Looked up'));`;
    expect(bareTexts(source)).toEqual(["'Something happened.'", "'Print it'", `\`Choose \${one}\``, "'More about it'"]);
  });

  test('what is looked up is found over lines and with an apostrophe', () => {
    expect(asked("vscode.l10n.t('a') + vscode.l10n.t(\n  'it\\'s {0}', one)")).toEqual(['a', "it's {0}"]);
  });
});

describe('the manifest', () => {
  test('shows nothing that cannot be translated', () => {
    expect(untranslated(manifest)).toEqual([]);
  });

  test('names every text that there is, and no other', () => {
    expect(keysNamed(read('package.json'))).toEqual(Object.keys(texts('package.nls.json')).sort());
  });

  test.each(['de', 'es'])('is whole in %s', (language) => {
    const [english, other] = [texts('package.nls.json'), texts(`package.nls.${language}.json`)];
    expect(Object.keys(other)).toEqual(Object.keys(english));
    for (const [key, text] of Object.entries(other))
      expect([key, commandsIn(text)]).toEqual([key, commandsIn(english[key] ?? '')]);
  });
});

describe('the extension', () => {
  test('shows nothing that it does not look up', () => {
    expect(sources.length).toBeGreaterThan(10);
    expect(sources.flatMap((path) => bareTexts(read(path)).map((text) => `${path}: ${text}`))).toEqual([]);
  });

  test('looks up every text of the bundle, and no other', () => {
    const all = new Set(sources.flatMap((path) => asked(read(path))));
    expect(Object.keys(texts('client/l10n/bundle.l10n.json')).sort()).toEqual([...all].sort());
  });

  test.each(['de', 'es'])('is whole in %s, with a place for each value', (language) => {
    const [english, other] = [texts('client/l10n/bundle.l10n.json'), texts(`client/l10n/bundle.l10n.${language}.json`)];
    expect(Object.keys(other)).toEqual(Object.keys(english));
    for (const [text, translated] of Object.entries(other))
      expect([text, placesIn(translated)]).toEqual([text, placesIn(text)]);
  });
});

/** The commands that a text links to. */
function commandsIn(text: string): string[] {
  return [...text.matchAll(/\(command:[\w.]+\)/g)].map(([link]) => link);
}
