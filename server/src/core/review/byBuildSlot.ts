import type { ByBuild, QuantityValue } from '../model/values';
import { type NodeValue, valuePairs } from './byBuildChange';
import { type Judged, judgeGone, judgeQuantity, judgeScalar } from './judge';
import { kindOf, type Slot } from './slot';

/** Compares two values by build for every build. */
export function byBuildSlot(slot: Slot): void {
  const { two, compared, key, typed } = slot;
  const [old, now] = [typed.before, typed.after] as (ByBuild<NodeValue> | undefined)[];
  for (const { before, after, builds, where } of valuePairs(old, now, two.spaces, compared.within)) {
    const judged = judgePair(slot, before, after);
    if (judged === undefined) continue;
    two.tell(
      { ...judged, kind: kindOf(before, after), of: compared.of, key, builds, where },
      before?.node,
      after?.node,
    );
  }
}

function judgePair(slot: Slot, before: NodeValue | undefined, after: NodeValue | undefined): Judged | undefined {
  const { def, key, two } = slot;
  if (before === undefined || after === undefined) return judgeGone(def, key, kindOf(before, after));
  if (isQuantity(before) && isQuantity(after)) return judgeQuantity(def, key, before, after);
  return judgeScalar(def, key, [before.node, after.node], undefined, two.renamed);
}

function isQuantity(value: NodeValue): value is QuantityValue {
  return 'reading' in value;
}
