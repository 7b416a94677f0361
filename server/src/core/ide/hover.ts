import type { Snapshot } from '../analysis/snapshot';
import type { Finding } from '../rules/finding';
import type { SyntaxDocument } from '../syntax/readDocument';
import { keyHover } from './keyHover';
import { type HoverText, ruleHover } from './ruleHover';
import { factsAt, factsHover } from './thingHover';
import { besideWorking } from './things/card';
import { workingHover } from './workingHover';

/** Beside the facts of a thing there is room for so many calculations. */
const mostBesideFacts = 2;

/**
 * What is said of the word at an offset: the rule, the facts of what an id stands for, and what is worked out there. Where
 * there are both facts and a calculation the facts come first, without what the calculation says better; a key of which
 * there is neither is told by its definition.
 */
export function hoverAt(
  snapshot: Snapshot,
  document: SyntaxDocument,
  offset: number,
  findings: readonly Finding[],
): HoverText | undefined {
  const rule = ruleHover(document, offset);
  if (rule !== undefined) return rule;
  const facts = factsAt(snapshot, document, offset);
  if (facts === undefined) return workingHover(snapshot, document, offset, findings) ?? keyHover(document, offset);
  const isFound = findings.some(({ span }) => span.start <= offset && offset <= span.end);
  // What a finding rests on is shown whole; else the formulas are left to the value itself, so that a screen holds both.
  const working = workingHover(snapshot, document, offset, findings, { most: mostBesideFacts, brief: !isFound });
  if (working === undefined) return factsHover(facts);
  const { span, markdown, plain } = factsHover({ ...facts, cards: facts.cards.map(besideWorking) });
  return {
    span,
    markdown: `${markdown}\n\n---\n\n${working.markdown}`,
    plain: `${plain}\n\n${working.plain}`,
  };
}
