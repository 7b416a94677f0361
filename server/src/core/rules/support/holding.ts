import type { FamilyView } from '../../analysis/familyView';
import { type BuildSet, type BuildSpace, valuesByBuild } from '../../builds';
import type { Part } from '../../model/generated/types';
import type { Ref } from '../../model/values';

/** A part that another one names, or that takes the place of the one named: it is meant as well. */
export interface Meant {
  readonly id: string;
  readonly ref: Ref;
}

/** The relations by which parts hold each other. */
export type Relation = 'carriers' | 'fasteners' | 'covers';

const NAMED: Readonly<Record<Relation, (part: Part) => readonly Ref[]>> = {
  carriers: (part) => (part.sitsOn ?? []).map(({ ref }) => ref),
  fasteners: (part) => part.fastenedBy ?? [],
  covers: (part) => part.behind ?? [],
};

/**
 * How the parts of a family hold each other, over all its builds. What a part says of itself, and what it says of ids
 * that nothing has, is left out: other rules tell it.
 */
export class Holding {
  readonly family: FamilyView;
  readonly space: BuildSpace;
  /** Every part, the carriers before what sits on them wherever no circle prevents it. */
  readonly bottomUp: readonly string[];
  /** The base, and what takes its place. */
  readonly bases: ReadonlySet<string>;
  readonly #relations: Readonly<Record<Relation, Map<string, readonly Meant[]>>> = {
    carriers: new Map(),
    fasteners: new Map(),
    covers: new Map(),
  };
  readonly #replacers: ReadonlyMap<string, readonly Meant[]>;
  readonly #presences = new Map<string, BuildSet>();
  readonly #below = new Map<string, ReadonlySet<string>>();
  #riders: ReadonlyMap<string, readonly string[]> | undefined;

  private constructor(family: FamilyView) {
    this.family = family;
    this.space = family.space;
    this.#replacers = replacersOf(family);
    const base = family.value.base?.id;
    this.bases = new Set(base === undefined || family.part(base) === undefined ? [] : this.withReplacers(base));
    this.bottomUp = this.#bottomUp();
  }

  static of(family: FamilyView): Holding {
    const known = remembered.get(family);
    if (known !== undefined) return known;
    const holding = new Holding(family);
    remembered.set(family, holding);
    return holding;
  }

  /**
   * The builds whose finished unit has the part. As every unit that is received was finished once, these are all. What
   * the unit is built upon counts as there on every build.
   */
  presence(id: string): BuildSet {
    const known = this.#presences.get(id);
    if (known !== undefined) return known;
    const own = this.family.presence(id, this.space).minus(this.#without(id));
    const set = this.bases.has(id) ? this.space.everything : own;
    this.#presences.set(id, set);
    return set;
  }

  /** Where the part is in the unit as it is worked on; a blank or plug that must not stay is not. */
  inPlace(id: string): BuildSet {
    return this.family.part(id)?.temporary?.value === true ? this.space.nothing : this.presence(id);
  }

  /** A part and all that take its place, one after the other. */
  withReplacers(id: string): string[] {
    const found = [id];
    for (const one of found) {
      for (const { id: replacer } of this.replacersNamed(one)) if (!found.includes(replacer)) found.push(replacer);
    }
    return found;
  }

  /** The parts that say that they take the place of a part, with where they say it. */
  replacersNamed(id: string): readonly Meant[] {
    return this.#replacers.get(id) ?? [];
  }

  meant(id: string, relation: Relation): readonly Meant[] {
    const known = this.#relations[relation].get(id);
    if (known !== undefined) return known;
    const part = this.family.part(id);
    const refs = part === undefined ? [] : NAMED[relation](part);
    const meant = this.expanded(id, refs);
    this.#relations[relation].set(id, meant);
    return meant;
  }

  /** The known parts that refs of a part mean, the part itself left out, each once. */
  expanded(id: string, refs: readonly Ref[]): Meant[] {
    const found = new Map<string, Meant>();
    for (const ref of refs) {
      if (this.family.part(ref.id) === undefined || ref.id === id) continue;
      for (const one of this.withReplacers(ref.id)) {
        if (one !== id && !found.has(one)) found.set(one, { id: one, ref });
      }
    }
    return [...found.values()];
  }

  /** What sits on a part. */
  riders(id: string): readonly string[] {
    if (this.#riders === undefined) {
      const riders = new Map<string, string[]>();
      for (const rider of this.family.parts.keys()) {
        for (const carrier of this.meant(rider, 'carriers')) {
          riders.set(carrier.id, [...(riders.get(carrier.id) ?? []), rider]);
        }
      }
      this.#riders = riders;
    }
    return this.#riders.get(id) ?? [];
  }

  /** Whether a part sits on another, or on something that does. */
  ridesOn(part: string, carrier: string): boolean {
    return this.below(part).has(carrier);
  }

  /** A fastener that need not come off for what it holds to come off; a clamp need not where nothing is said. */
  freesLoose(fastener: string, held: string): boolean {
    const own = this.family.part(fastener);
    const says = own?.freesWhen?.value ?? this.family.part(held)?.freesWhen?.value;
    return says === undefined ? own?.kind?.value === 'clamp' : says === 'loose';
  }

  /** All that carries a part, straight or through others. */
  below(part: string): ReadonlySet<string> {
    const known = this.#below.get(part);
    if (known !== undefined) return known;
    const below = new Set(this.meant(part, 'carriers').map(({ id }) => id));
    for (const one of below) for (const { id } of this.meant(one, 'carriers')) below.add(id);
    this.#below.set(part, below);
    return below;
  }

  /** The builds for which the family says that there are no pieces of it. */
  #without(id: string): BuildSet {
    const quantity = this.family.part(id)?.quantity;
    if (quantity?.is !== 'cases') return this.space.nothing;
    const keyed = quantity.cases.flatMap((one) => (one.expr === undefined ? [] : [{ one, expr: one.expr }]));
    const entries = keyed.map(({ one, expr }) => ({ key: one.key.text, expr }));
    const { coverage, otherwise } = valuesByBuild(this.space, entries, { otherwise: true });
    const none = keyed.flatMap(({ one }, at) => (one.value.value === 0 ? (coverage[at] ?? []) : []));
    const rest = quantity.cases.some((one) => one.otherwise && one.value.value === 0) ? [otherwise] : [];
    return this.space.union([...none, ...rest]);
  }

  #bottomUp(): string[] {
    const order: string[] = [];
    const seen = new Set<string>();
    const visit = (id: string): void => {
      if (seen.has(id)) return;
      seen.add(id);
      for (const carrier of this.meant(id, 'carriers')) visit(carrier.id);
      order.push(id);
    };
    for (const id of this.family.parts.keys()) visit(id);
    return order;
  }
}

const remembered = new WeakMap<FamilyView, Holding>();

function replacersOf(family: FamilyView): Map<string, Meant[]> {
  const replacers = new Map<string, Meant[]>();
  for (const [id, { value }] of family.parts) {
    for (const ref of value.insteadOf ?? []) {
      if (ref.id !== id) replacers.set(ref.id, [...(replacers.get(ref.id) ?? []), { id, ref }]);
    }
  }
  return replacers;
}
