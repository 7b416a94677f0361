import { reportStillIn } from './reach';
import type { Act, Walker } from './walker';

/** Sends a part out; what rides on it goes with it. */
export function send(walker: Walker, part: string, act: Act): void {
  const where = walker.meant(part, act);
  reportStillIn(walker, part, where);
  walker.state.change(part, where, ['away'], ['clean', 'inspected']);
  walker.happened('sent', part, where);
}

export function receive(walker: Walker, part: string, act: Act): void {
  walker.state.change(part, walker.meant(part, act), [], ['away']);
}

/** Gives a part back to whom it belongs. */
export function giveBack(walker: Walker, part: string, act: Act): void {
  const where = walker.meant(part, act);
  reportStillIn(walker, part, where);
  walker.state.change(part, where, ['returned']);
  walker.happened('sent', part, where);
}

/** Throws a part away: what is fitted next is new. */
export function discard(walker: Walker, part: string, act: Act): void {
  const where = walker.meant(part, act);
  reportStillIn(walker, part, where);
  walker.state.change(part, where, ['scrapped', 'fresh', 'decided'], ['marked', 'painted', 'misaligned']);
  walker.happened('discarded', part, where);
}

/** It is settled on what grounds the part is renewed; on the builds where it is, the new one lies ready. */
export function decide(walker: Walker, part: string, act: Act): void {
  const { state, unit } = walker;
  const where = walker.meant(part, act);
  state.change(part, where, ['decided']);
  const renewed = where.and(unit.renewed(part)).minus(state.lane(part).partly);
  state.change(part, renewed, ['fresh'], ['marked', 'painted', 'misaligned']);
}
