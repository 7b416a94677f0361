import type { MapNode, Node, Pair } from '../syntax/node';
import { nearest } from '../text/near';
import { VERBS } from './generated/shapes';

const verbs: ReadonlySet<string> = new Set(VERBS);

/** The definition that an instruction is read by: that of its verb, or of a plain sentence. */
export function instructionDef(node: Node): string {
  if (node.kind !== 'map') return 'procedure/sentence';
  const verb = verbPairOf(node)?.key.text ?? misspeltVerb(node);
  return verb === undefined ? 'procedure/sentence' : `procedure/verb-${verb}`;
}

/** The first key that is a verb; an instruction has one. */
export function verbPairOf(node: MapNode): Pair | undefined {
  return node.pairs.find((pair) => verbs.has(pair.key.text));
}

export function isVerb(key: string): boolean {
  return verbs.has(key);
}

/** A first key that is nearly a verb was meant as that verb, unless the instruction has words of its own. */
function misspeltVerb(node: MapNode): string | undefined {
  const first = node.pairs[0]?.key.text;
  if (first === undefined || node.pairs.some((pair) => pair.key.text === 'say')) return undefined;
  return /^[a-z-]+$/.test(first) ? nearest(first, VERBS)[0] : undefined;
}
