import type { FamilyView } from '../analysis/familyView';
import { type HeldValue, heldValues, meetings } from '../analysis/heldValues';
import type { BuildSet, BuildSpace } from '../builds';
import type { BalanceGroup } from '../model/generated/types';
import type { QuantityValue } from '../model/values';
import { boundsOf, type Dimension } from '../quantity';
import { type PermissibleUnbalance, permissibleUnbalance, readBalanceGrade } from '../standards/balanceGrades';
import { UnitRelations } from '../walk/unitRelations';

/** Mass of a balance group on some builds, in kilograms. */
export interface GroupMass {
  readonly mass: number;
  /** `stated` for the group, or `summed` from what is stated of its parts. */
  readonly from: 'stated' | 'summed';
  readonly parts: readonly string[];
}

/** A balance group on some builds, with what its grade allows there. */
export interface UnbalanceCase {
  readonly id: string;
  readonly name: string;
  readonly group: BalanceGroup;
  readonly where: BuildSet;
  readonly space: BuildSpace;
  /** As written; undefined where neither group nor instruction states one. */
  readonly grade: string | undefined;
  readonly mass: GroupMass | undefined;
  /** Highest service speed in min⁻¹. */
  readonly speed: number | undefined;
  readonly planes: number;
  /** Whether what is stated is for each plane, and not for the whole rotor. */
  readonly eachPlane: boolean;
  /** Undefined where grade, mass or speed is missing. */
  readonly allowed: PermissibleUnbalance | undefined;
}

/** What the grade of a group allows, by build; `grade` takes the place of the family's. */
export function unbalanceCases(
  family: FamilyView,
  id: string,
  space: BuildSpace,
  within: BuildSet,
  grade?: string,
): UnbalanceCase[] {
  const group = family.value.balanceGroups?.find((one) => one.id.id === id)?.value;
  if (group === undefined || within.isEmpty) return [];
  const written = grade ?? group.grade?.text;
  const speed = baseOf(family.value.maxSpeed, 'rotational-speed');
  const planes = Math.max(1, group.planes?.value ?? 1);
  const masses = massesOf(family, group, id, space, within);
  const known = space.union(masses.map(({ where }) => where));
  const rest = { value: undefined, where: within.minus(known) };
  return [...masses, ...(rest.where.isEmpty ? [] : [rest])].map(({ value: mass, where }) => ({
    id,
    name: group.name?.text ?? id,
    group,
    where,
    space,
    grade: written,
    mass,
    speed,
    planes,
    eachPlane: group.permissibleFor?.value === 'plane',
    allowed: allowedBy(written, mass?.mass, speed),
  }));
}

/** What a stated value comes to for the whole rotor in g·mm; undefined where it is no unbalance. */
export function wholeUnbalance({ planes, eachPlane, mass }: UnbalanceCase, value: QuantityValue): number | undefined {
  const { quantity } = value.reading;
  if (quantity === undefined) return undefined;
  const { highest, nominal } = boundsOf(quantity);
  const stated = Number.isFinite(highest) ? highest : nominal;
  if (quantity.dimension === 'unbalance') return stated * (eachPlane ? planes : 1);
  // A micrometre of eccentricity is a gram millimetre for each kilogram (ISO 21940-11).
  if (quantity.dimension === 'length' && mass !== undefined) return stated * 1000 * mass.mass;
  return undefined;
}

function allowedBy(
  grade: string | undefined,
  mass: number | undefined,
  speed: number | undefined,
): PermissibleUnbalance | undefined {
  const number = grade === undefined ? undefined : readBalanceGrade(grade);
  if (number === undefined || mass === undefined || speed === undefined) return undefined;
  return permissibleUnbalance(number, mass, speed);
}

function baseOf(value: QuantityValue | undefined, dimension: Dimension): number | undefined {
  const quantity = value?.reading.quantity;
  if (quantity?.dimension !== dimension) return undefined;
  const { highest, nominal } = boundsOf(quantity);
  return Number.isFinite(highest) ? highest : nominal;
}

/** The heaviest that is stated would allow most, so of a mass with a tolerance its nominal value counts. */
function nominalMass(value: QuantityValue): number | undefined {
  const quantity = value.reading.quantity;
  const mass = quantity?.dimension === 'mass' ? boundsOf(quantity).nominal : undefined;
  return mass !== undefined && mass > 0 ? mass : undefined;
}

function massesOf(
  family: FamilyView,
  group: BalanceGroup,
  id: string,
  space: BuildSpace,
  within: BuildSet,
): HeldValue<GroupMass>[] {
  const stated = group.mass && nominalMass(group.mass);
  if (stated !== undefined) return [{ value: { mass: stated, from: 'stated', parts: [] }, where: within }];
  if (group.mass !== undefined) return [];
  let sums: HeldValue<GroupMass>[] = [{ value: { mass: 0, from: 'summed', parts: [] }, where: within }];
  for (const part of UnitRelations.of(family).membersOf(id)) {
    const present = family.presence(part, space).and(within);
    const held = heldValues(family.part(part)?.mass, space, present).held.flatMap(({ value, where }) => {
      const mass = nominalMass(value);
      return mass === undefined ? [] : [{ value: mass, where }];
    });
    const added = [...meetings(sums, held)].map(({ first, second, where }) => ({
      value: { ...first, mass: first.mass + second, parts: [...first.parts, part] },
      where,
    }));
    // On builds without the part the sum stays as it was; on builds with it and without its mass there is no sum.
    const without = sums.flatMap(({ value, where }) => ({ value, where: where.minus(present) }));
    sums = [...added, ...without.filter(({ where }) => !where.isEmpty)];
  }
  return sums.filter(({ value }) => value.mass > 0);
}
