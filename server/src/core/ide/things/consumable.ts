import { documentValue } from '../../analysis/documentUnit';
import type { NamedThing } from '../../analysis/names';
import { type Card, row } from './card';
import { quantityText } from './quantityWords';
import type { Scene } from './scene';
import { stepsRow } from './stepRows';

/** A consumable of the stores with its hazards, and the steps that use it. */
export function consumableCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const entry = documentValue(document, 'stores')?.consumables?.find((one) => one.id === declared);
  if (entry === undefined) return undefined;
  const { kind, also, number, cure, maxTemperature, hazards, signalWord, dataSheet, expires, note } = entry.value;
  const uses = scene.uses.of('consumable', id);
  const idle = scene.procedure !== undefined && uses.length === 0;
  const codes = (hazards ?? []).map(({ text }) => text).join(', ');
  return {
    name,
    kind: kind?.value === undefined ? 'consumable' : `consumable: ${kind.value.replaceAll('-', ' ')}`,
    id,
    rows: [
      ...row('Also called', (also ?? []).map(({ text }) => text).join(', ')),
      ...row('Signal word', signalWord?.value === undefined ? undefined : signalWord.value.toUpperCase()),
      ...row('Hazards', codes),
      ...row('Cures in', quantityText(cure)),
      ...row('Stands up to', quantityText(maxTemperature)),
      ...row('Number', number?.text),
      ...row('Data sheet', dataSheet?.text),
      ...row('Use by', expires?.node.text),
      ...(idle ? row('Used in', 'no step of this procedure') : stepsRow('Used in', uses)),
      ...row('Note', note?.text),
    ],
  };
}
