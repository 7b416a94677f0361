import { pairOf } from '../../../syntax/node';
import { appendTo } from '../listEdit';
import type { Candidate } from './candidate';
import type { Scene } from './scene';

/** Passes that end below the torque of the family get it as their last. */
export function passFixes(scene: Scene): Candidate[] {
  const { cause, family, about, procedure } = scene;
  const torque = family.part(about)?.torque;
  if (cause?.view.instruction.verb !== 'tighten' || torque?.is !== 'one') return [];
  const { node } = cause.view.instruction;
  const list = node.kind === 'map' ? pairOf(node, 'passes')?.value : undefined;
  if (list?.kind !== 'list') return [];
  const edit = appendTo(list, torque.value.node.text);
  if (!('range' in edit)) return [];
  const title = `Add a last pass of ${torque.value.node.text}`;
  return [{ title, edits: [{ span: procedure.document.spanOf(edit.range), text: edit.text }] }];
}
