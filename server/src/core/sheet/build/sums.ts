import type { BuildSet } from '../../builds';
import type { TightenInstruction } from '../../model/generated/types';
import type { Ref, SignedTerm } from '../../model/values';
import { capital } from '../sentences/grammar';
import type { Reading, Sum, SumTerm } from '../sheet';
import type { BuildContext } from './buildContext';
import type { Instruction } from './instructionKeys';
import { limitOf } from './readings';
import { statedTorque } from './torque';

/** The sum that an instruction asks for, with a blank for each thing that was measured. */
export function sumFor(
  one: Instruction,
  reading: Reading | undefined,
  where: BuildSet,
  rounds: number,
  context: BuildContext,
): Sum | undefined {
  if (one.verb === 'calculate' && reading !== undefined) {
    const { name, unit, limits } = reading;
    const result = { name, unit, ...(limits === undefined ? {} : { limits }) };
    return sumOf(one.from ?? limitOf(one.calculate?.id ?? '', context)?.from ?? [], result, rounds, context);
  }
  if (one.verb === 'choose' && one.choose !== undefined) {
    const sizes = context.procedure.family?.part(one.choose.id)?.sizes;
    const result = { name: context.writing.phrases.sizeChosen, unit: context.quantities.unitFor('length', sizes) };
    return sumOf(one.size ?? [], result, rounds, context);
  }
  return one.verb === 'tighten' && one.plus !== undefined ? prevailingSum(one, one.plus, where, context) : undefined;
}

/** The terms that are added come first, as in the sentence. One term alone is no sum. */
function sumOf(from: readonly SignedTerm[], result: Sum['result'], rounds: number, context: BuildContext) {
  if (from.length < 2) return undefined;
  const terms = from.toSorted((a, b) => b.sign - a.sign).map((term) => termOf(term, result.unit, context));
  return { terms, result, rounds };
}

function termOf({ sign, term }: SignedTerm, unit: string, { names, quantities }: BuildContext): SumTerm {
  const mark = sign < 0 ? '−' : '+';
  if (!('id' in term))
    return { sign: mark, name: '', amount: { kind: 'stated', text: quantities.inTwoUnits(term).primary } };
  return { sign: mark, name: capital(names.value(term.id).name), amount: { kind: 'blank', unit } };
}

/** What turns the nut before it seats is measured and added to the torque that is stated. */
function prevailingSum(one: TightenInstruction, plus: Ref, where: BuildSet, context: BuildContext): Sum {
  const { names, quantities, writing } = context;
  const stated = statedTorque(one, where, context);
  const unit = quantities.unitFor('torque', stated);
  const torque: SumTerm['amount'] =
    stated === undefined ? { kind: 'blank', unit } : { kind: 'stated', text: quantities.torque(stated).primary };
  return {
    terms: [
      { sign: '+', name: capital(names.value(plus.id).name), amount: { kind: 'blank', unit } },
      { sign: '+', name: '', amount: torque },
    ],
    result: { name: writing.phrases.torqueToSet, unit },
    rounds: 1,
  };
}
