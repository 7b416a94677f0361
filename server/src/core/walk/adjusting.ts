import type { Act, Walker } from './walker';

/** Sets an adjustment: it is open until what locks it is tightened again. */
export function adjust(walker: Walker, part: string, act: Act): void {
  const where = walker.meant(part, act);
  if ((walker.unit.part(part)?.lockedBy ?? []).length > 0) walker.state.note('open', part, where);
  walker.happened('touched', part, act);
}

/** What a fastener locks is set for good once it is tightened, or fitted where it has no torque. */
export function locked(walker: Walker, fastener: string, act: Act): void {
  for (const id of walker.unit.lockedBy(fastener)) {
    const set = walker.state.open.get(id);
    if (set !== undefined) walker.state.open.set(id, set.minus(walker.meant(fastener, act)));
  }
}

export function reportOpen(walker: Walker): void {
  for (const [id, where] of walker.state.open) {
    walker.fail('adjustment-open', id, where, { because: walker.lastTime(id, ['touched'], where) });
  }
}
