import { heldValues } from '../../../analysis/heldValues';
import type { Tool } from '../../../model/generated/types';
import { compareQuantities } from '../../../quantity';
import { listOf } from '../storesUses';
import type { Scene } from './scene';
import { does } from './touching';

/**
 * What takes hold of a fastener on the wrench: as it is turned elsewhere on the same builds, or the one of the listed
 * tools that has its size. Undefined where more than one could be meant, or none is there.
 */
export function gripFor(scene: Scene, fastener: string): string | undefined {
  const turned = scene.places.filter(
    (one) => does(one, ['loosen', 'remove', 'tighten'], fastener) && scene.failure.where.isWithin(one.view.where),
  );
  for (const { view } of turned) {
    const grips = (view.instruction.with ?? []).flatMap(({ tool }) =>
      isGrip(toolOf(scene, tool?.id)) ? [tool?.id] : [],
    );
    if (grips.length === 1) return grips[0];
  }
  const fitting = listOf(scene.procedure, 'tool').filter(({ id }) => hasSize(scene, toolOf(scene, id), fastener));
  return fitting.length === 1 ? fitting[0]?.id : undefined;
}

function toolOf({ procedure }: Scene, id: string | undefined): Tool | undefined {
  return id === undefined ? undefined : procedure.tools.get(id)?.entry.value;
}

function isGrip(tool: Tool | undefined): boolean {
  return tool?.kind?.value === 'socket' || tool?.kind?.value === 'bit';
}

function hasSize({ family, procedure, failure }: Scene, tool: Tool | undefined, fastener: string): boolean {
  const part = family.part(fastener);
  if (!isGrip(tool)) return false;
  if (tool?.driveSize !== undefined) return tool.driveSize.text === part?.driveSize?.text;
  const size = tool?.size?.reading.quantity;
  const { held } = heldValues(part?.acrossFlats, procedure.space, failure.where);
  return (
    size !== undefined &&
    held.length > 0 &&
    held.every(({ value: { reading } }) => {
      return reading.quantity !== undefined && compareQuantities(reading.quantity, size) === 'same';
    })
  );
}
