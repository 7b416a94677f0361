import type { FamilyView } from '../analysis/familyView';
import type { Part } from '../model/generated/types';

type Links = ReadonlyMap<string, readonly string[]>;

interface IdRef {
  readonly id: string;
}

const NONE: readonly string[] = [];

/**
 * How the parts of a family hold each other, in both directions. A part that takes the place of another is meant
 * wherever the other is named. Made once for a reading of the family.
 */
export class UnitRelations {
  readonly ids: readonly string[];
  readonly #family: FamilyView;
  readonly #substitutes: Links;
  readonly #carriers: Links;
  readonly #fasteners: Links;
  readonly #behind: Links;
  readonly #seals: Links;
  readonly #locks: Links;
  readonly #held: Links;
  readonly #riders: Links;
  readonly #sealedBy: Links;
  readonly #lockedBy: Links;
  readonly #causes: Links;
  readonly #voids: Links;
  readonly #groups: Links;
  readonly #members: Links;
  readonly #sets: Links;
  readonly #rides = new Map<string, boolean>();

  private constructor(family: FamilyView) {
    this.#family = family;
    this.ids = [...family.parts.keys()];
    this.#substitutes = this.#reverse((part) => part.insteadOf);
    this.#carriers = this.#forward((part) => part.sitsOn?.map(({ ref }) => ref));
    this.#fasteners = this.#forward((part) => part.fastenedBy);
    this.#behind = this.#forward((part) => part.behind);
    this.#seals = this.#forward((part) => part.seals);
    this.#locks = this.#forward((part) => part.lockedBy);
    this.#held = turned(this.#fasteners);
    this.#riders = turned(this.#carriers);
    this.#sealedBy = turned(this.#seals);
    this.#lockedBy = turned(this.#locks);
    const { limits = [], checks = [], balanceGroups = [] } = family.value;
    const names = (refs: readonly IdRef[] | undefined): readonly string[] => this.#withSubstitutes(refs ?? []);
    this.#causes = new Map([
      ...limits.map(({ id, value }) => [id.id, names(value.voidBy)] as const),
      ...checks.map(({ id, value }) => [id.id, names(value.after)] as const),
    ]);
    this.#voids = turned(this.#causes);
    this.#members = new Map(balanceGroups.map(({ id, value }) => [id.id, names(value.members)]));
    this.#groups = turned(this.#members);
    const together = this.#forward((part) => part.comesWith);
    this.#sets = joined(together, turned(together));
  }

  static of(family: FamilyView): UnitRelations {
    const known = made.get(family);
    if (known !== undefined) return known;
    const relations = new UnitRelations(family);
    made.set(family, relations);
    return relations;
  }

  carriers = (id: string): readonly string[] => this.#carriers.get(id) ?? NONE;
  fasteners = (id: string): readonly string[] => this.#fasteners.get(id) ?? NONE;
  behind = (id: string): readonly string[] => this.#behind.get(id) ?? NONE;
  /** What a fastener holds. */
  heldBy = (fastener: string): readonly string[] => this.#held.get(fastener) ?? NONE;
  /** What sits on a part. */
  riders = (id: string): readonly string[] => this.#riders.get(id) ?? NONE;
  /** The seals of the joint that a part closes. */
  sealsOf = (id: string): readonly string[] => this.#sealedBy.get(id) ?? NONE;
  /** Parts whose adjustment a fastener locks. */
  lockedBy = (fastener: string): readonly string[] => this.#lockedBy.get(fastener) ?? NONE;
  /** Limits and checks whose result is worth nothing once the part is touched. */
  resultsOn = (id: string): readonly string[] => this.#voids.get(id) ?? NONE;
  /** The parts that make a limit or check worthless when they are touched. */
  causesOf = (result: string): readonly string[] => this.#causes.get(result) ?? NONE;
  groupsOf = (id: string): readonly string[] => this.#groups.get(id) ?? NONE;
  membersOf = (group: string): readonly string[] => this.#members.get(group) ?? NONE;
  /** Parts that are renewed together with a part, whichever of the two says so. */
  setOf = (id: string): readonly string[] => this.#sets.get(id) ?? NONE;
  /** Parts that take the place of a part on some builds. */
  substitutesOf = (id: string): readonly string[] => this.#substitutes.get(id) ?? NONE;

  /** Whether one part rides on another, straight or through others. */
  ridesOn(id: string, carrier: string): boolean {
    const key = `${id} ${carrier}`;
    const known = this.#rides.get(key);
    if (known !== undefined) return known;
    // A circle of carriers is told by a rule of its own; here it only must come to an end.
    this.#rides.set(key, false);
    const rides = this.carriers(id).some((one) => one === carrier || this.ridesOn(one, carrier));
    this.#rides.set(key, rides);
    return rides;
  }

  #forward(targets: (part: Part) => readonly IdRef[] | undefined): Links {
    const map = new Map<string, readonly string[]>();
    for (const [id, { value }] of this.#family.parts) {
      const refs = targets(value);
      if (refs !== undefined && refs.length > 0)
        map.set(
          id,
          this.#withSubstitutes(refs).filter((one) => one !== id),
        );
    }
    return map;
  }

  #reverse(targets: (part: Part) => readonly IdRef[] | undefined): Links {
    const map = new Map<string, string[]>();
    for (const [id, { value }] of this.#family.parts) {
      for (const { id: target } of targets(value) ?? []) map.set(target, [...(map.get(target) ?? []), id]);
    }
    return map;
  }

  #withSubstitutes(refs: readonly IdRef[]): readonly string[] {
    const ids = new Set<string>();
    const add = (id: string): void => {
      if (ids.has(id) || this.#family.part(id) === undefined) return;
      ids.add(id);
      for (const substitute of this.substitutesOf(id)) add(substitute);
    };
    for (const { id } of refs) add(id);
    return [...ids];
  }
}

const made = new WeakMap<FamilyView, UnitRelations>();

function turned(links: Links): Links {
  const map = new Map<string, string[]>();
  for (const [id, targets] of links) for (const target of targets) map.set(target, [...(map.get(target) ?? []), id]);
  return map;
}

function joined(one: Links, other: Links): Links {
  const map = new Map<string, readonly string[]>(one);
  for (const [id, targets] of other) map.set(id, [...new Set([...(map.get(id) ?? []), ...targets])]);
  return map;
}
