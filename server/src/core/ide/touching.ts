import type { Node } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { countWhile } from '../text/countWhile';
import type { Span } from '../text/span';

/**
 * Those of some things, in the order of the text, of which something may touch a span. The first is found by halving, so
 * that what stands at a place of a procedure is found without a look at each of its steps. Whether it does touch is for
 * the caller to see.
 */
export function* touching<Thing>(
  document: SyntaxDocument,
  things: readonly Thing[],
  nodeOf: (thing: Thing) => Node,
  { start, end }: Span,
): Generator<Thing> {
  const startOf = (thing: Thing) => document.spanOf(nodeOf(thing)).start;
  const before = countWhile(things.length, (index) => startOf(things[index] as Thing) < start);
  // The one before may reach into the span; those before that one end where it begins, or earlier.
  for (let i = Math.max(0, before - 1); i < things.length; i++) {
    const thing = things[i] as Thing;
    if (startOf(thing) > end) return;
    yield thing;
  }
}
