import type { FamilyView } from '../analysis/familyView';
import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet, BuildSpace } from '../builds';
import type { Part } from '../model/generated/types';

/** How the parts of a unit hold each other, in both directions, for the builds of one procedure. */
export class UnitModel {
  readonly procedure: ProcedureView;
  readonly family: FamilyView;
  readonly space: BuildSpace;
  readonly ids: readonly string[];
  readonly base: string | undefined;
  readonly #holds: ReadonlyMap<string, readonly string[]>;
  readonly #riders: ReadonlyMap<string, readonly string[]>;
  readonly #sealedBy: ReadonlyMap<string, readonly string[]>;
  readonly #locks: ReadonlyMap<string, readonly string[]>;
  readonly #results: ReadonlyMap<string, readonly string[]>;
  readonly #ever = new Map<string, BuildSet>();

  constructor(procedure: ProcedureView, family: FamilyView) {
    this.procedure = procedure;
    this.family = family;
    this.space = procedure.space;
    this.ids = [...family.parts.keys()];
    this.base = family.value.base?.id;
    this.#holds = reverse(family, (part) => part.fastenedBy?.map((ref) => ref.id));
    this.#riders = reverse(family, (part) => part.sitsOn?.map(({ ref }) => ref.id));
    this.#sealedBy = reverse(family, (part) => part.seals?.map((ref) => ref.id));
    this.#locks = reverse(family, (part) => part.lockedBy?.map((ref) => ref.id));
    this.#results = resultsByPart(family);
  }

  part(id: string): Part | undefined {
    return this.family.part(id);
  }

  /** Where the part belongs to the unit as it is received, or as it leaves. */
  presence(id: string, as: 'finished' | 'received'): BuildSet {
    return this.procedure.presence(id, as);
  }

  /** Where the part can be met at all: it comes with the unit or is fitted by the procedure. */
  everPresent(id: string): BuildSet {
    const known = this.#ever.get(id);
    if (known !== undefined) return known;
    const set = this.presence(id, 'finished').or(this.presence(id, 'received'));
    this.#ever.set(id, set);
    return set;
  }

  /** Limits, checks and balance groups whose result is worth nothing once the part is touched. */
  resultsOn(id: string): readonly string[] {
    return this.#results.get(id) ?? [];
  }

  /** Parts whose adjustment a fastener locks. */
  lockedBy(fastener: string): readonly string[] {
    return this.#locks.get(fastener) ?? [];
  }

  carriers(id: string): readonly string[] {
    return this.part(id)?.sitsOn?.map(({ ref }) => ref.id) ?? [];
  }

  fasteners(id: string): readonly string[] {
    return this.part(id)?.fastenedBy?.map((ref) => ref.id) ?? [];
  }

  behind(id: string): readonly string[] {
    return this.part(id)?.behind?.map((ref) => ref.id) ?? [];
  }

  /** What a fastener holds. */
  heldBy(fastener: string): readonly string[] {
    return this.#holds.get(fastener) ?? [];
  }

  /** What sits on a part. */
  riders(id: string): readonly string[] {
    return this.#riders.get(id) ?? [];
  }

  /** The seals that are spent when a part is taken off. */
  sealsOf(id: string): readonly string[] {
    return this.#sealedBy.get(id) ?? [];
  }

  isRing(id: string): boolean {
    return this.part(id)?.kind?.value === 'retaining-ring';
  }

  /** A fastener that need not come off for what it holds to come off; clamps are so unless the family says otherwise. */
  freesLoose(fastener: string, held: string): boolean {
    const says = this.part(fastener)?.freesWhen?.value ?? this.part(held)?.freesWhen?.value;
    return says === undefined ? this.part(fastener)?.kind?.value === 'clamp' : says === 'loose';
  }

  isAlwaysRenewed(id: string): boolean {
    return this.part(id)?.renew?.value === 'always';
  }

  /** Something with a torque, so that it counts as loose until it has got it. */
  hasTorque(id: string): boolean {
    const part = this.part(id);
    return part?.torque !== undefined || part?.angle !== undefined;
  }

  /** How many pieces of it the unit has: as stated, or as many as sit on its carriers. */
  pieces(id: string): number {
    const part = this.part(id);
    if (part?.quantity?.is === 'one') return part.quantity.value.value ?? 1;
    const seated = (part?.sitsOn ?? []).reduce((sum, { count }) => sum + (count?.value ?? 0), 0);
    return Math.max(1, seated);
  }
}

function reverse(family: FamilyView, targets: (part: Part) => readonly string[] | undefined): Map<string, string[]> {
  const map = new Map<string, string[]>();
  for (const [id, { value }] of family.parts) {
    for (const target of targets(value) ?? []) map.set(target, [...(map.get(target) ?? []), id]);
  }
  return map;
}

function resultsByPart({ value }: FamilyView): Map<string, string[]> {
  const map = new Map<string, string[]>();
  const add = (id: string, parts: readonly { readonly id: string }[] | undefined): void => {
    for (const part of parts ?? []) map.set(part.id, [...(map.get(part.id) ?? []), id]);
  };
  for (const one of value.limits ?? []) add(one.id.id, one.value.voidBy);
  for (const one of value.checks ?? []) add(one.id.id, one.value.after);
  for (const one of value.balanceGroups ?? []) add(one.id.id, one.value.members);
  return map;
}
