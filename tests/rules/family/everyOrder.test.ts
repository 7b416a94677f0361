import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FamilyView } from '../../../server/src/core/analysis/familyView';
import type { BuildSet } from '../../../server/src/core/builds';
import { knotsOfStripping } from '../../../server/src/core/rules/support/comingApart';
import { knotsOfFitting } from '../../../server/src/core/rules/support/goingOn';
import { openFiles } from '../../support/memoryFiles';

/** A small family whose parts hold each other at random; carriers come before what sits on them. */
interface PartPlan {
  readonly variants: readonly string[];
  readonly carriers: readonly number[];
  readonly fasteners: readonly number[];
  readonly covers: readonly number[];
  readonly insteadOf: readonly number[];
  readonly clamp: boolean;
  readonly frees: 'off' | 'loose' | undefined;
}

const VARIANTS = ['var-a', 'var-b', 'var-c'];
const COUNT = 6;
const name = (at: number): string => `part-${at}`;

function partPlan(at: number): fc.Arbitrary<PartPlan> {
  const others = [...Array(COUNT).keys()].filter((one) => one !== at);
  const some = (from: readonly number[], maxLength: number) =>
    from.length === 0 ? fc.constant([]) : fc.uniqueArray(fc.constantFrom(...from), { maxLength });
  return fc.record({
    variants: fc.uniqueArray(fc.constantFrom(...VARIANTS), { minLength: 1 }),
    carriers: some(
      others.filter((one) => one < at),
      2,
    ),
    fasteners: some(others, 1),
    covers: some(others, 2),
    insteadOf: fc.oneof(
      { weight: 3, arbitrary: fc.constant([]) },
      some(
        others.filter((one) => one < at),
        1,
      ),
    ),
    clamp: fc.boolean(),
    frees: fc.constantFrom('off' as const, 'loose' as const, undefined, undefined),
  });
}

const plans = fc.tuple(...[...Array(COUNT).keys()].map(partPlan));

function familyText(parts: readonly PartPlan[]): string {
  const lines = parts.map((part, at) => {
    const list = (key: string, ids: readonly number[]) => (ids.length === 0 ? '' : `, ${key}: [${ids.map(name)}]`);
    const carriers = part.carriers.length === 0 ? ', sits-on: core' : list('sits-on', part.carriers);
    const kind = part.clamp ? ', kind: clamp' : '';
    const frees = part.frees === undefined ? '' : `, frees-when: ${part.frees}`;
    return `  ${name(at)}: { name: ${name(at)}, when: [${part.variants}]${carriers}${list('fastened-by', part.fasteners)}${list('behind', part.covers)}${list('instead-of', part.insteadOf)}${kind}${frees} }`;
  });
  const variants = VARIANTS.map((id) => `  ${id}: { name: ${id} }`);
  return [
    'witnessmark: 1',
    'family: fam',
    'name: F',
    'variants:',
    ...variants,
    'base: core',
    'parts:',
    '  core: { name: core }',
    ...lines,
    '',
  ].join('\n');
}

/** One unit, as the page on the walk describes how its parts hold each other. */
class Unit {
  readonly present: ReadonlySet<number>;

  constructor(
    readonly parts: readonly PartPlan[],
    variant: string,
  ) {
    const present = new Set<number>();
    for (let at = COUNT - 1; at >= 0; at--) {
      const replaced = [...present].some((one) => parts[one]?.insteadOf.includes(at));
      if (parts[at]?.variants.includes(variant) && !replaced) present.add(at);
    }
    this.present = present;
  }

  /** What is named, and what takes its place. */
  meant(at: number, key: 'carriers' | 'fasteners' | 'covers'): number[] {
    const found = new Set(this.parts[at]?.[key]);
    for (const one of found)
      for (const [other, part] of this.parts.entries()) if (part.insteadOf.includes(one)) found.add(other);
    found.delete(at);
    return [...found];
  }

  ridesOn(at: number, carrier: number, seen = new Set<number>()): boolean {
    if (seen.has(at)) return false;
    seen.add(at);
    return this.meant(at, 'carriers').some((one) => one === carrier || this.ridesOn(one, carrier, seen));
  }

  carried(at: number, on: ReadonlySet<number>, seen: ReadonlySet<number> = new Set()): boolean {
    const carriers = this.meant(at, 'carriers');
    if (!carriers.some((one) => this.present.has(one))) return true;
    return carriers.some((one) => this.inUnit(one, on, seen));
  }

