import type { FamilyView } from '../analysis/familyView';
import { heldValues } from '../analysis/heldValues';
import { presentBuilds } from '../analysis/presentBuilds';
import type { ProcedureView } from '../analysis/procedureView';
import { type BuildSet, type BuildSpace, RENEWED } from '../builds';
import type { Part } from '../model/generated/types';
import { type NamesKnown, namesKnown } from './namesKnown';
import type { Pieces } from './tally';
import { UnitRelations } from './unitRelations';

/** How many pieces the parts have; a space belongs to one family, and procedures with the same builds share it. */
const piecesIn = new WeakMap<BuildSpace, Map<string, Pieces>>();

/** A unit for the builds of one procedure: how its parts hold each other, where they are, how many there are. */
export class UnitModel {
  readonly space: BuildSpace;
  readonly ids: readonly string[];
  readonly base: string | undefined;
  readonly relations: UnitRelations;
  /** What its instructions may name. */
  readonly names: NamesKnown;
  readonly #pieces: Map<string, Pieces>;

  constructor(
    readonly procedure: ProcedureView,
    readonly family: FamilyView,
  ) {
    this.space = procedure.space;
    this.names = namesKnown(procedure);
    this.relations = UnitRelations.of(family);
    this.ids = this.relations.ids;
    this.base = family.value.base?.id;
    this.#pieces = piecesIn.get(this.space) ?? new Map();
    piecesIn.set(this.space, this.#pieces);
  }

  part(id: string): Part | undefined {
    return this.family.part(id);
  }

  /** Where the part belongs to the unit as it is received, or as it leaves. */
  presence(id: string, as: 'finished' | 'received'): BuildSet {
    return this.procedure.presence(id, as);
  }

  /** Where the part can be met at all: it comes with the unit or belongs to the finished unit. */
  everPresent(id: string): BuildSet {
    return presentBuilds(this.family, this.space, id);
  }

  isRing(id: string): boolean {
    return this.part(id)?.kind?.value === 'retaining-ring';
  }

  isClamp(id: string): boolean {
    return this.part(id)?.kind?.value === 'clamp';
  }

  isTemporary(id: string): boolean {
    return this.part(id)?.temporary?.value === true;
  }

  /** A fastener that need not come off for what it holds to come off; clamps are so unless the family says otherwise. */
  freesLoose(fastener: string, held: string): boolean {
    const says = this.part(fastener)?.freesWhen?.value ?? this.part(held)?.freesWhen?.value;
    return says === undefined ? this.isClamp(fastener) : says === 'loose';
  }

  isAlwaysRenewed(id: string): boolean {
    return this.part(id)?.renew?.value === 'always';
  }

  /** Where the part is told apart as renewed. */
  renewed(id: string): BuildSet {
    return this.space.set({ kind: 'outcome', name: id, value: RENEWED });
  }

  /** Where a part that comes off goes back again, and is not renewed. */
  usedAgain(id: string): BuildSet {
    if (this.isAlwaysRenewed(id)) return this.space.nothing;
    return this.presence(id, 'finished').and(this.presence(id, 'received')).minus(this.renewed(id));
  }

  /** Something with a torque, so that it counts as loose until it has got it. */
  hasTorque(id: string): boolean {
    const part = this.part(id);
    return part?.torque !== undefined || part?.angle !== undefined;
  }

  /** Balance groups that the part is a member of, or takes a member's place in. */
  groupsOf(id: string): readonly string[] {
    return this.relations.groupsOf(id);
  }

  /** How many pieces of it the unit has, by build: as stated, or as many as sit on its carriers, or one. */
  pieces(id: string): Pieces {
    const known = this.#pieces.get(id);
    if (known !== undefined) return known;
    const pieces = this.#piecesOf(this.part(id));
    this.#pieces.set(id, pieces);
    return pieces;
  }

  #piecesOf(part: Part | undefined): Pieces {
    const { everything } = this.space;
    const seated = (part?.sitsOn ?? []).reduce((sum, { count }) => sum + (count?.value ?? 0), 0);
    const usual = Math.max(1, seated);
    if (part?.quantity === undefined) return [{ number: usual, where: everything }];
    const { held } = heldValues(part.quantity, this.space, everything);
    const stated = held.map(({ value, where }) => ({ number: Math.max(1, value.value ?? usual), where }));
    const rest = everything.minus(this.space.union(held.map(({ where }) => where)));
    return rest.isEmpty ? stated : [...stated, { number: usual, where: rest }];
  }
}
