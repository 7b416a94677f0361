import { conditionOf, type FamilyView } from '../analysis/familyView';
import { heldValues, meetings } from '../analysis/heldValues';
import type { BuildSet, BuildSpace } from '../builds';
import type { Limit } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { type Bounds, boundsOf, hasTolerance } from '../quantity';
import { type StackRange, type StackUp, stackUp } from '../standards/stackUp';
import { type Chain, type ChainLink, chainsOf } from './limitChain';

export type BoundedStack = Extract<StackUp, { kind: 'bounded' }>;

/**
 * How a stack-up lies to what is accepted. `middle`: even parts in the middle of all their tolerances are not accepted;
 * `statistical`: the root sum square reaches outside; `worst`: only the worst case does.
 */
export type StackVerdict = 'inside' | 'worst' | 'statistical' | 'middle';

/** What a limit accepts on some builds, and what its dimensions come to there. */
export interface LimitCase {
  readonly limit: Limit;
  readonly id: string;
  readonly where: BuildSet;
  readonly space: BuildSpace;
  readonly accept: QuantityValue;
  readonly links: readonly ChainLink[];
  readonly stack: BoundedStack;
  /** Undefined where what is accepted is no length with limits. */
  readonly verdict: StackVerdict | undefined;
  /** The signs are the other way round: what is accepted fits the negative of the sum. */
  readonly reversed: boolean;
}

/** The builds on which a limit exists. */
export function limitBuilds(limit: Limit, space: BuildSpace): BuildSet {
  return limit.when === undefined && limit.unless === undefined ? space.everything : space.set(conditionOf(limit));
}

/** Every stack-up of a limit against what it accepts, by build; none where a fact is missing or cannot be read. */
export function limitCases(family: FamilyView, id: string): LimitCase[] {
  const limit = family.value.limits?.find((one) => one.id.id === id)?.value;
  if (limit?.from === undefined || limit.from.length === 0) return [];
  const { space } = family;
  const within = limitBuilds(limit, space);
  const chains = (chainsOf(family, limit, space, within) ?? []).map((value) => ({ value, where: value.where }));
  const accepts = heldValues(limit.accept, space, within).held;
  return [...meetings(accepts, chains)].flatMap(({ first, second, where }) => {
    const one = caseOf(first, second);
    return one === undefined ? [] : [{ limit, id, where, space, ...one }];
  });
}

function caseOf(
  accept: QuantityValue,
  { links }: Chain,
): Pick<LimitCase, 'accept' | 'links' | 'stack' | 'verdict' | 'reversed'> | undefined {
  const stack = stackUp(links);
  if (stack.kind === 'open') return undefined;
  const accepted = acceptedBounds(accept);
  const verdict = accepted && verdictOf(stack, accepted);
  const reversed = accepted !== undefined && verdict === 'middle' && holds(accepted, -stack.middle);
  return { accept, links, stack, verdict, reversed };
}

/** A single value without a tolerance is told about by another rule, and accepts nothing that could be compared. */
function acceptedBounds({ reading: { quantity } }: QuantityValue): Bounds | undefined {
  return quantity?.dimension === 'length' && hasTolerance(quantity) ? boundsOf(quantity) : undefined;
}

function verdictOf({ middle, statistical, worst }: BoundedStack, accepted: Bounds): StackVerdict {
  if (!holds(accepted, middle)) return 'middle';
  if (!holdsRange(accepted, statistical)) return 'statistical';
  return holdsRange(accepted, worst) ? 'inside' : 'worst';
}

function holdsRange(accepted: Bounds, { lowest, highest }: StackRange): boolean {
  return holds(accepted, lowest) && holds(accepted, highest);
}

/** A nanometre is allowed for what was lost in converting between inches and millimetres. */
function holds({ lowest, highest }: Bounds, value: number): boolean {
  return value >= lowest - 1e-6 && value <= highest + 1e-6;
}
