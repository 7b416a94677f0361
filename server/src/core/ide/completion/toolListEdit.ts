import { documentValue } from '../../analysis/documentUnit';
import { newlineOf } from '../../rules/support/newline';
import { type ListNode, type MapNode, type Node, pairOf } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { TextEdit } from '../../text/span';
import { entryBehind, insertAt, startOfLine, withRemarksAbove } from '../lineEdits';
import { compareIds } from '../toolOrder';

/** Keys of a procedure that come behind its tools, in the order of the schema. */
const BEHIND_TOOLS = [
  'consumables',
  'protective-equipment',
  'readings',
  'figures',
  'before-you-start',
  'phases',
  'concessions',
  'at-installation',
  'note',
];

/**
 * The edit that lists a tool in the head of a procedure, written as its list is: between brackets or line by line, in its
 * place where the list is sorted, else at the end. Starts the list where there is none. Undefined where the tool is
 * listed, or the document cannot be read.
 */
export function toolListEdit(document: SyntaxDocument, toolId: string): TextEdit | undefined {
  const { root } = document;
  const value = documentValue(document, 'procedure');
  if (root === undefined || value === undefined || value.tools?.some(({ id }) => id === toolId)) return undefined;
  const pair = pairOf(root, 'tools');
  if (pair === undefined) return startList(document, root, toolId);
  if (pair.value?.kind === 'list' && pair.value.items.length > 0) return addEntry(document, pair.value, toolId);
  const key = document.spanOf(pair.key);
  if (pair.value === undefined) return insertAt(key.end + 1, ` [${toolId}]`);
  const span = document.spanOf(pair.value);
  const written = pair.value.kind === 'scalar' ? `[${pair.value.text}, ${toolId}]` : `[${toolId}]`;
  return pair.value.kind === 'map' ? undefined : { span, text: written };
}

function addEntry(document: SyntaxDocument, list: ListNode, id: string): TextEdit | undefined {
  const { items } = list;
  const ids = items.map((item) => (item.kind === 'scalar' ? item.text : ''));
  const isSorted = ids.length > 1 && ids.every((one, i) => i === 0 || compareIds(ids[i - 1] ?? '', one) <= 0);
  const next = isSorted ? ids.findIndex((one) => compareIds(one, id) > 0) : -1;
  const before = next < 0 ? undefined : items[next];
  const last = items.at(-1);
  if (last === undefined) return undefined;
  if (list.flow) return inFlow(document, before, last, id);
  return before === undefined ? entryBehind(document, last, id) : beforeLine(document, before, id);
}

function inFlow(document: SyntaxDocument, before: Node | undefined, last: Node, id: string): TextEdit {
  const at = before === undefined ? document.spanOf(last).end : document.spanOf(before).start;
  return insertAt(at, before === undefined ? `, ${id}` : `${id}, `);
}

/** A line of its own, above the entry and below the remarks that stand over it, which speak of the entry's group. */
function beforeLine({ text, spanOf }: SyntaxDocument, before: Node, id: string): TextEdit {
  const start = startOfLine(text, spanOf(before).start);
  return insertAt(start, `${text.slice(start, spanOf(before).start)}${id}${newlineOf(text)}`);
}

function startList(document: SyntaxDocument, root: MapNode, id: string): TextEdit | undefined {
  const { text } = document;
  const newline = newlineOf(text);
  const line = `tools: [${id}]`;
  const behind = root.pairs.find(({ key }) => BEHIND_TOOLS.includes(key.text));
  if (behind !== undefined) {
    const at = withRemarksAbove(text, document.spanOf(behind.key).start);
    return insertAt(at, line + newline);
  }
  const end = text.trimEnd().length;
  return end === 0 ? undefined : insertAt(end, newline + line);
}
