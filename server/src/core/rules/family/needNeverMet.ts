import type { FamilyView } from '../../analysis/familyView';
import type { Ref } from '../../model/values';
import type { ItemRange } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { allNeeded, type Conflict, conflictOf, type Needed, optionsOf } from '../support/optionConflict';
import { listed } from '../support/phrases';

const messages = {
  excludes: (name: string, one: string, other: string) =>
    `No unit can have the ${name}: it needs ${one}, but ${other} exclude each other; take out the one that is not so`,
  variants: (name: string, needs: string, demands: readonly string[]) =>
    `No unit can have the ${name}: it needs ${needs}, but ${listed(demands)}; name a variant that all of them can have`,
};

type Context = RuleContext<typeof messages>;

export const needNeverMet = defineRule({
  id: 'need-never-met',
  group: 'family',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'An option that no unit can have, since what it needs, excludes and is for contradict each other, straight or through other options.',
    why: 'Steps, parts and values for this option are never printed, and a unit that comes in with it has no sheet.',
    wrong: inFamily(
      'options:\n  big-wheel: { name: big wheel, variants: [k1-a], needs: [bored-cover] }\n  bored-cover: { name: bored cover, variants: [k1-b] }',
    ),
    right: inFamily(
      'options:\n  big-wheel: { name: big wheel, variants: [k1-a], needs: [bored-cover] }\n  bored-cover: { name: bored cover }',
    ),
  },
  messages,
  check: {
    family(family, ctx) {
      const never = new Set(
        family.space.problems.flatMap((problem) => (problem.kind === 'option-never-exists' ? [problem.id] : [])),
      );
      for (const id of never) reportFirstCause(family, id, never, ctx);
    },
  },
});

/** Where a needed option is impossible by itself, it is told there alone. */
function reportFirstCause(family: FamilyView, id: string, never: ReadonlySet<string>, ctx: Context): void {
  const options = optionsOf(family);
  const option = options.get(id);
  if (option === undefined) return;
  const needed = allNeeded(options, option);
  const order = [...options.keys()];
  const isFollowUp = needed.slice(1).some((one) => {
    if (!never.has(one.option.id.id)) return false;
    const needsBack = allNeeded(options, one.option).some((other) => other.option === option);
    return !needsBack || order.indexOf(one.option.id.id) < order.indexOf(id);
  });
  const conflict = isFollowUp ? undefined : conflictOf(needed);
  if (conflict !== undefined) report(id, conflict, needed, ctx);
}

function report(id: string, conflict: Conflict, needed: readonly Needed[], ctx: Context): void {
  const [self] = needed;
  if (self === undefined) return;
  const name = nameOf(self);
  const among = conflict.is === 'excludes' ? [conflict.one, conflict.other] : conflict.among;
  const about = [...new Set([id, ...among.map((one) => one.option.id.id)])].sort();
  const others = among.filter((one) => one !== self);
  // The last one is the farthest: the need that leads to it is where the contradiction comes in.
  const range = others.at(-1)?.first?.range ?? self.option.id.node;
  const related = [...needsOf(others, needed), ...demandsOf(conflict)].filter((place) => place.range !== range);
  const needs = listed(others.map((one) => phrase(one, needed)));
  if (conflict.is === 'excludes') {
    const pair = others.length === 2 ? 'these' : 'the two';
    ctx.report(range, 'excludes', [name, needs, pair], { about, related });
  } else {
    const demands = among.map((one) => `the ${nameOf(one)} is for ${listed(variantsOf(one), 'or')} only`);
    ctx.report(range, 'variants', [name, needs, demands], { about, related });
  }
}

interface Place {
  readonly range: ItemRange;
  readonly message: string;
}

function needsOf(others: readonly Needed[], needed: readonly Needed[]): Place[] {
  return others.flatMap(({ option, via }) => {
    const needer = via === undefined ? undefined : needed.find((one) => one.option.value.needs?.includes(via) === true);
    if (via === undefined || needer === undefined) return [];
    return [
      { range: via.range, message: `The ${nameOf(needer)} needs the ${option.value.name?.text ?? option.id.id}` },
    ];
  });
}

function demandsOf(conflict: Conflict): Place[] {
  if (conflict.is === 'excludes') return [{ range: conflict.by.range, message: 'Here they exclude each other' }];
  return conflict.among.flatMap((one) => {
    const [first] = one.option.value.variants ?? [];
    return first === undefined ? [] : [{ range: first.range, message: `The ${nameOf(one)} is for these variants` }];
  });
}

/** "the bored cover", with what needs it where that is not the option itself. */
function phrase(one: Needed, needed: readonly Needed[]): string {
  const needer = needed.find(({ option }) => one.via !== undefined && option.value.needs?.includes(one.via) === true);
  const through = needer === undefined || needer === needed[0] ? '' : ` (which the ${nameOf(needer)} needs)`;
  return `the ${nameOf(one)}${through}`;
}

function nameOf({ option }: Needed): string {
  return option.value.name?.text ?? option.id.id;
}

function variantsOf({ option }: Needed): string[] {
  return (option.value.variants ?? []).map((ref: Ref) => ref.id);
}
