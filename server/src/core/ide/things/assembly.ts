import { FamilyView } from '../../analysis/familyView';
import type { NamedThing } from '../../analysis/names';
import { type Card, row } from './card';
import { quantityText } from './quantityWords';
import type { Scene } from './scene';
import { stepsRow } from './stepRows';

/** A sub-assembly at which work may start or end. */
export function assemblyCard(_: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const family = FamilyView.of(document);
  const assembly = family?.value.assemblies?.find((one) => one.id === declared)?.value;
  if (family === undefined || assembly === undefined) return undefined;
  const parts = (assembly.parts ?? []).map((ref) => family.nameOf(ref.id));
  return {
    name,
    kind: 'sub-assembly',
    id,
    rows: [...row('Parts', parts.join(', ')), ...row('Note', assembly.note?.text)],
  };
}

/** Parts that are balanced together. */
export function balanceGroupCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const family = FamilyView.of(document);
  const group = family?.value.balanceGroups?.find((one) => one.id === declared)?.value;
  if (family === undefined || group === undefined) return undefined;
  const per = group.permissibleFor?.value === undefined ? '' : ` for each ${group.permissibleFor.value}`;
  return {
    name,
    kind: 'balance group',
    id,
    rows: [
      ...row('Members', (group.members ?? []).map((ref) => family.nameOf(ref.id)).join(', ')),
      ...row('Grade', group.grade?.text),
      ...row('Permissible', group.permissible === undefined ? undefined : `${quantityText(group.permissible)}${per}`),
      ...row('Mass', quantityText(group.mass)),
      ...row('Planes', group.planes?.node.text),
      ...row('Position', group.keepPosition?.value === true ? 'kept: marked before, aligned after' : undefined),
      ...stepsRow('Balanced in', scene.uses.of('balance-group', id)),
      ...row('Note', group.note?.text),
    ],
  };
}
