import type { ApplyInstruction, WaitInstruction } from '../../model/generated/types';
import type { QuantityValue } from '../../model/values';
import { capital } from '../sentences/grammar';
import type { TimeBlank } from '../sheet';
import type { BuildContext } from './buildContext';
import type { Instruction } from './instructionKeys';
import { longestCure } from './sentenceFacts';

/** The times and temperatures that an instruction needs written down. */
export function timeBlanks(one: Instruction, context: BuildContext): TimeBlank[] {
  switch (one.verb) {
    case 'apply':
      return curingBlanks(one, context);
    case 'wait':
      return [{ kind: 'start' }, waitEnd(one, context)];
    case 'heat':
      return [{ kind: 'in' }, { kind: 'out' }, ...temperature(one.until, context)];
    case 'cool':
      return temperature(one.until, context);
    default:
      return [];
  }
}

/** Threadlocker, and whatever else sets in a time that the stores state. Where they state none, none is made up. */
function curingBlanks(one: ApplyInstruction, context: BuildContext): TimeBlank[] {
  const { names, quantities } = context;
  return (one.apply ?? []).flatMap(({ id }): TimeBlank[] => {
    const { kind, cure } = names.consumableItem(id)?.entry.value ?? {};
    if (kind?.value !== 'threadlocker' && cure === undefined) return [];
    const several = (one.apply ?? []).length > 1;
    const on: TimeBlank = several ? { kind: 'on', what: capital(names.consumable(id).name) } : { kind: 'on' };
    if (cure?.reading.quantity === undefined) return [on];
    return [on, { kind: 'earliest', after: quantities.inTwoUnits(cure).primary }];
  });
}

function waitEnd(one: WaitInstruction, context: BuildContext): TimeBlank {
  const time = one.wait?.word === 'cure' ? longestCure(one.of ?? [], context) : one.wait;
  if (time?.reading.quantity === undefined) return { kind: 'end' };
  return { kind: 'end', after: context.quantities.inTwoUnits(time).primary };
}

function temperature(until: QuantityValue | undefined, { quantities }: BuildContext): TimeBlank[] {
  if (until === undefined) return [];
  const unit = quantities.unitFor('temperature', until);
  if (until.reading.quantity === undefined) return [{ kind: 'temperature', unit }];
  return [{ kind: 'temperature', unit, limits: quantities.inTwoUnits(until).primary }];
}
