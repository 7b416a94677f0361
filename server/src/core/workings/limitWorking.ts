import type { FamilyView } from '../analysis/familyView';
import { heldValues } from '../analysis/heldValues';
import { describeBuilds } from '../builds';
import type { Limit } from '../model/generated/types';
import { boundsOf, type Unit } from '../quantity';
import { type LimitCase, limitBuilds, limitCases } from './limitCases';
import { dimensionOf } from './limitChain';
import { lengthRangeText, lengthText } from './limitText';
import type { Working, WorkingRow } from './working';

const SOURCE = 'dimension chains, worst case and root sum square (textbook method)';

/** How a limit follows from its dimensions, line by line; one working for each build on which something differs. */
export function limitWorkingsOf(family: FamilyView, id: string): Working[] {
  const limit = family.value.limits?.find((one) => one.id.id === id)?.value;
  if (limit === undefined) return [];
  const cases = limitCases(family, id);
  return cases.length > 0 ? cases.map(limitWorking) : [withoutStack(family, id, limit)];
}

/** How a stack-up stands to what is accepted. */
export function limitWorking(one: LimitCase): Working {
  const { limit, id, where, space, links, stack, accept } = one;
  const unit = unitOf(one);
  const rows: WorkingRow[] = links.map(({ name, sign, value }) => ({
    label: `${sign > 0 ? '+' : '−'} ${name}`,
    text: value.text.trim(),
  }));
  if (unit !== undefined) {
    rows.push(
      { label: 'middle of the tolerances', text: lengthText(stack.middle, unit) },
      { label: 'worst case', text: lengthRangeText(stack.worst.lowest, stack.worst.highest, unit) },
      { label: 'root sum square', text: lengthRangeText(stack.statistical.lowest, stack.statistical.highest, unit) },
    );
  }
  rows.push({ label: 'accepted', text: accept.text.trim() }, ...outsideRows(one, unit));
  return {
    title: `Stack-up of the ${limit.name?.text ?? id}`,
    builds: describeBuilds(where, space),
    rows,
    steps: stack.steps,
    missing: [],
    sources: [SOURCE],
  };
}

/** The unit in which what is accepted is written, else that of the first dimension. */
export function unitOf({ accept, links }: LimitCase): Unit | undefined {
  const { quantity } = accept.reading;
  return quantity?.dimension === 'length' ? quantity.unit : links[0]?.value.reading.quantity?.unit;
}

/** By how much the worst case reaches outside at either end. */
function outsideRows({ accept, stack, verdict }: LimitCase, unit: Unit | undefined): WorkingRow[] {
  const { quantity } = accept.reading;
  if (verdict === undefined || verdict === 'inside' || quantity === undefined || unit === undefined) return [];
  const { lowest, highest } = boundsOf(quantity);
  const [below, above] = [lowest - stack.worst.lowest, stack.worst.highest - highest];
  return [
    ...(below > 1e-6 ? [{ label: 'worst case below what is accepted', text: `by ${lengthText(below, unit)}` }] : []),
    ...(above > 1e-6 ? [{ label: 'worst case above what is accepted', text: `by ${lengthText(above, unit)}` }] : []),
  ];
}

/** What is accepted is shown all the same, with what is missing for a stack-up. */
function withoutStack(family: FamilyView, id: string, limit: Limit): Working {
  const { held } = heldValues(limit.accept, family.space, limitBuilds(limit, family.space));
  const rows = held.map(({ value, where }) => ({
    label: ['accepted', describeBuilds(where, family.space)].filter((text) => text !== '').join(', '),
    text: value.text.trim(),
  }));
  return {
    title: `Limit of the ${limit.name?.text ?? id}`,
    builds: '',
    rows,
    steps: [],
    missing: missingOf(family, limit),
    sources: [],
  };
}

function missingOf(family: FamilyView, { from, accept }: Limit): string[] {
  if (from === undefined || from.length === 0) return ['the dimensions that it results from'];
  const unreadable = from.flatMap(({ term }) =>
    'id' in term && dimensionOf(family, term.id) === undefined ? [`the dimension ${term.id}`] : [],
  );
  if (unreadable.length > 0) return unreadable;
  return accept === undefined ? ['what is accepted'] : ['dimensions with a lowest and a highest value on one build'];
}
