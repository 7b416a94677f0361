/** The kinds of document; a file's name alone tells which it is. */
export type DocumentKind = 'family' | 'kit' | 'stores' | 'procedure' | 'settings';

const BY_SUFFIX: readonly (readonly [RegExp, DocumentKind])[] = [
  [/\.family\.ya?ml$/i, 'family'],
  [/\.kit\.ya?ml$/i, 'kit'],
  [/\.stores\.ya?ml$/i, 'stores'],
  [/\.procedure\.ya?ml$/i, 'procedure'],
  [/(?:^|\/)witnessmark\.ya?ml$/i, 'settings'],
];

/** The kind of the document at a path or URI, or undefined where its name is none of ours. */
export function documentKindOf(path: string): DocumentKind | undefined {
  return BY_SUFFIX.find(([pattern]) => pattern.test(path))?.[1];
}

/** How the file of a kind is named, for messages. */
export function filePatternOf(kind: DocumentKind): string {
  return kind === 'settings' ? 'witnessmark.yaml' : `*.${kind}.yaml`;
}
