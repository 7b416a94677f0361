import { objectIds } from '../../../server/src/core/analysis/instructions';
import type { Instruction } from '../../../server/src/core/model/generated/types';
import { align, apply, clean, decide, heat, mark } from './preparing';
import { balance, made, measure, needsReadings, wait } from './proving';
import { install } from './puttingOn';
import { loosen, remove } from './takingOff';
import { touch } from './touching';
import { seat, tighten } from './turning';
import type { Unit } from './unit';

/** Carries out one instruction, without what it holds for the case that a result is not right. */
export function carryOut(unit: Unit, instruction: Instruction): void {
  if (instruction.verb === 'apply') {
    for (const { id } of instruction.to ?? []) if (unit.facts.isMet(id)) apply(unit, id, instruction);
    return;
  }
  for (const id of objectIds(instruction)) if (unit.facts.isMet(id)) onPart(unit, id, instruction);
  onResult(unit, instruction);
}

function onPart(unit: Unit, id: string, instruction: Instruction): void {
  switch (instruction.verb) {
    case 'loosen':
      loosen(unit, id);
      break;
    case 'remove':
      remove(unit, id, 'count' in instruction ? instruction.count?.value : undefined);
      break;
    case 'install':
      install(unit, id, { count: instruction.count?.value, trial: instruction.trial?.value === true });
      break;
    case 'press':
      install(unit, id, { count: undefined, trial: false });
      break;
    case 'seat':
      seat(unit, id);
      break;
    case 'tighten':
      tighten(unit, id, instruction);
      break;
    case 'clean':
      clean(unit, id, instruction);
      break;
    case 'mark':
      mark(unit, id, instruction);
      break;
    case 'align':
      align(unit, id, instruction.to ?? []);
      break;
    case 'heat':
      heat(unit, id, 'hot');
      break;
    case 'cool':
      heat(unit, id, 'cold');
      break;
    default:
      onPartElsewhere(unit, id, instruction);
  }
}

function onPartElsewhere(unit: Unit, id: string, instruction: Instruction): void {
  const state = unit.of(id);
  switch (instruction.verb) {
    case 'inspect':
      unit.needsReach(id);
      state.inspected = true;
      if (instruction.ifNot !== undefined) decide(unit, id);
      return;
    case 'choose':
      needsReadings(unit, id, instruction.size);
      Object.assign(state, { chosen: true, fresh: true, clean: true });
      return;
    case 'adjust':
      if (unit.facts.meant(unit.facts.part(id).lockedBy).length > 0) unit.open.add(id);
      touch(unit, id);
      return;
    case 'receive':
      state.away = false;
      return;
    case 'send':
    case 'return':
    case 'discard':
      if (unit.isInUnit(id)) unit.fail('still-in-unit', id);
      if (instruction.verb === 'send') Object.assign(state, { away: true, clean: false, inspected: false });
      else if (instruction.verb === 'return') state.returned = true;
      else Object.assign(state, { scrapped: true, fresh: true, decided: true, marked: false, painted: false });
  }
}

function onResult(unit: Unit, instruction: Instruction): void {
  switch (instruction.verb) {
    case 'identify':
      for (const id of objectIds(instruction)) unit.known.add(id);
      return;
    case 'measure':
      measure(unit, instruction);
      break;
    case 'calculate':
      needsReadings(unit, instruction.calculate?.id ?? '', instruction.from);
      made(unit, instruction.calculate?.id ?? '');
      return;
    case 'check':
      if (instruction.check?.is === 'ref') made(unit, instruction.check.ref.id);
      return;
    case 'balance':
      balance(unit, instruction);
      break;
    case 'wait':
      wait(unit, instruction);
      break;
  }
}
