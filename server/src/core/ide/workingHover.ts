import type { Snapshot } from '../analysis/snapshot';
import type { Finding } from '../rules/finding';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Working } from '../workings/working';
import { workingMarkdown } from '../workings/workingMarkdown';
import { workingText } from '../workings/workingText';
import type { HoverText } from './ruleHover';
import { workingsAt } from './workingsAt';

/** More than one screen is not read in a hover; the rest is said to be there. */
const mostShown = 4;
/** What a hover without markup holds in a line, in the editors that show one. */
const plainWidth = 80;

/** How much of the workings there is room for. */
interface HowMuch {
  readonly most?: number;
  /** What is stated and what follows, without the formulas. */
  readonly brief?: boolean;
}

/** The workings at an offset, for a hover. */
export function workingHover(
  snapshot: Snapshot,
  document: SyntaxDocument,
  offset: number,
  findings: readonly Finding[],
  { most = mostShown, brief = false }: HowMuch = {},
): HoverText | undefined {
  const there = workingsAt({ snapshot, document, span: { start: offset, end: offset }, findings });
  if (there === undefined) return undefined;
  const shown = there.workings.slice(0, most).map((working) => (brief ? { ...working, steps: [] } : working));
  const more = there.workings.length - shown.length;
  const rest = more === 0 ? [] : [`${more} more; witnessmark explain --at shows them all`];
  return {
    span: there.span,
    markdown: [...shown.map(workingMarkdown), ...rest].join('\n\n---\n\n'),
    plain: [...shown.map(plainOf), ...rest].join('\n\n'),
  };
}

function plainOf(working: Working): string {
  return workingText(working, plainWidth);
}
