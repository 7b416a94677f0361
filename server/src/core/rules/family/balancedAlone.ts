import type { FamilyView } from '../../analysis/familyView';
import type { BalanceGroup } from '../../model/generated/types';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { Holding } from '../support/holding';

const group = (rest: string): string =>
  `parts:
  rotor: { name: rotor, kind: shaft, sits-on: core }
  long-collar: { name: long collar, kind: collar, when: k1-b, sits-on: rotor }
  big-nose: { name: big nose, kind: collar, when: k1-a, sits-on: rotor }
balance-groups:
  nose: { name: nose, ${rest} }`;

export const balancedAlone = defineRule({
  id: 'balanced-alone',
  group: 'family',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A balance group of several parts of which no build has two, or one that keeps the position of a single part.',
    why: 'Nothing is balanced together: marks are asked of parts that have no partner, and the rotor that was meant is never asked for.',
    wrong: inFamily(group('members: [long-collar, big-nose]')),
    right: inFamily(group('members: [rotor, big-nose]')),
  },
  messages: {
    never: (name: string) =>
      `No build has two parts of the ${name} together, so that nothing is balanced together; name the parts that are`,
    single: (name: string) =>
      `The ${name} has one part alone, which has no position to keep to another; name its other parts, or take this out`,
  },
  check: {
    family(family, ctx) {
      for (const { id, value } of family.value.balanceGroups ?? []) {
        const members = value.members ?? [];
        if (members.length === 0 || members.some((ref) => family.part(ref.id) === undefined)) continue;
        const name = value.name?.text ?? id.id;
        if (members.length > 1 && !hasTwo(family, value)) ctx.report(id.node, 'never', [name], { about: [id.id] });
        else if (members.length === 1 && value.keepPosition?.value === true && !hasTwo(family, value)) {
          ctx.report(value.keepPosition.node, 'single', [name], { about: [id.id] });
        }
      }
    },
  },
});

/** Whether some build has two different parts of a group, among those named and those that take their place. */
function hasTwo(family: FamilyView, { members = [] }: BalanceGroup): boolean {
  const holding = Holding.of(family);
  const ids = [...new Set(members.flatMap((ref) => holding.withReplacers(ref.id)))];
  const sets = ids.map((id) => holding.presence(id));
  // Where no member is on any build, it is told at the parts.
  if (sets.every((set) => set.isEmpty)) return true;
  return sets.some((set, at) => sets.slice(0, at).some((other) => other.overlaps(set)));
}
