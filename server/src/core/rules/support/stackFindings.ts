import type { FamilyView } from '../../analysis/familyView';
import { whereUnless } from '../../analysis/heldValues';
import { type LimitCase, limitBuilds, limitCases } from '../../workings/limitCases';
import { lengthRangeText, lengthText } from '../../workings/limitText';
import { limitWorking, unitOf } from '../../workings/limitWorking';
import type { FixDraft, ReportDetails } from '../ruleContext';

/** What a message says of a stack-up. */
export interface StackWords {
  readonly name: string;
  readonly accepted: string;
  readonly middle: string;
  readonly worst: string;
  readonly statistical: string;
}

const remembered = new WeakMap<FamilyView, readonly LimitCase[]>();

/** The stack-ups of all limits of a family; two rules look at them. */
export function stacksOf(family: FamilyView): readonly LimitCase[] {
  const known = remembered.get(family) ?? (family.value.limits ?? []).flatMap(({ id }) => limitCases(family, id.id));
  remembered.set(family, known);
  return known;
}

export function stackWords(one: LimitCase): StackWords | undefined {
  const { limit, id, stack, accept } = one;
  const unit = unitOf(one);
  if (unit === undefined) return undefined;
  return {
    name: limit.name?.text ?? id,
    accepted: accept.text.trim(),
    middle: lengthText(stack.middle, unit),
    worst: lengthRangeText(stack.worst.lowest, stack.worst.highest, unit),
    statistical: lengthRangeText(stack.statistical.lowest, stack.statistical.highest, unit),
  };
}

export function stackDetails(one: LimitCase, fixes: () => readonly FixDraft[] = () => []): ReportDetails {
  const { limit, id, where, space, links } = one;
  return {
    about: [id, ...new Set(links.map(({ name }) => name))],
    ...whereUnless(where, limitBuilds(limit, space), space),
    related: links.map(({ name, value }) => ({ range: value.node, message: `${name} is ${value.text.trim()}` })),
    working: () => [limitWorking(one)],
    fixes,
  };
}
