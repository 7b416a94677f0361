import type { FamilyView } from '../../analysis/familyView';
import type { Ref } from '../../model/values';
import type { ReportDetails } from '../ruleContext';
import type { Meant } from './holding';
import type { Knot } from './knots';
import { isEcho } from './tornText';

/** "the wheel", or "the big wheel (in place of the wheel)" where the text names the other one. */
export function nameOfMeant(family: FamilyView, { id, ref }: Meant): string {
  const name = `the ${family.nameOf(id)}`;
  return id === ref.id ? name : `${name} (in place of the ${family.nameOf(ref.id)})`;
}

/** What every circle says of itself: which part waits, and for which one. */
interface Waits {
  readonly part: string;
  readonly by: Meant;
}

/**
 * The circles that are to be told: none that a torn text seems to close, and one for those that the same words close on
 * different builds, as they do where one part takes the place of another.
 */
export function toldCircles<Why extends Waits>(family: FamilyView, knots: readonly Knot<Why>[]): Knot<Why>[] {
  const told: Knot<Why>[] = [];
  for (const knot of knots) {
    const refs = knot.edges.map(({ why }) => why.by.ref);
    if (knot.edges.some(({ why }) => isTorn(family, why.part) || isTorn(family, why.by.id))) continue;
    const at = told.findIndex(({ edges }) => edges.some(({ why }) => refs.includes(why.by.ref)));
    const same = told[at];
    if (same === undefined) told.push(knot);
    else told[at] = { edges: same.edges, where: same.where.or(knot.where) };
  }
  return told;
}

/** Whether a part's text cannot be read, or holds a key twice as it does where the line between two parts is lost. */
function isTorn(family: FamilyView, id: string): boolean {
  const node = family.part(id)?.node;
  if (node === undefined || isEcho(family.document, node)) return true;
  return node.kind === 'map' && new Set(node.pairs.map(({ key }) => key.text)).size < node.pairs.length;
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
