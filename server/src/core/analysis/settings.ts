import type { SyntaxDocument } from '../syntax/readDocument';
import { documentValue } from './documentUnit';
import type { Snapshot } from './snapshot';
import { settingsCandidates, type Uri } from './uri';

export type Severity = 'error' | 'warning' | 'info';
export type Paper = 'a4' | 'letter';
export type Language = 'en' | 'de' | 'es';

/** The settings that hold for a document: what its settings document says, and defaults for the rest. */
export interface Settings {
  /** Severities that differ from a rule's own; `off` silences it. */
  readonly severities: ReadonlyMap<string, Severity | 'off'>;
  /** First and second unit by dimension, as symbols. */
  readonly units: ReadonlyMap<string, readonly string[]>;
  readonly paper: Paper;
  readonly language: Language;
}

export const DEFAULT_SETTINGS: Settings = { severities: new Map(), units: new Map(), paper: 'a4', language: 'en' };

/** Finds the nearest settings document of the opened folder that has been loaded. */
export function settingsFor(snapshot: Snapshot, uri: Uri): Settings {
  for (const candidate of settingsCandidates(uri, snapshot.roots)) {
    const document = snapshot.document(candidate);
    if (document !== undefined) return settingsOf(document);
  }
  return DEFAULT_SETTINGS;
}

function settingsOf(document: SyntaxDocument): Settings {
  const known = remembered.get(document);
  if (known !== undefined) return known;
  const value = documentValue(document, 'settings');
  const severities = (value?.severities ?? []).flatMap(({ id, value: choice }) =>
    choice.value === undefined ? [] : [[id.id, choice.value] as const],
  );
  const units = Object.entries(value?.units ?? {}).flatMap(([dimension, symbols]) =>
    Array.isArray(symbols) ? [[dimension, symbols.map((symbol: { text: string }) => symbol.text)] as const] : [],
  );
  const settings: Settings = {
    severities: new Map(severities),
    units: new Map(units),
    paper: value?.paper?.value ?? DEFAULT_SETTINGS.paper,
    language: value?.language?.value ?? DEFAULT_SETTINGS.language,
  };
  remembered.set(document, settings);
  return settings;
}

const remembered = new WeakMap<SyntaxDocument, Settings>();
