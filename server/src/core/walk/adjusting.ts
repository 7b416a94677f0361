import type { BuildSet } from '../builds';
import type { Act, Walker } from './walker';

/** Sets an adjustment: it is open until what locks it is tightened again. */
export function adjust(walker: Walker, part: string, act: Act): void {
  const where = walker.meant(part, act);
  if ((walker.unit.part(part)?.lockedBy ?? []).length > 0) walker.state.note('open', part, where);
  walker.touched(part, where);
  walker.happened('adjusted', part, where);
}

/** What a fastener locks is set for good once it is tightened, or fitted where it has no torque. */
export function locked(walker: Walker, fastener: string, act: Act): void {
  for (const id of walker.unit.relations.lockedBy(fastener))
    walker.state.forget('open', id, walker.meant(fastener, act));
}

/** Adjustments that nothing locks at the end. */
export function reportOpen(walker: Walker, alive: BuildSet): void {
  for (const id of walker.unit.ids) {
    if ((walker.unit.part(id)?.lockedBy ?? []).length === 0) continue;
    walker.fail('adjustment-open', id, walker.state.where('open', id).and(alive), { blame: ['adjusted'] });
  }
}
