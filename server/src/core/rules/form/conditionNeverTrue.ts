import { conditionOf } from '../../analysis/familyView';
import { nestedInstructions } from '../../analysis/instructions';
import type { BuildSet, BuildSpace } from '../../builds';
import type { Unit } from '../../model/facts';
import type { Instruction } from '../../model/generated/types';
import type { BuildCase, Condition } from '../../model/values';
import { defineRule } from '../defineRule';
import { asStep } from '../examples';
import type { RuleContext } from '../ruleContext';
import { isFollowUp, isUnderstood, knownSpace } from '../support/conditionNames';
import { ownerText } from '../support/owners';
import { scopeOf } from '../support/scopes';
import { isEcho } from '../support/tornText';

interface Owner {
  readonly when?: Condition;
  readonly unless?: Condition;
}

const messages = {
  when: (owner: string) =>
    `No build or outcome meets this condition, so ${owner} never applies; mend the condition, or take it out with what it is for`,
  unless: (owner: string) =>
    `Every build that is left meets this condition, so ${owner} never applies; mend the condition`,
  within: (owner: string) =>
    `None of the builds and outcomes that are left here meets this condition, so ${owner} never applies; mend the condition, or that of what it stands in`,
  notCovered: (owner: string) =>
    `No build that this procedure covers meets this condition, so ${owner} never applies; add to what it covers, or mend the condition`,
  key: (key: string) =>
    `"${key}" holds on none of the builds and outcomes that this value is for; mend it, or take the entry out`,
  cycle: (id: string) =>
    `What "${id}" is found to be decides whether it can be found; take it out of its own condition`,
};

type Context = RuleContext<typeof messages>;

export const conditionNeverTrue = defineRule({
  id: 'condition-never-true',
  group: 'form',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A condition that no build and no outcome can meet where it stands.',
    why: 'What it is for is never printed: a step that was meant for one variant is done on none.',
    wrong: asStep('title: Fit the cover\nwhen: { all: [k1-a, k1-b] }\ndo:\n  - install: cover'),
    right: asStep('title: Fit the cover\nwhen: k1-a\ndo:\n  - install: cover'),
  },
  messages,
  check: {
    step({ step, phase }, ctx) {
      const space = knownSpace(ctx);
      if (space === undefined) return;
      const inPhase = narrowed(space.everything, phase, space);
      const inStep = judge(step, inPhase, space, 'this step', ctx);
      for (const instruction of step.do ?? []) judgeInstruction(instruction, inStep, space, ctx);
    },
    unit(unit, ctx) {
      const space = knownSpace(ctx);
      if (space === undefined) return;
      if (isConditional(unit) && !isJudgedByStep(unit, ctx))
        judge(unit.value as Owner, space.everything, space, ownerName(unit), ctx);
      judgeKeys(unit, ctx);
    },
    family(family, ctx) {
      for (const problem of family.space.problems) {
        if (problem.kind !== 'outcome-cycle') continue;
        const declared = family.declared('outcome').get(problem.id) ?? family.parts.get(problem.id)?.id;
        if (declared !== undefined) ctx.report(declared.node, 'cycle', [problem.id], { about: [problem.id] });
      }
    },
  },
});

/** Most units have no condition, and what they are called need not be worked out. */
function isConditional({ value }: Unit): boolean {
  const { when, unless } = value as Owner;
  return when !== undefined || unless !== undefined;
}

function isJudgedByStep(unit: Unit, ctx: Context): boolean {
  return ctx.step?.step === unit.value || ctx.instruction?.instruction === unit.value;
}

function ownerName(unit: Unit): string {
  return ownerText(unit, unit.def.split('/').at(-1) ?? unit.def).replace(/^an? /, 'this ');
}

function judgeInstruction(instruction: Instruction, outer: BuildSet, space: BuildSpace, ctx: Context): void {
  const inside = judge(instruction, outer, space, 'this instruction', ctx);
  for (const nested of nestedInstructions(instruction)) judgeInstruction(nested, inside, space, ctx);
}

function narrowed(outer: BuildSet, owner: Owner, space: BuildSpace): BuildSet {
  return owner.when === undefined && owner.unless === undefined ? outer : outer.and(space.set(conditionOf(owner)));
}

/** Reports a condition that leaves nothing of what it stands in, and gives what it leaves. */
function judge(owner: Owner, outer: BuildSet, space: BuildSpace, name: string, ctx: Context): BuildSet {
  const inside = narrowed(outer, owner, space);
  if (!inside.isEmpty || outer.isEmpty) return inside;
  const { when, unless } = owner;
  const conditions = [when, unless].filter((one) => one !== undefined);
  const understood = conditions.every((one) => isUnderstood(space, one.names) && !isEcho(ctx.document, one.node));
  const followUp = isFollowUp(
    space,
    conditions.map((one) => one.expr),
  );
  if (!understood || followUp) return outer;
  const met = when === undefined ? outer : outer.and(space.set(when.expr));
  if (!met.isEmpty && unless !== undefined) ctx.report(unless.node, 'unless', [name], { about: namesOf(unless) });
  else if (when !== undefined) ctx.report(when.node, whyNever(when, space, ctx), [name], { about: namesOf(when) });
  // What stands inside is judged as if this condition were right: one cause, one finding.
  return outer;
}

function whyNever(when: Condition, space: BuildSpace, ctx: Context): 'when' | 'within' | 'notCovered' {
  if (!space.set(when.expr).isEmpty) return 'within';
  const elsewhere = ctx.procedure === undefined ? undefined : ctx.family?.space.set(when.expr);
  return elsewhere === undefined || elsewhere.isEmpty ? 'when' : 'notCovered';
}

function namesOf(condition: Condition): string[] {
  return [...new Set(condition.names.map((name) => name.text))].sort();
}

/** A key that holds nowhere in a value by build. */
function judgeKeys(unit: Unit, ctx: Context): void {
  if (unit.facts.byBuilds.length === 0) return;
  const cases = unit.facts.byBuilds.flatMap(({ byBuild }) => (byBuild.is === 'cases' ? byBuild.cases : []));
  if (cases.length === 0) return;
  const scope = scopeOf(unit, ctx);
  if (scope === undefined || scope.set.isEmpty) return;
  for (const one of cases) {
    if (isNeverTrue(one, scope.set, scope.space) && !isEcho(ctx.document, one.key)) {
      ctx.report(one.key, 'key', [one.key.text], { about: [one.key.text] });
    }
  }
}

function isNeverTrue({ expr }: BuildCase<unknown>, within: BuildSet, space: BuildSpace): boolean {
  if (expr === undefined || !within.and(space.set(expr)).isEmpty) return false;
  return space.unknownNames(expr).length === 0 && !isFollowUp(space, [expr]);
}
