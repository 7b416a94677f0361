import type { FamilyView } from '../../analysis/familyView';
import type { Ref } from '../../model/values';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { circleDetails, nameOfMeant, toldCircles } from '../support/circleText';
import { type Hindrance, knotsOfStripping } from '../support/comingApart';
import { Holding } from '../support/holding';

const RELATION = { fastened: 'fastened by', behind: 'behind' } as const;

const messages = {
  circle: (name: string, way: readonly string[]) =>
    `The ${name} can never be taken off: it is ${way.join(', which is ')}; take out what is not so`,
  base: (name: string, relation: string, base: string) =>
    `The ${name} is said to be ${relation} the ${base}, the base, which never comes off; name what has to come off before the ${name}, or take this out`,
};

type Context = RuleContext<typeof messages>;

export const neverComesOff = defineRule({
  id: 'never-comes-off',
  group: 'family',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'Parts that can never be taken off on some build, since each has to be off before the other: what fastens it, and what it is behind.',
    why: 'No procedure for these builds can be right: whichever part the fitter is told to take off first, another one holds it.',
    wrong: inFamily(
      'parts:\n  cover-screw: { name: cover screw, kind: screw, quantity: 2, sits-on: core, thread: M6×1, hand: right, torque: 9 ± 1 N·m, behind: [band] }\n  band: { name: band, kind: plate, sits-on: core, behind: [cover] }',
    ),
    right: inFamily(
      'parts:\n  cover-screw: { name: cover screw, kind: screw, quantity: 2, sits-on: core, thread: M6×1, hand: right, torque: 9 ± 1 N·m, behind: [band] }\n  band: { name: band, kind: plate, sits-on: core }',
    ),
  },
  messages,
  check: {
    family(family, ctx) {
      reportBase(family, ctx);
      const say = ({ is, by }: Hindrance): string => `${RELATION[is]} ${nameOfMeant(family, by)}`;
      for (const knot of toldCircles(family, knotsOfStripping(family))) {
        const [first] = knot.edges;
        if (first === undefined) continue;
        const way = knot.edges.map(({ why }) => say(why));
        const sentence = (why: Hindrance): string => `The ${family.nameOf(why.part)} is ${say(why)}`;
        const details = circleDetails(family, knot, sentence);
        ctx.report(first.why.by.ref.range, 'circle', [family.nameOf(first.why.part), way], details);
      }
    },
  },
});

/** Everything sits on the base, so that it holds nothing and hides nothing. */
function reportBase(family: FamilyView, ctx: Context): void {
  const { bases } = Holding.of(family);
  for (const [id, { value }] of family.parts) {
    const report = (ref: Ref, is: Hindrance['is']): void => {
      if (ref.id === id || !bases.has(ref.id)) return;
      ctx.report(ref.range, 'base', [family.nameOf(id), RELATION[is], family.nameOf(ref.id)], { about: [id, ref.id] });
    };
    for (const ref of value.fastenedBy ?? []) report(ref, 'fastened');
    for (const ref of value.behind ?? []) report(ref, 'behind');
  }
}
