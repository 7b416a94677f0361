import { FamilyView } from '../../analysis/familyView';
import type { NamedThing } from '../../analysis/names';
import type { FamilyDocument } from '../../model/generated/types';
import type { SignedTerm } from '../../model/values';
import { valueLines } from './buildWords';
import { type Card, row, sideRow } from './card';
import { quantityInUnits } from './quantityWords';
import type { Scene } from './scene';

/** A dimension with its tolerance, and what is reckoned with it. */
export function dimensionCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const family = FamilyView.of(document);
  const dimension = family?.value.dimensions?.find((one) => one.id === declared)?.value;
  if (family === undefined || dimension === undefined) return undefined;
  return {
    name,
    kind: 'dimension',
    id,
    rows: [
      ...sideRow('Size', valueLines(dimension, scene.space, scene.space?.everything, quantityInUnits)),
      ...row('Limits from it', limitsWith(family.value, id).join(', ')),
      ...row('Fits with it', fitsWith(family, id).join(', ')),
    ],
  };
}

function limitsWith({ limits }: FamilyDocument, id: string): string[] {
  const names = ({ term }: SignedTerm) => 'id' in term && term.id === id;
  return (limits ?? []).filter(({ value }) => value.from?.some(names)).map((one) => one.value.name?.text ?? one.id.id);
}

function fitsWith(family: FamilyView, id: string): string[] {
  const parts = [...family.parts.values()].filter(
    ({ value }) => value.fit?.bore?.id === id || value.fit?.shaft?.id === id,
  );
  return parts.map((one) => family.nameOf(one.id.id));
}
