import type { Node } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { TextEdit } from '../../text/span';
import { keysOfBlock, type OpenBlock, openBlocks } from './openBlocks';
import { shapeBelow } from './shapeBelow';

const STEP = 2;

/** The line that is typed on, and all lines; columns count spaces. */
interface Typing {
  readonly document: SyntaxDocument;
  readonly lines: readonly string[];
  readonly index: number;
  /** Offsets of the line, without its line end. */
  readonly start: number;
  readonly text: string;
  readonly blocks: readonly OpenBlock[];
  /** The last line above that is no comment and not blank. */
  readonly above: string;
}

/**
 * What to change on the line that was just typed on: after a line end its indentation and the dash of a list that goes
 * on, after a dash or a colon its indentation where it cannot stand. No other line changes.
 */
export function formatOnType(document: SyntaxDocument, offset: number, typed: string): TextEdit[] {
  const typing = typingAt(document, offset);
  const wanted = typed === '\n' ? afterLineEnd(typing) : typed === '-' ? afterDash(typing) : afterColon(typing);
  if (wanted === undefined) return [];
  const old = /^\s*/.exec(typing.text)?.[0] ?? '';
  return old === wanted ? [] : [{ span: { start: typing.start, end: typing.start + old.length }, text: wanted }];
}

function typingAt(document: SyntaxDocument, offset: number): Typing {
  const lines = document.text.split('\n');
  const before = document.text.slice(0, offset);
  const index = before.split('\n').length - 1;
  const above = lines.slice(0, index).findLast((line) => !/^\s*(?:#|$)/.test(line)) ?? '';
  return {
    document,
    lines,
    index,
    start: before.lastIndexOf('\n') + 1,
    text: (lines[index] ?? '').replace(/\r$/, ''),
    blocks: openBlocks(document.kind, lines, index),
    above: above.trimEnd(),
  };
}

function afterLineEnd(typing: Typing): string | undefined {
  const { text, lines, index, above, blocks } = typing;
  const previous = lines[index - 1] ?? '';
  if (text.trim() !== '' || /^\s*(?:#|$)/.test(previous)) return undefined;
  const around = textAround(typing);
  if (around === 'block') return /^\s*/.exec(previous)?.[0];
  const inner = blocks.at(-1);
  if (around === 'other' || inner === undefined) return undefined;
  if (/(?:: |- )\s*[|>][-+\d]*\s*(?:#.*)?$/.test(above)) return ' '.repeat(inner.column + STEP);
  if (isKeyAlone(above)) return belowKey(typing, inner);
  if (inner.kind === 'map') return ' '.repeat(inner.column);
  // A dash with nothing behind it is where the list was to end.
  return above.trim() === '-' ? undefined : `${' '.repeat(inner.column)}- `;
}

/** A list goes below its key with a dash, a map without; of anything else nobody knows. */
function belowKey({ lines, index }: Typing, { column, keys, shape }: OpenBlock): string | undefined {
  const wanted = shapeBelow(shape, keys[0] ?? '');
  const next = lines.slice(index + 1).find((line) => !/^\s*(?:#|$)/.test(line)) ?? '';
  const indent = /^ */.exec(next)?.[0].length ?? 0;
  const inner = indent > column ? indent : column + STEP;
  if (wanted?.as === 'list') return `${' '.repeat(inner)}- `;
  const isMap = wanted?.as === 'object' || wanted?.as === 'entries' || wanted?.as === 'unit';
  return isMap ? ' '.repeat(inner) : undefined;
}

/** A dash in the column of keys can only have been meant for a list: below the key, or that of the map around it. */
function afterDash({ text, above, blocks }: Typing): string | undefined {
  if (!/^ *-\s*$/.test(text)) return undefined;
  const column = text.indexOf('-');
  const at = blocks.findLastIndex((block) => block.column === column && block.kind === 'map');
  const map = blocks[at];
  if (map === undefined || blocks.some((block) => block.column === column && block.kind === 'list')) return undefined;
  if (at === blocks.length - 1 && isKeyAlone(above)) {
    const below = shapeBelow(map.shape, map.keys[0] ?? '');
    return below !== undefined && (below.as === 'list' || ('many' in below && below.many))
      ? ' '.repeat(column + STEP)
      : undefined;
  }
  const list = blocks[at - 1];
  return list?.kind === 'list' ? ' '.repeat(list.column) : undefined;
}

/** A key where no map stands goes to the only open map that may have it and has not. */
function afterColon({ text, above, blocks }: Typing): string | undefined {
  const [, indent = '', key = ''] = /^( *)([\w-]+):\s*$/.exec(text) ?? [];
  if (key === '' || isKeyAlone(above)) return undefined;
  const maps = blocks.filter(({ kind }) => kind === 'map');
  if (indent === '' || maps.some(({ column }) => column === indent.length)) return undefined;
  const [only, other] = maps.filter(
    (map) => map.column > 0 && keysOfBlock(map)?.[key] !== undefined && !map.keys.includes(key),
  );
  return only === undefined || other !== undefined ? undefined : ' '.repeat(only.column);
}

function isKeyAlone(line: string): boolean {
  return /^\s*(?:- +)*[\w-]+:\s*(?:#.*)?$/.test(line);
}

/** Whether the line before is part of a text or of brackets that run over several lines. */
function textAround({ document, start }: Typing): 'block' | 'other' | undefined {
  const end = start - (document.text.slice(0, start).endsWith('\r\n') ? 2 : 1);
  const place = document.itemAt(Math.max(0, end));
  return place?.item.root === undefined ? undefined : aroundIn(place.item.root, place.offset);
}

function aroundIn(node: Node, offset: number): 'block' | 'other' | undefined {
  if (offset <= node.from) return undefined;
  const source = node.item.text.slice(node.from, node.to);
  const isOpen = offset < node.to || !endsItself(node, source.trimEnd());
  if (node.kind === 'scalar') {
    if (node.style !== 'literal' && node.style !== 'folded') return isOpen ? 'other' : undefined;
    const isBelow = source
      .slice(0, offset - node.from)
      .trimEnd()
      .includes('\n');
    return offset <= node.to && isBelow ? 'block' : undefined;
  }
  if (node.flow) return isOpen ? 'other' : undefined;
  const inner = node.kind === 'list' ? node.items : node.pairs.flatMap(({ value }) => value ?? []);
  return inner.map((one) => aroundIn(one, offset)).find((one) => one !== undefined);
}

/** Whether the sign that ends a text in quotes or something in brackets has been typed yet. */
function endsItself(node: Node, source: string): boolean {
  if (node.kind === 'scalar') return node.style === 'plain' || (source.length > 1 && source.at(-1) === source[0]);
  return /[\]}]$/.test(source) || !/^[[{]/.test(source);
}
