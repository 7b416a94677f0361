import { Lexer } from 'yaml';
import type { Node } from '../../../server/src/core/syntax/node';
import type { SyntaxDocument } from '../../../server/src/core/syntax/readDocument';

/** All comments of a text, in alphabetical order. */
export function commentsIn(text: string): string[] {
  return [...new Lexer().lex(text)]
    .filter((one) => one.startsWith('#'))
    .map((one) => one.trimEnd())
    .sort();
}

/** Maps whose ids are the writer's own: their order says something. */
const ID_MAPS = [
  'variants',
  'options',
  'identify',
  'parts',
  'assemblies',
  'checks',
  'dimensions',
  'limits',
  'readings',
  'tools',
  'consumables',
  'figures',
  'hand',
  'torque',
  'thread',
];

/** The ids of every map of ids, in the order of the text, by the path to the map. */
export function entriesInOrder(document: SyntaxDocument): Record<string, string[]> {
  const found: Record<string, string[]> = {};
  const visit = (node: Node | undefined, path: string, name: string): void => {
    if (node?.kind === 'list') for (const [i, item] of node.items.entries()) visit(item, `${path}/${i}`, '');
    if (node?.kind !== 'map') return;
    if (ID_MAPS.includes(name)) found[path] = node.pairs.map(({ key }) => key.text);
    for (const { key, value } of node.pairs) visit(value, `${path}/${key.text}`, key.text);
  };
  visit(document.root, '', '');
  return found;
}

/** What blank lines part: by the path to a map, its keys in groups; by that to a list, the entries that a blank line stands before. */
export function groupsIn(document: SyntaxDocument): Record<string, string[]> {
  const found: Record<string, string[]> = {};
  const visit = (node: Node | undefined, path: string): void => {
    if (node === undefined || node.kind === 'scalar' || node.flow) return;
    const parts =
      node.kind === 'list' ? node.items.map((item, i) => ({ name: `${i}`, from: item, to: item })) : mapParts(node);
    const groups: string[][] = [];
    let end = 0;
    for (const { name, from, to } of parts) {
      const start = document.spanOf(from).start;
      const isApart = end > 0 && /\n[ \t]*\r?\n/.test(document.text.slice(end, start));
      if (isApart || groups.length === 0) groups.push([name]);
      else groups.at(-1)?.push(name);
      end = endOf(document, to);
    }
    found[path] = groups.map((group) => group.sort().join(' ')).sort();
    if (node.kind === 'list') for (const [i, item] of node.items.entries()) visit(item, `${path}/${i}`);
    else for (const { key, value } of node.pairs) visit(value, `${path}/${key.text}`);
  };
  visit(document.root, '');
  return found;
}

function mapParts(node: Node & { kind: 'map' }): { name: string; from: Node; to: Node }[] {
  return node.pairs.map(({ key, value }) => ({ name: key.text, from: key, to: value ?? key }));
}

/** Where the last word of a node ends; comments behind it are not its own. */
function endOf(document: SyntaxDocument, node: Node): number {
  const last = node.kind === 'list' ? node.items.at(-1) : node.kind === 'map' ? node.pairs.at(-1) : undefined;
  if (last !== undefined && !(node.kind !== 'scalar' && node.flow))
    return endOf(document, 'key' in last ? (last.value ?? last.key) : last);
  const { start, end } = document.spanOf(node);
  return start + document.text.slice(start, end).trimEnd().length;
}
