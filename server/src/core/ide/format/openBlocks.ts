import { UNIT_SHAPES } from '../../model/generated/shapes';
import { isVerb } from '../../model/instructionDef';
import type { Keys, Shape } from '../../model/shape';
import type { DocumentKind } from '../../syntax/documentKind';
import { documentShape, keysOf, shapeBelow, shapeOfItems } from './shapeBelow';

/** A map or list that a line of the document may go on with. */
export interface OpenBlock {
  readonly kind: 'map' | 'list';
  readonly column: number;
  /** The keys that a map has above the line, the nearest first. */
  readonly keys: readonly string[];
  readonly shape: Shape | undefined;
}

interface Found {
  kind: 'map' | 'list';
  column: number;
  keys: string[];
  closed: boolean;
}

const ENTRY = /^( *)((?:- +)*)(?:(-)$|([\w-]+):(?=\s|$))?/;

/** The maps and lists that are open above a line, the outermost first; by lines alone, since text that is typed is broken. */
export function openBlocks(kind: DocumentKind, lines: readonly string[], index: number): OpenBlock[] {
  const found: Found[] = [];
  for (let i = index - 1; i >= 0; i--) {
    const line = lines[i] ?? '';
    // What stands deeper than the last block that was found lies in it, and most lines do.
    if (line.startsWith(' '.repeat((found.at(-1)?.column ?? 1_000) + 1)) || /^\s*(?:#|$)/.test(line)) continue;
    for (const entry of entriesOf(line.trimEnd()).reverse()) addEntry(found, entry);
    // Nothing is around the keys of the document, and all of them are never needed.
    if (found.at(-1)?.kind === 'map' && found.at(-1)?.column === 0) break;
  }
  return withShapes(kind, found.reverse());
}

/** What a line opens or goes on with, from left to right. */
function entriesOf(line: string): { kind: 'map' | 'list'; column: number; key: string; opens: boolean }[] {
  const [, indent = '', dashes = '', last, key] = ENTRY.exec(line) ?? [];
  const entries = [...dashes.matchAll(/-/g)].map(({ index }) => ({
    kind: 'list' as const,
    column: indent.length + index,
    key: '',
    opens: false,
  }));
  const column = indent.length + dashes.length;
  if (last !== undefined) return [...entries, { kind: 'list', column, key: '', opens: false }];
  return key === undefined ? entries : [...entries, { kind: 'map', column, key, opens: dashes !== '' }];
}

function addEntry(found: Found[], { kind, column, key, opens }: ReturnType<typeof entriesOf>[number]): void {
  const last = found.at(-1);
  const isSame = last?.kind === kind && last.column === column;
  // A list may stand right below its key.
  const isOuter =
    last === undefined || column < last.column || (column === last.column && kind === 'map' && last.kind === 'list');
  if (isSame && !last.closed) {
    if (kind === 'map') last.keys.push(key);
    if (opens) last.closed = true;
  } else if (isOuter) {
    if (last !== undefined) last.closed = true;
    found.push({ kind, column, keys: kind === 'map' ? [key] : [], closed: opens });
  }
}

function withShapes(kind: DocumentKind, found: readonly Found[]): OpenBlock[] {
  let shape = documentShape(kind);
  return found.map((one) => {
    const own = shape?.as === 'instruction' ? instructionShape(one.keys) : shape;
    shape = one.kind === 'list' ? shapeOfItems(own) : shapeBelow(own, one.keys[0] ?? '');
    return { kind: one.kind, column: one.column, keys: one.keys, shape: own };
  });
}

function instructionShape(keys: readonly string[]): Shape | undefined {
  const verb = keys.findLast(isVerb);
  return UNIT_SHAPES[verb === undefined ? 'procedure/sentence' : `procedure/verb-${verb}`]?.shape;
}

/** The keys that a map may have by its definition. */
export function keysOfBlock({ shape }: OpenBlock): Keys | undefined {
  return keysOf(shape);
}