  inUnit(at: number, on: ReadonlySet<number>, seen: ReadonlySet<number> = new Set()): boolean {
    return on.has(at) && !seen.has(at) && this.carried(at, on, new Set([...seen, at]));
  }

  freesLoose(fastener: number, held: number): boolean {
    const says = this.parts[fastener]?.frees ?? this.parts[held]?.frees;
    return says === undefined ? this.parts[fastener]?.clamp === true : says === 'loose';
  }

  comesApart(): boolean {
    const on = new Set(this.present);
    const loose = new Set<number>();
    for (let changed = true; changed; ) {
      changed = false;
      for (const at of on) {
        const hidden = this.meant(at, 'covers').filter(
          (by) => this.inUnit(at, on) && this.inUnit(by, on) && !this.ridesOn(at, by),
        );
        if (!loose.has(at) && hidden.every((by) => this.ridesOn(by, at))) {
          loose.add(at);
          changed = true;
        }
        const held = this.meant(at, 'fasteners').some(
          (by) => on.has(by) && !(this.freesLoose(by, at) && loose.has(by)),
        );
        if (held || hidden.length > 0) continue;
        on.delete(at);
        changed = true;
      }
    }
    return on.size === 0;
  }

  /** Whether some order of fitting leads from nothing to all parts: every state that can be reached is looked at. */
  goesTogether(): boolean {
    const key = (on: ReadonlySet<number>): string => [...on].sort().join();
    const states = new Map([['', new Set<number>()]]);
    for (const on of states.values()) {
      for (const at of this.present) {
        if (on.has(at) || !this.canBeFitted(at, on)) continue;
        const next = new Set([...on, at]);
        states.set(key(next), next);
      }
    }
    return states.has(key(this.present));
  }

  canBeFitted(at: number, on: ReadonlySet<number>): boolean {
    const held = this.meant(at, 'fasteners').some(
      (by) => on.has(by) && !this.freesLoose(by, at) && !this.ridesOn(by, at),
    );
    if (held) return false;
    const movesAlong = (one: number, from: number, seen: ReadonlySet<number>): boolean =>
      !seen.has(one) &&
      on.has(one) &&
      this.parts[one]?.carriers.length === 1 &&
      this.meant(one, 'carriers').some(
        (carrier) => carrier === from || movesAlong(carrier, from, new Set([...seen, one])),
      );
    const moved = [at, ...[...on].filter((one) => movesAlong(one, at, new Set()))];
    return !moved.some((one) =>
      this.meant(one, 'covers').some((by) => {
        if (by === at || this.ridesOn(one, by)) return false;
        if (one === at && on.has(by) && this.ridesOn(by, at)) return true;
        return this.inUnit(by, on) && this.carried(at, on);
      }),
    );
  }
}

async function knots(parts: readonly PartPlan[]): Promise<{ stripping: string[]; fitting: string[] }> {
  const { document } = await openFiles({ 'f.family.yaml': familyText(parts) }, 'f.family.yaml');
  const family = FamilyView.of(document);
  if (family === undefined) throw new Error('The family cannot be read');
  const variantsOf = (sets: readonly BuildSet[]): string[] =>
    VARIANTS.filter((id) => family.space.union(sets).overlaps(family.space.set({ kind: 'is', id })));
  return {
    stripping: variantsOf(knotsOfStripping(family).map((knot) => knot.where)),
    fitting: variantsOf(knotsOfFitting(family).map((knot) => knot.where)),
  };
}

test('a knot is found on just those builds that have no order, against every order tried one by one', async () => {
  const seed = Math.trunc(Math.random() * 2 ** 31);
  console.log(`orders of stripping and fitting: seed ${seed}`);
  let stuck = 0;
  let unfit = 0;
  await fc.assert(
    fc.asyncProperty(plans, async (parts) => {
      const units = VARIANTS.map((variant) => ({ variant, unit: new Unit(parts, variant) }));
      const found = await knots(parts);
      const stay = units.filter(({ unit }) => !unit.comesApart()).map(({ variant }) => variant);
      expect(found.stripping).toEqual(stay);
      const open = units.filter(({ variant }) => !stay.includes(variant));
      const never = open.filter(({ unit }) => !unit.goesTogether()).map(({ variant }) => variant);
      expect(found.fitting.filter((variant) => !stay.includes(variant))).toEqual(never);
      stuck += stay.length;
      unfit += never.length;
    }),
    { seed, numRuns: 250 },
  );
  expect(stuck).toBeGreaterThan(0);
  expect(unfit).toBeGreaterThan(0);
});
