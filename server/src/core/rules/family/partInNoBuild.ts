import { conditionOf, type FamilyView } from '../../analysis/familyView';
import type { BuildSet } from '../../builds';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { Holding } from '../support/holding';

const messages = {
  replaced: (name: string, replacer: string) =>
    `The ${replacer} takes the place of the ${name} on every build, so that no unit has the ${name}; say with when which builds have the ${replacer}`,
  each: (name: string, replacer: string) =>
    `The ${name} and the ${replacer} take each other's place, so that these builds have neither; take this out of one of them`,
};

type Context = RuleContext<typeof messages>;

export const partInNoBuild = defineRule({
  id: 'part-in-no-build',
  group: 'family',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part that no unit has, or that is missing on some build, since another part is always there in its place.',
    why: 'Every instruction about the part is left off the sheet without a word, on all builds.',
    wrong: inFamily(
      'parts:\n  big-cover: { name: big cover, sits-on: core, instead-of: cover, fastened-by: [cover-screw] }',
    ),
    right: inFamily(
      'parts:\n  big-cover: { name: big cover, when: big-wheel, sits-on: core, instead-of: cover, fastened-by: [cover-screw] }',
    ),
  },
  messages,
  check: {
    family(family, ctx) {
      const told = new Set<string>();
      for (const id of family.parts.keys()) {
        const replacers = Holding.of(family).replacersNamed(id);
        if (replacers.length === 0) continue;
        const own = ownBuilds(family, id);
        const lost = lostBuilds(family, id, own);
        if (!lost.isEmpty) reportLost(family, id, lost, told, ctx);
        else if (!own.isEmpty && family.presence(id, family.space).isEmpty) reportReplaced(family, id, own, ctx);
      }
    },
  },
});

function ownBuilds(family: FamilyView, id: string): BuildSet {
  const part = family.part(id);
  return part === undefined ? family.space.nothing : family.space.set(conditionOf(part));
}

/** Where the part is not there, and nothing that takes its place either. */
function lostBuilds(family: FamilyView, id: string, own: BuildSet): BuildSet {
  const { space } = family;
  return own.minus(
    space.union(
      Holding.of(family)
        .withReplacers(id)
        .map((one) => family.presence(one, space)),
    ),
  );
}

function reportLost(family: FamilyView, id: string, lost: BuildSet, told: Set<string>, ctx: Context): void {
  const other = Holding.of(family)
    .replacersNamed(id)
    .find((one) => ownBuilds(family, one.id).overlaps(lost));
  if (other === undefined || told.has(id)) return;
  for (const one of Holding.of(family).withReplacers(id)) told.add(one);
  ctx.report(other.ref.range, 'each', [family.nameOf(id), family.nameOf(other.id)], {
    about: [id, other.id].sort(),
    where: { set: lost, space: family.space },
    related: (family.part(id)?.insteadOf ?? []).map((ref) => ({
      range: ref.range,
      message: `The ${family.nameOf(id)} takes the place of the ${family.nameOf(ref.id)}`,
    })),
  });
}

function reportReplaced(family: FamilyView, id: string, own: BuildSet, ctx: Context): void {
  const replacers = Holding.of(family).replacersNamed(id);
  const { space } = family;
  const alone = replacers.find((one) => own.isWithin(family.presence(one.id, space))) ?? replacers.at(-1);
  const declared = family.parts.get(id)?.id.node;
  if (alone === undefined || declared === undefined) return;
  ctx.report(alone.ref.range, 'replaced', [family.nameOf(id), family.nameOf(alone.id)], {
    about: [id, alone.id],
    related: [
      { range: declared, message: `The ${family.nameOf(id)} is declared here` },
      ...replacers
        .filter((one) => one !== alone)
        .map((one) => ({ range: one.ref.range, message: `The ${family.nameOf(one.id)} takes its place on others` })),
    ],
  });
}
