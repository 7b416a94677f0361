import { UNIT_SHAPES } from '../../model/generated/shapes';
import type { DocumentKind } from '../../syntax/documentKind';
import type { ScalarNode } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';

const KINDS: readonly DocumentKind[] = ['procedure', 'family', 'kit', 'stores', 'settings'];
const KEYS = new Map(KINDS.map((kind) => [kind, new Set(Object.keys(UNIT_SHAPES[kind]?.shape.keys ?? {}))]));

/** The kind that a document is by its keys, with the first key that tells. */
export interface OtherKind {
  readonly kind: DocumentKind;
  readonly key: ScalarNode;
}

const remembered = new WeakMap<SyntaxDocument, OtherKind | 'own'>();

/** The kind that the keys of a document speak of, where that is another one than its file name says. */
export function otherKindOf(document: SyntaxDocument): OtherKind | undefined {
  const known = remembered.get(document) ?? decide(document);
  remembered.set(document, known);
  return known === 'own' ? undefined : known;
}

export function isOfOtherKind(document: SyntaxDocument): boolean {
  return otherKindOf(document) !== undefined;
}

/** Another kind it is where that kind knows keys which its own does not, and the other way round there are none. */
function decide(document: SyntaxDocument): OtherKind | 'own' {
  const keys = (document.root?.pairs ?? []).map((pair) => pair.key);
  let best: { other: OtherKind; count: number } | undefined;
  for (const kind of KINDS) {
    const foreign = keys.filter((key) => has(kind, key) && !has(document.kind, key));
    const own = keys.filter((key) => has(document.kind, key) && !has(kind, key));
    const [first] = foreign;
    if (first === undefined || own.length > 0 || foreign.length <= (best?.count ?? 0)) continue;
    best = { other: { kind, key: first }, count: foreign.length };
  }
  return best?.other ?? 'own';
}

function has(kind: DocumentKind, key: ScalarNode): boolean {
  return KEYS.get(kind)?.has(key.text) === true;
}
