import { valuesOf } from '../../../model/values';
import { liesWithin } from '../../../quantity';
import { pairOf } from '../../../syntax/node';
import { listOf } from '../storesUses';
import type { EntryLines } from './block';
import { gripFor } from './grip';
import type { Place, Scene } from './scene';
import { does } from './touching';

/**
 * The instruction that tightens a fastener. Without a torque of its own it asks for the family's. What it is done with
 * must be certain; undefined where it is not.
 */
export function tightening(scene: Scene, fastener: string): EntryLines | undefined {
  const alike = scene.first((one) => does(one, ['tighten'], fastener) && scene.failure.where.isWithin(one.view.where));
  const tools = alike === undefined ? torqueTools(scene, fastener) : line(alike, 'with');
  const hold = scene.family.part(fastener)?.hold === undefined ? [] : holding(scene, fastener);
  return tools === undefined || hold === undefined ? undefined : [`tighten: ${fastener}`, ...tools, ...hold];
}

/** The one torque tool of the procedure's list that covers every torque of the family, and what takes hold of the fastener. */
function torqueTools(scene: Scene, fastener: string): EntryLines | undefined {
  const { procedure, family } = scene;
  const torques = valuesOf(family.part(fastener)?.torque);
  if (torques.length === 0 || !procedure.storesComplete) return [];
  const fitting = listOf(procedure, 'tool').filter(({ id }) => {
    const tool = procedure.tools.get(id)?.entry.value;
    const range = tool?.range?.reading.quantity;
    if (range === undefined || (tool?.kind?.value !== 'torque-wrench' && tool?.kind?.value !== 'torque-screwdriver'))
      return false;
    return torques.every(({ reading: { quantity } }) => quantity !== undefined && liesWithin(quantity, range));
  });
  const [wrench] = fitting;
  const grip = gripFor(scene, fastener);
  if (wrench === undefined || fitting.length > 1 || grip === undefined) return undefined;
  return [`with: [${wrench.id}, ${grip}]`];
}

/** How it is counter-held elsewhere in the procedure. */
function holding(scene: Scene, fastener: string): EntryLines | undefined {
  const alike = scene.first(
    (one) => does(one, ['tighten', 'loosen', 'remove'], fastener) && (line(one, 'hold') ?? []).length > 0,
  );
  return alike === undefined ? undefined : line(alike, 'hold');
}

/** A key of an instruction as it is written; none where it does not have it, undefined where it takes several lines. */
export function line({ view: { instruction } }: Place, key: string): EntryLines | undefined {
  const { node } = instruction;
  const value = node.kind === 'map' ? pairOf(node, key)?.value : undefined;
  if (value === undefined) return [];
  const text = value.item.text.slice(value.from, value.to).trimEnd();
  return text.includes('\n') ? undefined : [`${key}: ${text}`];
}
