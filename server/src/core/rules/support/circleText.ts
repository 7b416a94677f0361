import type { FamilyView } from '../../analysis/familyView';
import type { Ref } from '../../model/values';
import type { ReportDetails } from '../ruleContext';
import type { Meant } from './holding';
import type { Knot } from './knots';

/** "the wheel", or "the big wheel (in place of the wheel)" where the text names the other one. */
export function nameOfMeant(family: FamilyView, { id, ref }: Meant): string {
  const name = `the ${family.nameOf(id)}`;
  return id === ref.id ? name : `${name} (in place of the ${family.nameOf(ref.id)})`;
}

/** What a finding about a circle points to beside its first place: each further place that closes it, and the builds. */
export function circleDetails<Why extends { readonly by: Meant }>(
  family: FamilyView,
  knot: Knot<Why>,
  say: (why: Why) => string,
): ReportDetails {
  const [first, ...others] = knot.edges.map(({ why }) => why);
  const places = new Map<Ref, string>();
  for (const why of others) if (why.by.ref !== first?.by.ref) places.set(why.by.ref, say(why));
  return {
    about: [...new Set(knot.edges.map(({ why }) => why.by.id))].sort(),
    where: { set: knot.where, space: family.space },
    related: [...places].map(([ref, message]) => ({ range: ref.range, message })),
  };
}
