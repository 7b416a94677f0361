import { objectIds } from '../analysis/instructions';
import type { Instruction } from '../model/generated/types';
import { adjust } from './adjusting';
import { decide, discard, giveBack, receive, send } from './dispositions';
import { apply, clean, inspect } from './handling';
import { cool, heat, wait } from './heating';
import { align, mark } from './positions';
import { install } from './putOn';
import { balance, calculate, choose, made, measure } from './results';
import { loosen, remove } from './takeOff';
import { seat, tighten } from './tightening';
import type { Act, Walker } from './walker';

type Verb = Instruction['verb'];
type Of<V extends Verb> = Extract<Instruction, { verb: V }>;

/** What an instruction does to each part that it names. */
const TO_PARTS: { readonly [V in Verb]?: (walker: Walker, part: string, act: Act, instruction: Of<V>) => void } = {
  loosen,
  remove: (walker, part, act, { count }) => remove(walker, part, act, count?.value),
  install: (walker, part, act, { count, trial }) =>
    install(walker, part, act, { count: count?.value, trial: trial?.value === true }),
  press: (walker, part, act) => install(walker, part, act, { count: undefined, trial: false }),
  seat,
  tighten: (walker, part, act, instruction) => tighten(walker, part, instruction, act),
  inspect,
  heat,
  cool,
  adjust,
  send,
  receive,
  return: giveBack,
  discard,
};

/** What an instruction does that is not about one part alone. */
const AS_A_WHOLE: { readonly [V in Verb]?: (walker: Walker, instruction: Of<V>, act: Act) => void } = {
  apply,
  clean,
  mark,
  align,
  wait,
  measure,
  calculate,
  choose,
  balance,
  identify: ({ state }, { identify }, { where }) => {
    if (identify !== undefined) state.note('known', identify.id, where);
  },
  check: (walker, { check }, act) => {
    if (check?.is === 'ref') made(walker, check.ref.id, act);
  },
};

/** Carries out one instruction: what it needs is looked at, and the unit is changed. Half-typed ones do nothing. */
export function carryOut(walker: Walker, act: Act): void {
  const { instruction } = act;
  const toPart = TO_PARTS[instruction.verb] as ((...args: unknown[]) => void) | undefined;
  const asAWhole = AS_A_WHOLE[instruction.verb] as ((...args: unknown[]) => void) | undefined;
  if (toPart !== undefined)
    for (const id of knownParts(walker, objectIds(instruction))) toPart(walker, id, act, instruction);
  asAWhole?.(walker, instruction, act);
  if ('ifNot' in instruction) decideBy(walker, act);
}

/** What is to be done when something is not right decides about the parts that it names, and those inspected. */
function decideBy(walker: Walker, act: Act): void {
  const { instruction } = act;
  const ifNot = 'ifNot' in instruction ? instruction.ifNot : undefined;
  if (ifNot === undefined) return;
  const replaced = (ifNot.replace ?? []).map((ref) => ref.id);
  const looked = instruction.verb === 'inspect' ? objectIds(instruction) : [];
  for (const id of knownParts(walker, [...replaced, ...looked])) decide(walker, id, act);
}

function knownParts({ unit }: Walker, ids: readonly string[]): string[] {
  return ids.filter((id, place) => unit.part(id) !== undefined && ids.indexOf(id) === place);
}
