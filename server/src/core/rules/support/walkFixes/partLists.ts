import { objectIds, objectRefs } from '../../../analysis/instructions';
import { type ListNode, pairOf } from '../../../syntax/node';
import type { TextEdit } from '../../../text/span';
import { removeEntry } from '../removeEdit';
import { blockOf, removal } from './block';
import type { Candidate } from './candidate';
import type { Place, Scene } from './scene';

/** Where one instruction names two parts, the one that must come first is put right before the other. */
export function partFirst(scene: Scene, place: Place | undefined, first: string, other: string): Candidate[] {
  const list = place === undefined ? undefined : listIn(place);
  const ids = place === undefined ? [] : objectIds(place.view.instruction);
  if (list === undefined || !ids.includes(first) || ids.indexOf(first) < ids.indexOf(other)) return [];
  // A remark in the list speaks of the part beside it.
  if (/(?:^|\s)#/.test(list.item.text.slice(list.from, list.to)) || list.items.length !== ids.length) return [];
  const order = ids.filter((id) => id !== first);
  order.splice(order.indexOf(other), 0, first);
  const { document } = scene.procedure;
  const edits = list.items.flatMap((item, i): TextEdit[] => {
    const text = order[i] ?? '';
    return text === ids[i] ? [] : [{ span: document.spanOf(item), text }];
  });
  const verb = place?.view.instruction.verb === 'remove' ? 'Take off' : 'Fit';
  return [{ title: `${verb} ${scene.the(first)} before ${scene.the(other)}`, edits }];
}

/** Leaves the part out of the instruction that shows the failure, or the instruction where it names nothing else. */
export function takeOutPart(scene: Scene): Candidate[] {
  const { showing, about, procedure } = scene;
  if (showing === undefined) return [];
  const { document } = procedure;
  const { instruction } = showing.view;
  const refs = objectRefs(instruction);
  if (refs.length < 2) {
    const block = blockOf(document, instruction.node);
    return block === undefined ? [] : [{ title: `Leave "${instruction.verb}: ${about}" out`, edits: [removal(block)] }];
  }
  const list = listIn(showing);
  const entry = refs.find(({ id }) => id === about)?.node;
  const edit = list === undefined || entry === undefined ? undefined : removeEntry(document, list, entry);
  if (edit === undefined || !('span' in edit)) return [];
  return [
    { title: `Leave ${scene.the(about)} out of "${instruction.verb}"`, edits: [{ span: edit.span, text: edit.text }] },
  ];
}

function listIn({ view: { instruction } }: Place): ListNode | undefined {
  const { node, verb } = instruction;
  const value = node.kind === 'map' ? pairOf(node, verb)?.value : undefined;
  return value?.kind === 'list' ? value : undefined;
}
