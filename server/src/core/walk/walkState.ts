import type { BuildSet } from '../builds';
import { emptyLane, type Lane, type LaneKey, laneWith } from './lane';
import type { UnitModel } from './unitModel';

/** The whole unit at one moment: a lane for each part, and what was found out, measured and checked. */
export class WalkState {
  readonly #lanes = new Map<string, Lane>();
  /** Where each outcome has been found out. */
  readonly known = new Map<string, BuildSet>();
  /** Where each limit or check was done since the last touch of what it depends on, and where it was ever done. */
  readonly valid = new Map<string, BuildSet>();
  readonly done = new Map<string, BuildSet>();
  /** What each part was marked across to. */
  readonly partners = new Map<string, Set<string>>();
  /** Where an adjustment was set and not locked since. */
  readonly open = new Map<string, BuildSet>();

  constructor(readonly unit: UnitModel) {}

  lane(id: string): Lane {
    return this.#lanes.get(id) ?? emptyLane(this.unit.space);
  }

  put(id: string, lane: Lane): void {
    this.#lanes.set(id, lane);
  }

  change(id: string, where: BuildSet, yes: readonly LaneKey[], no: readonly LaneKey[] = []): void {
    this.put(id, laneWith(this.lane(id), where, yes, no));
  }

  get lanes(): ReadonlyMap<string, Lane> {
    return this.#lanes;
  }

  /** Where the part, with all that carries it, is in the unit: its chain of carriers leads to the base. */
  inUnit(id: string, seen: ReadonlySet<string> = new Set()): BuildSet {
    const { unit } = this;
    if (id === unit.base) return unit.space.everything;
    if (seen.has(id)) return unit.space.nothing;
    const { partly } = this.lane(id);
    const carriers = unit.carriers(id).filter((carrier) => unit.part(carrier) !== undefined);
    if (partly.isEmpty || carriers.length === 0) return partly;
    const deeper = new Set([...seen, id]);
    return partly.and(unit.space.union(carriers.map((carrier) => this.#carriedBy(carrier, deeper))));
  }

  /** A carrier that another part replaces on some builds carries nothing there; its substitute does. */
  #carriedBy(carrier: string, seen: ReadonlySet<string>): BuildSet {
    const absent = this.unit.space.everything.minus(this.unit.everPresent(carrier));
    return this.inUnit(carrier, seen).or(absent);
  }

  /** Where one part rides on another, straight or through others. */
  ridesOn(id: string, carrier: string, seen: ReadonlySet<string> = new Set()): boolean {
    if (seen.has(id)) return false;
    const deeper = new Set([...seen, id]);
    return this.unit.carriers(id).some((one) => one === carrier || this.ridesOn(one, carrier, deeper));
  }

  note(map: 'valid' | 'done' | 'known' | 'open', id: string, where: BuildSet): void {
    this[map].set(id, this[map].get(id)?.or(where) ?? where);
  }

  voidResult(id: string, where: BuildSet): void {
    const set = this.valid.get(id);
    if (set !== undefined) this.valid.set(id, set.minus(where));
  }
}
