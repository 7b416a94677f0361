import { objectIds } from '../analysis/instructions';
import type { ProcedureView } from '../analysis/procedureView';
import type { Instruction } from '../model/generated/types';
import type { Deed } from './chart';

/** What an instruction does to each part that it names or looks at. */
export function deedsOf(
  instruction: Instruction,
  made: readonly string[],
  procedure: ProcedureView,
): Map<string, Deed> {
  const deeds = new Map<string, Deed>();
  const deed = deedOf(instruction, made, procedure);
  for (const part of partsOf(instruction)) if (procedure.family?.part(part) !== undefined) deeds.set(part, deed);
  for (const result of made) {
    const examined = { ...deed, what: nameOfResult(result, procedure), examines: true };
    for (const part of partsBehind(result, procedure)) if (!deeds.has(part)) deeds.set(part, examined);
  }
  return deeds;
}

/** What a limit, reading, check or balance group is called. */
export function nameOfResult(id: string, { family, value }: ProcedureView): string {
  const named = [value.readings, family?.value.limits, family?.value.readings, family?.value.balanceGroups];
  for (const entries of named) {
    const text = entries?.find((one) => one.id.id === id)?.value.name?.text;
    if (text !== undefined) return text;
  }
  return family?.value.checks?.find((one) => one.id.id === id)?.value.say?.text.replace(/\.$/, '') ?? id;
}

function partsOf(instruction: Instruction): readonly string[] {
  const ids = (refs: readonly { readonly id: string }[] | undefined) => (refs ?? []).map((ref) => ref.id);
  if (instruction.verb === 'apply') return ids(instruction.to);
  if (instruction.verb === 'mark') return [...objectIds(instruction), ...ids(instruction.across)];
  return objectIds(instruction);
}

function deedOf(instruction: Instruction, made: readonly string[], procedure: ProcedureView): Deed {
  const { verb } = instruction;
  const mark = verb === 'mark' ? 'made' : verb === 'align' ? 'aligned' : undefined;
  return { verb, what: whatOf(instruction, made, procedure), mark, examines: verb === 'inspect' };
}

function whatOf(instruction: Instruction, made: readonly string[], procedure: ProcedureView): string | undefined {
  const [result] = made;
  if (result !== undefined) return nameOfResult(result, procedure);
  if (instruction.verb !== 'apply') return undefined;
  const names = (instruction.apply ?? []).map(({ id }) => procedure.consumables.get(id)?.entry.value.name?.text ?? id);
  return names.length === 0 ? undefined : names.join(' and ');
}

/** The parts whose touch makes a result worthless, and those that take their place: what it speaks about. */
function partsBehind(result: string, { family }: ProcedureView): string[] {
  const limit = family?.value.limits?.find((one) => one.id.id === result)?.value.voidBy;
  const check = family?.value.checks?.find((one) => one.id.id === result)?.value.after;
  const group = family?.value.balanceGroups?.find((one) => one.id.id === result)?.value.members;
  const named = [...(limit ?? []), ...(check ?? []), ...(group ?? [])].map((ref) => ref.id);
  const standIns = [...(family?.parts ?? [])].flatMap(([id, { value }]) =>
    value.insteadOf?.some((ref) => named.includes(ref.id)) === true ? [id] : [],
  );
  return [...named, ...standIns];
}
