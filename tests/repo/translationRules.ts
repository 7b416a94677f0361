// What can be shown in another language, and how that is seen in the manifest and in the extension's source.

/** Keys of the manifest whose text people read. */
const SHOWN = ['title', 'shortTitle', 'description', 'markdownDescription', 'enumDescriptions', 'label', 'altText'];
/** Names stay what they are. */
const NAMES = ['Witnessmark'];

/** The places in the manifest where a text stands itself and not the key of one. */
export function untranslated(manifest: {
  description?: unknown;
  capabilities?: unknown;
  contributes?: unknown;
}): string[] {
  const { description, capabilities, contributes } = manifest;
  return shownIn({ description, capabilities, contributes }, '')
    .filter(({ text }) => !/^%[\w.-]+%$/.test(text) && !NAMES.includes(text))
    .map(({ at }) => at);
}

function shownIn(value: unknown, at: string, isShown = false): { at: string; text: string }[] {
  if (typeof value === 'string') return isShown ? [{ at, text: value }] : [];
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) =>
    shownIn(inner, at === '' ? key : `${at}.${key}`, SHOWN.includes(key) || (isShown && Array.isArray(value))),
  );
}

/** The keys that the manifest names, sorted and each once. */
export function keysNamed(manifest: string): string[] {
  return [...new Set([...manifest.matchAll(/"%([\w.-]+)%"/g)].map(([, key]) => key ?? ''))].sort();
}

const TEXT = /'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`/.source;
const MESSAGE = new RegExp(`show(?:Information|Warning|Error)Message\\(\\s*(${TEXT})`, 'g');
const PROPERTY = new RegExp(
  `\\b(?:title|prompt|placeHolder|saveLabel|openLabel|tooltip|label|detail|name)(?::| =) (${TEXT})`,
  'g',
);

/** The literals in a source that the editor would show as they stand; a single word in small letters is an id. */
export function bareTexts(source: string): string[] {
  return [MESSAGE, PROPERTY]
    .flatMap((pattern) => [...source.matchAll(pattern)])
    .sort((a, b) => a.index - b.index)
    .map(([, text]) => text ?? '')
    .filter((text) => /[A-Z]|\S\s+\S/.test(text.replaceAll(/\$\{[^}]*\}|[`']/g, '')));
}

/** The texts that a source looks up. */
export function asked(source: string): string[] {
  return [...source.matchAll(/\bl10n\.t\(\s*'((?:[^'\\\n]|\\.)*)'/g)].map(([, text]) =>
    (text ?? '').replaceAll(/\\(.)/g, '$1'),
  );
}

/** The places for values in a text: `{0}`, `{1}`. */
export function placesIn(text: string): string[] {
  return [...new Set([...text.matchAll(/\{\d+\}/g)].map(([place]) => place))].sort();
}
