import type { FamilyView } from '../../analysis/familyView';
import type { Part } from '../../model/generated/types';
import type { Entry, Ref } from '../../model/values';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { carriedByNothing } from '../support/carrying';
import { Holding } from '../support/holding';
import { PART_RELATIONS } from '../support/partRelations';
import { takeOut } from '../support/takeOut';

export const partNeverWith = defineRule({
  id: 'part-never-with',
  group: 'family',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A part that names another one as its carrier, fastener, cover or the like, although no build has the two together.',
    why: 'What was meant to hold or hide the part does not: its fastener is missing from the order of the work on every build.',
    wrong: inFamily(
      'parts:\n  liner: { name: liner, kind: spacer, when: k1-a, sits-on: core, behind: [cover, baffle] }\n  baffle: { name: baffle, kind: plate, when: k1-b, sits-on: core }',
    ),
    right: inFamily(
      'parts:\n  liner: { name: liner, kind: spacer, when: k1-a, sits-on: core, behind: [cover, baffle] }\n  baffle: { name: baffle, kind: plate, sits-on: core }',
    ),
  },
  messages: {
    never: (name: string, relation: string, other: string) =>
      `The ${name} is said to ${relation} the ${other}, but no build has both; mend the condition of one, or take this out`,
  },
  check: {
    part(part, ctx) {
      const { family } = ctx;
      if (family === undefined) return;
      const { id, value } = part;
      for (const { key, say, refs } of PART_RELATIONS) {
        const named = refs(value);
        for (const ref of named) {
          if (!isNeverWith(family, part, ref) || (key === 'sits-on' && isTold(family, id.id))) continue;
          if (isMeantAnyway(family, part, ref, named)) continue;
          ctx.report(ref.range, 'never', [family.nameOf(id.id), say, family.nameOf(ref.id)], {
            about: [id.id, ref.id],
            related: conditionPlaces(family, [id.id, ref.id]),
            fixes: () => (value.node.kind === 'map' ? takeOut(ctx.document, value.node, key, ref) : []),
          });
        }
      }
    },
  },
});

/** Whether no build has both, while each of them is on some build. What takes the place of the one named is meant too. */
function isNeverWith(family: FamilyView, { id }: Entry<Part>, ref: Ref): boolean {
  if (ref.id === id.id || family.part(ref.id) === undefined) return false;
  const holding = Holding.of(family);
  const here = holding.presence(id.id);
  const others = holding.withReplacers(ref.id).filter((one) => one !== id.id);
  if (holding.bases.has(ref.id) || here.isEmpty || others.every((one) => holding.presence(one).isEmpty)) return false;
  return others.every((one) => !holding.presence(one).overlaps(here));
}

/** What takes the place of another one that is named may be named beside it, although that means it already. */
function isMeantAnyway(family: FamilyView, part: Entry<Part>, ref: Ref, named: readonly Ref[]): boolean {
  const holding = Holding.of(family);
  return named.some(
    (one) => one.id !== ref.id && holding.withReplacers(one.id).includes(ref.id) && !isNeverWith(family, part, one),
  );
}

/** Where nothing at all carries the part, that is told. */
function isTold(family: FamilyView, id: string): boolean {
  return !carriedByNothing(Holding.of(family), id).isEmpty;
}

function conditionPlaces(family: FamilyView, ids: readonly string[]) {
  return ids.flatMap((id) => {
    const part = family.parts.get(id)?.value;
    const range = part?.when?.node ?? part?.unless?.node;
    return range === undefined ? [] : [{ range, message: `Which builds have the ${family.nameOf(id)}` }];
  });
}
