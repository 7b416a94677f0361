import type { NamedThing } from '../../analysis/names';
import type { RefKind } from '../../model/shape';
import type { IdTarget } from '../idTarget';
import { assemblyCard, balanceGroupCard } from './assembly';
import type { Card } from './card';
import { checkCard } from './check';
import { consumableCard } from './consumable';
import { dimensionCard } from './dimension';
import { figureCard } from './figure';
import { fileCard } from './file';
import { limitCard, readingCard } from './limit';
import { outcomeCard, valueCard } from './outcome';
import { partCard } from './part';
import type { Scene } from './scene';
import { stepCardOf } from './step';
import { toolCard } from './tool';
import { optionCard, variantCard } from './variant';

type CardMaker = (scene: Scene, thing: NamedThing) => Card | undefined;

const MAKERS: Readonly<Record<RefKind, CardMaker>> = {
  part: partCard,
  tool: toolCard,
  consumable: consumableCard,
  limit: limitCard,
  reading: readingCard,
  'limit-or-reading': (scene, thing) => limitCard(scene, thing) ?? readingCard(scene, thing),
  check: checkCard,
  step: stepCardOf,
  figure: figureCard,
  variant: variantCard,
  option: optionCard,
  outcome: outcomeCard,
  assembly: assemblyCard,
  'balance-group': balanceGroupCard,
  dimension: dimensionCard,
  family: ({ snapshot }, { document }) => fileCard(snapshot, document.uri),
  // A rule is no thing of the unit; its own hover tells of it.
  rule: () => undefined,
};

/** What is known of what an id stands for; undefined where nothing is. */
export function cardOf(scene: Scene, target: IdTarget): Card | undefined {
  switch (target.is) {
    case 'thing':
      return MAKERS[target.thing.kind](scene, target.thing);
    case 'value':
      return valueCard(scene, target.of, target.value);
    case 'file':
      return fileCard(scene.snapshot, target.uri);
  }
}
