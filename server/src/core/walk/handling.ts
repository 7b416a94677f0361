import type { ApplyInstruction, CleanInstruction } from '../model/generated/types';
import { reportCovers } from './takeOff';
import type { Act, Walker } from './walker';

const OILS = new Set(['oil', 'grease', 'anti-seize', 'assembly-paste']);

/** Puts a consumable on: oil, or threadlocker, by what the stores say it is. */
export function apply(walker: Walker, instruction: ApplyInstruction, act: Act): void {
  const kinds = (instruction.apply ?? []).map(
    (ref) => walker.unit.procedure.consumables.get(ref.id)?.entry.value.kind?.value,
  );
  for (const { id } of instruction.to ?? []) {
    const where = walker.meant(id, act);
    reportCovers(walker, id, where, act, 'unreachable');
    if (kinds.some((kind) => kind !== undefined && OILS.has(kind))) oil(walker, id, instruction, act);
    if (kinds.includes('threadlocker')) lock(walker, id, act);
    walker.happened('applied', id, act);
  }
}

/** Oil counts as on the thread unless the instruction says that it goes elsewhere. */
function oil(walker: Walker, id: string, instruction: ApplyInstruction, act: Act): void {
  const where = walker.meant(id, act);
  const at = instruction.at?.text;
  const onThread = at === undefined ? walker.unit.part(id)?.thread !== undefined : /\bthreads?\b/i.test(at);
  walker.state.change(id, where, onThread ? ['lubricated', 'oily'] : ['lubricated']);
}

function lock(walker: Walker, id: string, act: Act): void {
  const where = walker.meant(id, act);
  const oily = where.and(walker.state.lane(id).oily);
  walker.fail('threadlocker-on-oil', id, oily, { at: act.at, because: walker.lastTime(id, ['applied'], oily) });
  walker.state.change(id, where, ['threadlocked']);
}

/** Cleans a part: oil and threadlocker come off. Blasting leaves dirt behind. */
export function clean(walker: Walker, instruction: CleanInstruction, act: Act): void {
  const by = instruction.by?.value;
  for (const { id } of instruction.clean ?? []) {
    const where = walker.meant(id, act);
    reportCovers(walker, id, where, act, 'unreachable');
    const forbidden = walker.unit
      .part(id)
      ?.neverCleanWith?.some((choice) => choice.value !== undefined && choice.value === by);
    if (forbidden === true) walker.fail('cleaning-forbidden', id, where, { at: act.at });
    walker.state.change(id, where, by === 'blast' ? [] : ['clean'], [
      'lubricated',
      'oily',
      'threadlocked',
      ...(by === 'blast' ? (['clean'] as const) : []),
    ]);
    walker.happened('cleaned', id, act);
  }
}

export function inspect(walker: Walker, id: string, act: Act): void {
  const where = walker.meant(id, act);
  reportCovers(walker, id, where, act, 'unreachable');
  walker.state.change(id, where, ['inspected']);
}
