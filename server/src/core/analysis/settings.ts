import type { SyntaxDocument } from '../syntax/readDocument';
import { documentValue } from './documentUnit';
import { DEFAULT_SETTINGS, type Settings } from './settingsValue';
import type { Snapshot } from './snapshot';
import { settingsCandidates, type Uri } from './uri';

export { DEFAULT_SETTINGS, type Language, type Paper, type Settings, type Severity, type Sides } from './settingsValue';

/**
 * The settings that hold for a document: what the nearest settings document of the opened folder says, and for the rest
 * what the editor prefers there. A folder's own settings come first, so that everybody who opens it reads the same.
 */
export function settingsFor(snapshot: Snapshot, uri: Uri): Settings {
  const preferred = snapshot.preferencesFor(uri) ?? DEFAULT_SETTINGS;
  for (const candidate of settingsCandidates(uri, snapshot.roots)) {
    const document = snapshot.document(candidate);
    if (document !== undefined) return settingsOf(document, preferred);
  }
  return preferred;
}

function settingsOf(document: SyntaxDocument, preferred: Settings): Settings {
  const known = remembered.get(document) ?? new WeakMap<Settings, Settings>();
  remembered.set(document, known);
  const settings = known.get(preferred) ?? readSettings(document, preferred);
  known.set(preferred, settings);
  return settings;
}

function readSettings(document: SyntaxDocument, preferred: Settings): Settings {
  const value = documentValue(document, 'settings');
  const severities = (value?.severities ?? []).flatMap(({ id, value: choice }) =>
    choice.value === undefined ? [] : [[id.id, choice.value] as const],
  );
  const units = Object.entries(value?.units ?? {}).flatMap(([dimension, symbols]) =>
    Array.isArray(symbols) ? [[dimension, symbols.map((symbol: { text: string }) => symbol.text)] as const] : [],
  );
  return {
    severities: new Map([...preferred.severities, ...severities]),
    units: new Map([...preferred.units, ...units]),
    paper: value?.paper?.value ?? preferred.paper,
    sides: value?.sides?.value ?? preferred.sides,
    language: value?.language?.value ?? preferred.language,
    writtenIn: value?.writtenIn?.value ?? preferred.writtenIn,
    ...lettersOf(value?.revisionLetters?.skip?.text ?? preferred.skippedLetters),
  };
}

function lettersOf(skippedLetters: string | undefined): Pick<Settings, 'skippedLetters'> {
  return skippedLetters === undefined ? {} : { skippedLetters };
}

/** By what the editor prefers; the same document gives the same settings, by which steps are remembered. */
const remembered = new WeakMap<SyntaxDocument, WeakMap<Settings, Settings>>();
