import { conditionOf, FamilyView } from '../../analysis/familyView';
import type { NamedThing } from '../../analysis/names';
import { buildsRow, valueLines } from './buildWords';
import { type Card, row } from './card';
import { quantityInUnits } from './quantityWords';
import type { Scene } from './scene';
import { stepsRow } from './stepRows';

/** A check of the family: what it says, and after what it has to be made. */
export function checkCard(scene: Scene, { id, document, declared }: NamedThing): Card | undefined {
  const family = FamilyView.of(document);
  const check = family?.value.checks?.find((one) => one.id === declared)?.value;
  if (family === undefined || check === undefined) return undefined;
  const { space } = scene;
  const where = space?.set(conditionOf(check));
  const uses = scene.uses.of('check', id);
  const isMissing = scene.procedure !== undefined && uses.length === 0;
  return {
    name: check.say?.text ?? id,
    kind: 'check',
    id,
    rows: [
      ...buildsRow('Holds on', where, space),
      ...row('Accept', valueLines(check.accept, space, where, quantityInUnits)),
      ...row('After', (check.after ?? []).map((ref) => family.nameOf(ref.id)).join(', ')),
      ...(isMissing ? row('Made in', 'no step of this procedure') : stepsRow('Made in', uses)),
      ...row('Note', check.note?.text),
    ],
  };
}
