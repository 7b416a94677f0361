import { documentValue } from '../../analysis/documentUnit';
import type { NamedThing } from '../../analysis/names';
import { type Card, row } from './card';
import type { Scene } from './scene';
import { stepsRow } from './stepRows';

/** A figure with what it shows, for those who cannot see it here. */
export function figureCard(scene: Scene, { id, document, declared }: NamedThing): Card | undefined {
  const declaring = documentValue(document, 'family') ?? documentValue(document, 'procedure');
  const figure = declaring?.figures?.find((one) => one.id === declared)?.value;
  if (figure === undefined) return undefined;
  return {
    name: figure.caption?.text ?? id,
    kind: 'figure',
    id,
    rows: [
      ...row('Shows', figure.alt?.text),
      ...row('File', figure.file?.path),
      ...stepsRow('Printed in', scene.uses.of('figure', id)),
    ],
  };
}
