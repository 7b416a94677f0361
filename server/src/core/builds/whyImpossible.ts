import type { BuildSpace } from './buildSpace';
import { type DiagramNode, NEVER } from './decisionDiagram';

/** One thing said about a build, in words and as a function. */
export interface Literal {
  readonly text: string;
  readonly node: DiagramNode;
  /** It says that something is not there. */
  readonly absence: boolean;
}

/**
 * Of literals that no build meets together, a few that already contradict each other: leave out any one of these and a
 * build exists. What the user left out is tried for removal first, so that the answer speaks of what was named.
 */
export function whyImpossible(space: BuildSpace, literals: readonly Literal[]): string[] {
  let core = [...literals];
  const order = [...literals.filter(({ absence }) => absence), ...literals.filter(({ absence }) => !absence)];
  for (const literal of order) {
    const fewer = core.filter((other) => other !== literal);
    const node = space.diagram.all(fewer.map((other) => other.node));
    if (space.diagram.and(node, space.existing) === NEVER) core = fewer;
  }
  return core.map(({ text }) => text);
}
