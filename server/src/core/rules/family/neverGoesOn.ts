import type { FamilyView } from '../../analysis/familyView';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { circleDetails, nameOfMeant, toldCircles } from '../support/circleText';
import { knotsOfFitting, type Precedence } from '../support/goingOn';
import type { Knot } from '../support/knots';
import { listed } from '../support/phrases';

export const neverGoesOn = defineRule({
  id: 'never-goes-on',
  group: 'family',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'Parts that can be fitted in no order on some build, though they can be taken apart: each has to be on before the other.',
    why: 'The unit is stripped and cannot be put together again as the family says it: the fitter finds out with the parts in hand.',
    wrong: inFamily(
      'parts:\n  shield: { name: shield, kind: shield, sits-on: core, behind: [end-plate] }\n  end-plate: { name: end plate, kind: plate, sits-on: core }\n  lever: { name: lever, kind: lever, sits-on: end-plate, behind: [shield] }',
    ),
    right: inFamily(
      'parts:\n  shield: { name: shield, kind: shield, sits-on: core, behind: [end-plate] }\n  end-plate: { name: end plate, kind: plate, sits-on: core }\n  lever: { name: lever, kind: lever, sits-on: end-plate }',
    ),
  },
  messages: {
    order: (steps: readonly string[]) => `There is no order of fitting: ${listed(steps)}; take out what is not so`,
  },
  check: {
    family(family, ctx) {
      for (const knot of toldCircles(family, knotsOfFitting(family))) {
        const [first] = knot.edges;
        if (first === undefined) continue;
        const details = circleDetails(family, knot, (why) => reason(family, why));
        ctx.report(first.why.by.ref.range, 'order', [stepsOf(family, knot)], details);
      }
    },
  },
});

/** "the a must be on before the b", "the b before the c". */
function stepsOf(family: FamilyView, { edges }: Knot<Precedence>): string[] {
  return edges.map(({ why }, at) => {
    const must = at === 0 ? ' must be on' : '';
    const with_ = why.moved === why.part ? '' : ` with the ${family.nameOf(why.moved)} on it`;
    return `the ${family.nameOf(why.part)}${with_}${must} before ${nameOfMeant(family, why.by)}`;
  });
}

function reason(family: FamilyView, { is, part, moved, by }: Precedence): string {
  const relation = is === 'fastened' ? 'fastened by' : 'behind';
  const rides = moved === part ? '' : `, which goes in with the ${family.nameOf(part)},`;
  return `The ${family.nameOf(moved)}${rides} is ${relation} ${nameOfMeant(family, by)}`;
}
