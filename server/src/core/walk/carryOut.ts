import type { Instruction, MeasureInstruction } from '../model/generated/types';
import { adjust } from './adjusting';
import { apply, clean, inspect } from './handling';
import { align, mark } from './positions';
import { install } from './putOn';
import { loosen, remove } from './takeOff';
import { seat, tighten } from './tightening';
import type { Act, Walker } from './walker';

interface Ref {
  readonly id: string;
}

/** Carries out one instruction: what it needs is looked at, and the unit is changed. Half-typed ones do nothing. */
export function carryOut(walker: Walker, act: Act): void {
  const { instruction } = act;
  const known = (refs: readonly Ref[] | undefined): string[] =>
    (refs ?? []).flatMap((ref) => (walker.unit.part(ref.id) === undefined ? [] : [ref.id]));
  switch (instruction.verb) {
    case 'loosen':
      for (const id of known(instruction.loosen)) loosen(walker, id, act);
      return;
    case 'remove':
      for (const id of known(instruction.remove)) remove(walker, id, act, instruction.count?.value);
      return;
    case 'install':
      for (const id of known(instruction.install)) {
        install(walker, id, act, { count: instruction.count?.value, trial: instruction.trial?.value === true });
      }
      return;
    case 'press':
      for (const id of known(instruction.press)) install(walker, id, act, { count: undefined, trial: false });
      return;
    case 'seat':
      for (const id of known(instruction.seat)) seat(walker, id, act);
      return;
    case 'tighten':
      for (const id of known(instruction.tighten)) tighten(walker, id, act);
      return;
    default:
      handle(walker, instruction, act, known);
  }
}

function handle(
  walker: Walker,
  instruction: Instruction,
  act: Act,
  known: (refs: readonly Ref[] | undefined) => string[],
): void {
  const { state } = walker;
  switch (instruction.verb) {
    case 'apply':
      apply(walker, instruction, act);
      return;
    case 'clean':
      clean(walker, instruction, act);
      return;
    case 'inspect':
      for (const id of known(instruction.inspect)) inspect(walker, id, act);
      return;
    case 'identify':
      if (instruction.identify !== undefined) state.note('known', instruction.identify.id, act.where);
      return;
    case 'measure':
      measure(walker, instruction, act);
      return;
    case 'calculate':
      if (instruction.calculate !== undefined) done(walker, instruction.calculate.id, act);
      return;
    case 'check':
      if (instruction.check?.is === 'ref') done(walker, instruction.check.ref.id, act);
      return;
    case 'heat':
      for (const id of known(instruction.heat)) {
        state.change(id, walker.meant(id, act), ['hot']);
        walker.happened('heated', id, act);
      }
      return;
    case 'cool':
      for (const id of known(instruction.cool)) state.change(id, walker.meant(id, act), ['cold'], ['hot']);
      return;
    case 'mark':
      mark(walker, [...known(instruction.mark), ...known(instruction.across)], act);
      return;
    case 'align':
      align(walker, [...known(instruction.align), ...known(instruction.to)], act);
      return;
    case 'balance':
      if (instruction.balance !== undefined) done(walker, instruction.balance.id, act);
      return;
    case 'adjust':
      for (const id of known(instruction.adjust)) adjust(walker, id, act);
      return;
    case 'send':
      for (const id of known(instruction.send)) state.change(id, walker.meant(id, act), ['away']);
      return;
    case 'receive':
      for (const id of known(instruction.receive)) state.change(id, walker.meant(id, act), [], ['away']);
      return;
    case 'wait':
      for (const id of walker.unit.ids) state.change(id, act.where, [], ['hot', 'cold']);
      return;
    default:
  }
}

/** A value that is only written down, as it is found, is no measurement against the limit. */
function measure(walker: Walker, instruction: MeasureInstruction, act: Act): void {
  const { accept, measure: measured } = instruction;
  if (measured === undefined) return;
  if (accept?.is === 'one' && accept.value.word === 'record-only') return;
  done(walker, measured.id, act);
}

function done(walker: Walker, id: string, act: Act): void {
  walker.state.note('valid', id, act.where);
  walker.state.note('done', id, act.where);
  walker.happened('measured', id, act);
}
