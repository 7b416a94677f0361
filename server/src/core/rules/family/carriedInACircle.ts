import type { FamilyView } from '../../analysis/familyView';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { knotsOfCarrying, type Sitting } from '../support/carrying';
import { circleDetails, nameOfMeant, toldCircles } from '../support/circleText';

const messages = {
  circle: (name: string, way: readonly string[]) =>
    `The ${name} sits on ${way.join(', which sits on ')}; say what really carries one of them`,
  base: (name: string, carrier: string) =>
    `The ${name} is the base, on which everything sits, so it cannot sit on the ${carrier}; take this out, or name another base`,
};

type Context = RuleContext<typeof messages>;

export const carriedInACircle = defineRule({
  id: 'carried-in-a-circle',
  group: 'family',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'Parts that sit on each other in a circle on some build, or a base that sits on something.',
    why: 'None of them is ever in the unit then, so that nothing that is wrong with their order is found, and the fitter is the first to see it.',
    wrong: inFamily(
      'parts:\n  backplate: { name: backplate, kind: plate, sits-on: diffuser }\n  diffuser: { name: diffuser, kind: plate, sits-on: backplate }',
    ),
    right: inFamily(
      'parts:\n  backplate: { name: backplate, kind: plate, sits-on: core }\n  diffuser: { name: diffuser, kind: plate, sits-on: backplate }',
    ),
  },
  messages,
  check: {
    family(family, ctx) {
      reportBase(family, ctx);
      for (const knot of toldCircles(family, knotsOfCarrying(family))) {
        const [first] = knot.edges;
        if (first === undefined) continue;
        const way = knot.edges.map(({ why }) => nameOfMeant(family, why.by));
        const say = ({ part, by }: Sitting): string => `The ${family.nameOf(part)} sits on ${nameOfMeant(family, by)}`;
        const details = circleDetails(family, knot, say);
        ctx.report(first.why.by.ref.range, 'circle', [family.nameOf(first.why.part), way], details);
      }
    },
  },
});

function reportBase(family: FamilyView, ctx: Context): void {
  const { base } = family.value;
  const [carrier] = base === undefined ? [] : (family.part(base.id)?.sitsOn ?? []);
  if (base === undefined || carrier === undefined || carrier.ref.id === base.id) return;
  if (family.part(carrier.ref.id) === undefined) return;
  ctx.report(carrier.ref.range, 'base', [family.nameOf(base.id), family.nameOf(carrier.ref.id)], {
    about: [base.id, carrier.ref.id],
    related: [{ range: base.range, message: 'Here it is named as the base' }],
  });
}
