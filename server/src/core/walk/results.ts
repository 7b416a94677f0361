import type { BuildSet } from '../builds';
import type {
  BalanceInstruction,
  CalculateInstruction,
  ChooseInstruction,
  MeasureInstruction,
} from '../model/generated/types';
import type { SignedTerm } from '../model/values';
import { reportSpun } from './balancing';
import type { Act, Walker } from './walker';

/** A result is made; on the way where it is not right, it is worth nothing until it is made again. */
export function made(walker: Walker, id: string, act: Act): void {
  walker.state.note('done', id, act.where);
  walker.state.note('valid', id, act.where.minus(act.fails));
  if (!act.fails.isEmpty) walker.state.forget('valid', id, act.fails);
  walker.happened('measured', id, act.where);
}

/** A limit that is only written down, as it is found, is no measurement against it. */
export function measure(walker: Walker, instruction: MeasureInstruction, act: Act): void {
  const { accept, measure: measured } = instruction;
  if (measured === undefined) return;
  const isLimit = walker.unit.family.value.limits?.some((one) => one.id.id === measured.id) === true;
  if (isLimit && accept?.is === 'one' && accept.value.word === 'record-only') return;
  made(walker, measured.id, act);
}

export function calculate(walker: Walker, instruction: CalculateInstruction, act: Act): void {
  reportUnmeasured(walker, instruction.calculate?.id, instruction.from, act.where);
  if (instruction.calculate !== undefined) made(walker, instruction.calculate.id, act);
}

/** The size of a part is chosen: a piece of that size lies ready. */
export function choose(walker: Walker, instruction: ChooseInstruction, act: Act): void {
  const part = instruction.choose?.id;
  if (part === undefined || walker.unit.part(part) === undefined) return;
  const where = walker.meant(part, act);
  reportUnmeasured(walker, part, instruction.size, where);
  const inPlace = walker.state.lane(part).partly;
  walker.state.change(part, where, ['chosen', 'decided']);
  walker.state.change(part, where.minus(inPlace), ['fresh']);
}

export function balance(walker: Walker, instruction: BalanceInstruction, act: Act): void {
  const group = instruction.balance?.id;
  if (group === undefined) return;
  reportSpun(walker, group, act);
  made(walker, group, act);
}

/** A sum needs its readings and limits measured; dimensions come from the family. */
function reportUnmeasured(
  walker: Walker,
  about: string | undefined,
  terms: readonly SignedTerm[] | undefined,
  where: BuildSet,
): void {
  for (const { term } of terms ?? []) {
    if (!('id' in term) || !isMeasured(walker, term.id)) continue;
    const missing = where.minus(walker.state.where('done', term.id));
    if (walker.fail('not-measured', about ?? term.id, missing, { other: term.id }))
      walker.state.note('done', term.id, missing);
  }
}

function isMeasured({ unit }: Walker, id: string): boolean {
  const { limits = [], readings = [] } = unit.family.value;
  const own = unit.procedure.value.readings ?? [];
  return [...limits, ...readings, ...own].some((one) => one.id.id === id);
}
