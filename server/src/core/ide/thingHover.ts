import type { NamedThing } from '../analysis/names';
import type { Snapshot } from '../analysis/snapshot';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { type IdTarget, targetsOf } from './idTarget';
import { idUseAt } from './idUses';
import { scalarAt } from './nodePath';
import type { HoverText } from './ruleHover';
import { type Card, cardMarkdown, cardText } from './things/card';
import { cardOf } from './things/cardOf';
import { conditionRows } from './things/condition';
import { conditionOfName } from './things/conditionAt';
import { keyCard } from './things/keyCard';
import { type Scene, sceneOf } from './things/scene';

/** What is said of a thing, for a client with markup and for one without. */
export interface Description {
  readonly markdown: string;
  readonly plain: string;
}

/**
 * What is known of a thing, looked at from a document: its steps and torques are those of this procedure. Undefined where
 * nothing is known. It costs little, so that each entry of a completion can be described when it is looked at.
 */
export function describeThing(
  snapshot: Snapshot,
  document: SyntaxDocument,
  target: IdTarget | NamedThing,
): Description | undefined {
  const asTarget: IdTarget = 'is' in target ? target : { is: 'thing', thing: target };
  const card = cardOf(sceneOf(snapshot, document), asTarget);
  return card === undefined ? undefined : { markdown: cardMarkdown(card), plain: cardText(card) };
}

/** What stands at an offset, told by its facts: an id, a condition, a step, a line of a kit. */
export function thingHover(snapshot: Snapshot, document: SyntaxDocument, offset: number): HoverText | undefined {
  const found = factsAt(snapshot, document, offset);
  return found === undefined ? undefined : factsHover(found);
}

export function factsHover({ span, cards }: FactsThere): HoverText {
  return { span, markdown: cards.map(cardMarkdown).join('\n\n'), plain: cards.map(cardText).join('\n\n') };
}

/** What is known of what stands at a place, a card for each thing that may be meant. */
export interface FactsThere {
  readonly span: Span;
  readonly cards: readonly Card[];
}

export function factsAt(snapshot: Snapshot, document: SyntaxDocument, offset: number): FactsThere | undefined {
  const scene = sceneOf(snapshot, document);
  const use = idUseAt(document, offset);
  if (use === undefined) {
    const path = scalarAt(document, offset);
    const card = path === undefined ? undefined : keyCard(scene, path);
    return card === undefined || path === undefined ? undefined : { span: document.spanOf(path.scalar), cards: [card] };
  }
  const cards = targetsOf(snapshot, document, use).flatMap((target) => cardOf(scene, target) ?? []);
  if (cards.length === 0) return undefined;
  return { span: document.spanOf(use.range), cards: cards.map((card) => withCondition(scene, offset, card)) };
}

/** Where the id is a name of a condition, also what the condition comes to. */
function withCondition(scene: Scene, offset: number, card: Card): Card {
  const condition = conditionOfName(scene.document, offset);
  if (condition === undefined || condition.isTold || scene.space === undefined) return card;
  const [met] = conditionRows(scene, condition.expr);
  return met === undefined ? card : { ...card, rows: [{ ...met, label: 'The condition' }, ...card.rows] };
}
