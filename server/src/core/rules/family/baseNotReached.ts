import { pairOf } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { carriedByNothing } from '../support/carrying';
import { Holding } from '../support/holding';
import { listed } from '../support/phrases';

export const baseNotReached = defineRule({
  id: 'base-not-reached',
  group: 'family',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A part that sits on nothing on some build, so that the way down from it does not end at the base.',
    why: 'Nobody can tell what takes it out of the unit with it: work that it stands in the way of is reported where it is right, or passes where it is wrong.',
    wrong: inFamily(
      'parts:\n  liner: { name: liner, kind: spacer, when: k1-a, sits-on: core }\n  liner-pin: { name: liner pin, kind: pin, sits-on: liner }',
    ),
    right: inFamily(
      'parts:\n  liner: { name: liner, kind: spacer, when: k1-a, sits-on: core }\n  liner-pin: { name: liner pin, kind: pin, when: k1-a, sits-on: liner }',
    ),
  },
  messages: {
    nothing: (name: string, base: string) =>
      `The ${name} sits on nothing; say with sits-on what carries it, straight or through other parts on the ${base}`,
    missing: (name: string, carriers: readonly string[]) =>
      `The ${name} sits on nothing where there is no ${listed(carriers, 'or')}; name what carries it there, or say with when which builds have it`,
  },
  check: {
    part({ id, value }, ctx) {
      const { family } = ctx;
      if (family === undefined || value.temporary?.value === true) return;
      const where = carriedByNothing(Holding.of(family), id.id);
      if (where.isEmpty) return;
      const refs = (value.sitsOn ?? []).map(({ ref }) => ref);
      const [first] = refs;
      const name = family.nameOf(id.id);
      const details = { about: [id.id], where: { set: where, space: family.space } };
      if (first === undefined) {
        // What is half typed tells of itself.
        if (value.node.kind === 'map' && pairOf(value.node, 'sits-on') !== undefined) return;
        ctx.report(id.node, 'nothing', [name, family.nameOf(family.value.base?.id ?? '')], { about: [id.id] });
        return;
      }
      const related = refs.flatMap((ref) => {
        const carrier = family.parts.get(ref.id);
        const range = carrier?.value.when?.node ?? carrier?.value.unless?.node ?? carrier?.id.node;
        return range === undefined
          ? []
          : [{ range, message: `Which builds have the ${family.nameOf(ref.id)} is said here` }];
      });
      const names = refs.map((ref) => family.nameOf(ref.id));
      ctx.report(first.range, 'missing', [name, names], { ...details, related });
    },
  },
});
