import type { ProcedureView } from '../../analysis/procedureView';
import type { ListNode, MapNode } from '../../syntax/node';
import { pairOf } from '../../syntax/node';
import type { FixDraft } from '../ruleContext';
import { newlineOf } from './newline';

/** The fix that adds an id to one of the procedure's lists, or starts the list where there is none. */
export function addToList(procedure: ProcedureView, key: 'tools' | 'consumables', id: string): FixDraft[] {
  const root = procedure.document.root;
  if (root === undefined) return [];
  const title = `Add ${id} to the list of ${key}`;
  const value = pairOf(root, key)?.value;
  if (value?.kind === 'list') return [{ title, edits: [appendTo(value, id)] }];
  if (value?.kind === 'scalar') {
    const { item, from, to } = value;
    return [{ title, edits: [{ range: { item, from, to }, text: `[${value.text}, ${id}]` }] }];
  }
  return startList(root, `${key}: [${id}]${newlineOf(procedure.document.text)}`, title);
}

/** The edit that puts an id behind the last entry of a list. */
export function appendTo(list: ListNode, id: string): FixDraft['edits'][number] {
  const last = list.items.at(-1);
  if (last === undefined) return { range: list, text: `[${id}]` };
  const end = { item: last.item, from: last.to, to: last.to };
  if (list.flow) return { range: end, text: `, ${id}` };
  const lineStart = last.item.text.lastIndexOf('\n', last.from - 1) + 1;
  const newline = newlineOf(last.item.text);
  return { range: end, text: `${newline}${last.item.text.slice(lineStart, last.from)}${id}` };
}

/** A new list stands before the phases, where a reader looks for it. */
function startList(root: MapNode, line: string, title: string): FixDraft[] {
  const before = pairOf(root, 'before-you-start')?.key ?? pairOf(root, 'phases')?.key;
  if (before === undefined) return [];
  return [{ title, edits: [{ range: { item: before.item, from: before.from, to: before.from }, text: line }] }];
}
