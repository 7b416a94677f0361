import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { capitalised, closed, sentences } from '../sentences/grammar';
import type { IfNot, Instruction as SheetInstruction } from '../sheet';
import type { BuildContext } from './buildContext';
import type { IfNotValue, Instruction } from './instructionKeys';

/** What to do when it is not as it should be, in the order in which it is done. */
export function ifNotOf(
  value: IfNotValue,
  one: Instruction,
  where: BuildSet,
  instructions: SheetInstruction[],
  context: BuildContext,
): IfNot {
  const { names, prose, writing } = context;
  const things = (refs: readonly Ref[]) => refs.map((ref) => names.part(ref.id, where));
  const { replace = [], goTo } = value;
  const inspected = one.verb === 'inspect' ? (one.inspect ?? []) : [];
  const reject = inspected.length > 0 ? writing.phrases.rejectParts(things(inspected)) : writing.phrases.rejectUnit;
  const text = sentences(
    value.say && closed(prose.read(value.say)),
    replace.length > 0 && writing.phrases.replace(things(replace)),
    goTo && writing.phrases.goBack(prose.step(goTo.id), value.atMost?.value),
    value.then &&
      (goTo === undefined
        ? capitalised(closed(prose.read(value.then)))
        : writing.phrases.stillNot(closed(prose.read(value.then)))),
    value.reject?.value === true && reject,
  );
  return { text, instructions };
}
