import type { ApplyInstruction, CleanInstruction } from '../model/generated/types';
import { reportReach } from './reach';
import type { Act, Walker } from './walker';

const OILS = new Set(['oil', 'grease', 'anti-seize', 'assembly-paste']);

/** Puts a consumable on: oil, or threadlocker, by what the stores say it is. */
export function apply(walker: Walker, instruction: ApplyInstruction, act: Act): void {
  const kinds = (instruction.apply ?? []).map(
    (ref) => walker.unit.procedure.consumables.get(ref.id)?.entry.value.kind?.value,
  );
  for (const { id } of instruction.to ?? []) {
    if (walker.unit.part(id) === undefined) continue;
    const where = walker.meant(id, act);
    // The thread end of a shaft may be in reach though the shaft as a whole is not.
    if (instruction.at === undefined) reportReach(walker, id, where);
    if (kinds.some((kind) => kind !== undefined && OILS.has(kind))) oil(walker, id, instruction, act);
    if (kinds.includes('threadlocker')) lock(walker, id, act);
    walker.happened('applied', id, where);
  }
}

/** Oil counts as on the thread unless the instruction says that it goes elsewhere. */
function oil(walker: Walker, id: string, instruction: ApplyInstruction, act: Act): void {
  const at = instruction.at?.text;
  const onThread = at === undefined ? walker.unit.part(id)?.thread !== undefined : /\bthreads?\b/i.test(at);
  walker.state.change(id, walker.meant(id, act), onThread ? ['lubricated', 'oily'] : ['lubricated']);
}

function lock(walker: Walker, id: string, act: Act): void {
  const where = walker.meant(id, act);
  const oily = where.and(walker.state.lane(id).oily);
  walker.fail('threadlocker-on-oil', id, oily, { blame: ['applied'] });
  walker.state.change(id, where, ['threadlocked']);
  // What broke in place is mended only on a fastener that is off.
  walker.state.change(id, where.minus(walker.state.lane(id).partly), [], ['unbonded']);
}

/** Cleans a part: oil, threadlocker and paint marks come off. Blasting leaves dirt behind. */
export function clean(walker: Walker, instruction: CleanInstruction, act: Act): void {
  const by = instruction.by?.value;
  for (const { id } of instruction.clean ?? []) {
    const { state, unit } = walker;
    const part = unit.part(id);
    if (part === undefined) continue;
    const where = walker.meant(id, act);
    if (instruction.at === undefined) reportReach(walker, id, where);
    if (by !== undefined && part.neverCleanWith?.some(({ value }) => value === by) === true)
      walker.fail('cleaning-forbidden', id, where);
    state.change(id, where.and(state.lane(id).painted), [], ['marked', 'painted']);
    const [yes, no] = by === 'blast' ? (['dirty', 'clean'] as const) : (['clean', 'dirty'] as const);
    state.change(id, where, [yes], [no, 'lubricated', 'oily', 'threadlocked']);
    walker.happened('cleaned', id, where);
  }
}

export function inspect(walker: Walker, id: string, act: Act): void {
  const where = walker.meant(id, act);
  reportReach(walker, id, where);
  walker.state.change(id, where, ['inspected']);
}
