import type { FamilyView } from '../../analysis/familyView';
import { heldValues, whereUnless } from '../../analysis/heldValues';
import { limitBuilds } from '../../workings/limitCases';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { judgedBy, type WithoutLimit } from '../support/acceptance';

const messages = {
  instruction: (name: string) =>
    `What is acceptable for the ${name} is not stated, and the work goes on by it; state it here or in the family`,
  recorded: (name: string) =>
    `The ${name} is only recorded, and if-not says what to do when it is not right; state what is acceptable`,
  elsewhere: (name: string) =>
    `The ${name} is a limit of other builds, so nobody can say what is acceptable; state it here, or measure it only where it holds`,
  balance: (name: string) =>
    `The permissible unbalance of the ${name} is not stated, nor its balance grade; state it here or in the family`,
  family: (name: string) => `The limit for the ${name} has no value for some builds that have it; state one for each`,
};

export const limitMissing = defineRule({
  id: 'limit-missing',
  group: 'limits',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'Something is measured, worked out or balanced, the work goes on by the result, and neither the step nor the family states what is acceptable on some build; or the family states a limit for some of its builds only.',
    why: 'The fitter decides by feel whether the part stays. Two benches decide differently.',
    wrong: withFamily(
      inStep('- measure: end-play\n  with: dial-gauge\n  if-not: { reject: true }'),
      'limits:\n  end-play: { name: end play, accept: { k1-a: 0.04..0.09 mm } }',
    ),
    right: withFamily(
      inStep('- measure: end-play\n  with: dial-gauge\n  if-not: { reject: true }'),
      'limits:\n  end-play: { name: end play, accept: { k1-a: 0.04..0.09 mm, otherwise: 0.05..0.10 mm } }',
    ),
  },
  messages,
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure?.family === undefined) return;
      for (const one of judgedBy(procedure, procedure.family, view)) report(one, ctx);
    },
    family(family, ctx) {
      for (const { id, value } of family.value.limits ?? []) {
        if (value.accept === undefined) continue;
        const builds = limitBuilds(value, family.space);
        const { absent } = heldValues(value.accept, family.space, builds);
        if (absent.isEmpty) continue;
        const details = { about: [id.id], ...whereUnless(absent, builds, family.space) };
        ctx.report(id.node, 'family', [value.name?.text ?? id.id], details);
      }
    },
  },
});

function report(one: WithoutLimit, ctx: RuleContext<typeof messages>): void {
  const { family, procedure } = ctx;
  if (procedure === undefined || family === undefined) return;
  ctx.report(one.ref.range, one.why, [one.name], {
    about: [one.ref.id],
    ...whereUnless(one.absent, one.served, procedure.space),
    related: declaredAt(family, one),
  });
}

function declaredAt(family: FamilyView, { ref, name }: WithoutLimit) {
  for (const kind of ['limit', 'reading', 'balance-group']) {
    const declared = family.declared(kind).get(ref.id);
    if (declared === undefined || (kind === 'balance-group') !== (ref.kind === 'balance-group')) continue;
    return [{ range: declared.node, document: family.document, message: `The ${name} is declared here` }];
  }
  return [];
}
