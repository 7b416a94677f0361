import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Part } from '../model/generated/types';
import type { Lane } from '../walk/lane';
import type { Standing, StandingKind } from './chart';

/** Reads off how parts stand on one way through the work. It remembers which parts were in place at some time. */
export class Standings {
  readonly #wasInPlace = new Set<string>();
  readonly #lanes: Map<string, Lane>;

  constructor(
    private readonly procedure: ProcedureView,
    private readonly way: BuildSet,
    start: ReadonlyMap<string, Lane>,
  ) {
    this.#lanes = new Map(start);
  }

  /** Takes over the lanes that an instruction has changed; gives back the parts that may stand in another way now. */
  change(lanes: ReadonlyMap<string, Lane>): ReadonlySet<string> {
    let moved = false;
    for (const [part, lane] of lanes) {
      moved ||= this.#holds(lane.partly) !== this.#holds(this.#lanes.get(part)?.partly);
      this.#lanes.set(part, lane);
    }
    // What is fitted or comes off takes along whatever rides on it.
    return new Set(moved ? this.#lanes.keys() : lanes.keys());
  }

  /** Whether the part can be met on this way: it comes with the unit or belongs to the finished one. */
  isMet(part: string): boolean {
    return this.#holds(this.procedure.presence(part, 'received')) || this.#holds(this.procedure.presence(part));
  }

  of(id: string): Standing {
    const lane = this.#lanes.get(id);
    const inPlace = this.#holds(lane?.partly);
    if (inPlace) this.#wasInPlace.add(id);
    return {
      kind: inPlace ? this.#inPlace(id, lane) : this.#off(id, lane),
      pieces: inPlace && !this.#holds(lane?.fitted) ? this.#pieces(lane) : undefined,
      heat: this.#holds(lane?.hot) ? 'hot' : this.#holds(lane?.cold) ? 'cold' : undefined,
      marked: this.#holds(lane?.marked),
    };
  }

  /** What carries a part on this way; a part that takes another's place carries what that one would. */
  carriers(id: string): string[] {
    return (this.#part(id)?.sitsOn ?? []).flatMap(({ ref }) =>
      this.isMet(ref.id) ? [ref.id] : this.#inPlaceOf(ref.id),
    );
  }

  #inPlace(id: string, lane: Lane | undefined): StandingKind {
    if (!this.#isInUnit(id, new Set())) return 'bench';
    const part = this.#part(id);
    const hasTorque = part?.torque !== undefined || part?.angle !== undefined;
    if (!hasTorque) return this.#holds(lane?.released) ? 'released' : 'fitted';
    return this.#holds(lane?.torqued) ? 'torqued' : 'loose';
  }

  #off(id: string, lane: Lane | undefined): StandingKind {
    if (this.#part(id)?.temporary?.value === true) return 'absent';
    if (this.#holds(lane?.away)) return 'away';
    const done = [lane?.clean, lane?.lubricated, lane?.threadlocked, lane?.hot, lane?.cold];
    if (done.some((set) => this.#holds(set))) return 'ready';
    if (this.#holds(lane?.scrapped) || this.#holds(lane?.returned)) return 'gone';
    return this.#holds(lane?.fresh) && !this.#wasInPlace.has(id) ? 'absent' : 'off';
  }

  #isInUnit(id: string, seen: ReadonlySet<string>): boolean {
    if (id === this.procedure.family?.value.base?.id) return true;
    if (seen.has(id) || !this.#holds(this.#lanes.get(id)?.partly)) return false;
    const carriers = this.carriers(id);
    return carriers.length === 0 || carriers.some((one) => this.#isInUnit(one, new Set([...seen, id])));
  }

  #inPlaceOf(id: string): string[] {
    const parts = [...(this.procedure.family?.parts ?? [])];
    return parts.flatMap(([other, { value }]) =>
      value.insteadOf?.some((ref) => ref.id === id) === true && this.isMet(other) ? [other] : [],
    );
  }

  #pieces(lane: Lane | undefined): number | undefined {
    for (const [count, set] of lane?.pieces ?? []) if (this.#holds(set)) return count;
    return undefined;
  }

  #part(id: string): Part | undefined {
    return this.procedure.family?.part(id);
  }

  #holds(set: BuildSet | undefined): boolean {
    return set?.overlaps(this.way) === true;
  }
}

export function isSameStanding(one: Standing, other: Standing): boolean {
  return (
    one.kind === other.kind && one.pieces === other.pieces && one.heat === other.heat && one.marked === other.marked
  );
}
