import type { BuildSet } from '../builds';
import type { CellKind, CellTable, CellValue, Partners } from './cellTable';
import { emptyLane, isSameLane, type Lane, type LaneKey, laneWith, laneWithPieces } from './lane';
import type { Tally } from './tally';
import type { UnitModel } from './unitModel';

const NO_PARTNERS: Partners = new Map();
const NO_IDS: readonly string[] = [];

/** A cell and what it holds after an instruction. */
export interface Change {
  readonly cell: number;
  readonly value: CellValue;
}

/** The cells that an instruction looked at, and those that it changed. */
export interface Footprint {
  readonly reads: readonly number[];
  readonly changes: readonly Change[];
}

/** The whole unit at one moment: a lane for each part, and what was found out, measured and checked. */
export class WalkState {
  values: (CellValue | undefined)[] = [];
  #reads: number[] = [];
  #writes: number[] = [];
  /** What the cells that were written held before. */
  #before: (CellValue | undefined)[] = [];
  /** In which turn each cell was read and written last, so that no set is made for an instruction. */
  readonly #readIn: number[] = [];
  readonly #writtenIn: number[] = [];
  #turn = 1;

  constructor(
    readonly unit: UnitModel,
    readonly table: CellTable,
  ) {}

  lane(id: string): Lane {
    return (this.#read('lane', id) as Lane | undefined) ?? emptyLane(this.unit.space);
  }

  change(id: string, where: BuildSet, yes: readonly LaneKey[], no: readonly LaneKey[] = []): void {
    if (!where.isEmpty) this.#write('lane', id, laneWith(this.lane(id), where, yes, no));
  }

  count(id: string, numbers: { readonly pieces?: Tally; readonly tight?: Tally }): void {
    const { unit } = this;
    this.#write('lane', id, laneWithPieces(this.lane(id), numbers, unit.pieces(id), unit.space.nothing));
  }

  /** Where an outcome is known, a result was made or is worth something, or an adjustment is open. */
  where(kind: Exclude<CellKind, 'lane' | 'partners'>, id: string): BuildSet {
    return (this.#read(kind, id) as BuildSet | undefined) ?? this.unit.space.nothing;
  }

  note(kind: Exclude<CellKind, 'lane' | 'partners'>, id: string, where: BuildSet): void {
    this.#write(kind, id, this.where(kind, id).or(where));
  }

  forget(kind: Exclude<CellKind, 'lane' | 'partners'>, id: string, where: BuildSet): void {
    this.#write(kind, id, this.where(kind, id).minus(where));
  }

  partners(id: string): Partners {
    return (this.#read('partners', id) as Partners | undefined) ?? NO_PARTNERS;
  }

  addPartner(id: string, other: string, where: BuildSet): void {
    const known = this.partners(id);
    this.#write('partners', id, new Map([...known, [other, known.get(other)?.or(where) ?? where]]));
  }

  /** Where the part, with all that carries it, is in the unit: its chain of carriers leads to the base. */
  inUnit(id: string, seen: readonly string[] = NO_IDS): BuildSet {
    const { unit } = this;
    if (id === unit.base) return unit.space.everything;
    if (seen.includes(id)) return unit.space.nothing;
    const { partly } = this.lane(id);
    const carriers = unit.relations.carriers(id);
    if (partly.isEmpty || carriers.length === 0) return partly;
    return partly.and(this.carried(id, [...seen, id]));
  }

  /** Where one of the carriers of a part is in the unit; one that the build does not have holds as if it were. */
  carried(id: string, seen: readonly string[] = NO_IDS): BuildSet {
    const { unit } = this;
    const { space } = unit;
    let there = space.nothing;
    let ever = space.nothing;
    for (const carrier of unit.relations.carriers(id)) {
      there = there.or(this.inUnit(carrier, seen));
      ever = ever.or(unit.everPresent(carrier));
    }
    return there.or(space.everything.minus(ever));
  }

  /** What the instruction since the last call read and changed. */
  takeFootprint(): Footprint {
    const changes: Change[] = [];
    for (let i = 0; i < this.#writes.length; i++) {
      const cell = this.#writes[i] as number;
      const value = this.values[cell];
      if (value !== undefined && !isSameValue(value, this.#before[i])) changes.push({ cell, value });
    }
    const reads = this.#reads;
    this.#reads = [];
    this.#writes = [];
    this.#before = [];
    this.#turn++;
    return { reads, changes };
  }

  #read(kind: CellKind, id: string): CellValue | undefined {
    const cell = this.table.number(kind, id);
    if (this.#readIn[cell] !== this.#turn) {
      this.#readIn[cell] = this.#turn;
      this.#reads.push(cell);
    }
    return this.values[cell];
  }

  #write(kind: CellKind, id: string, value: CellValue): void {
    const cell = this.table.number(kind, id);
    if (this.#writtenIn[cell] !== this.#turn) {
      this.#writtenIn[cell] = this.#turn;
      this.#writes.push(cell);
      this.#before.push(this.values[cell]);
    }
    this.values[cell] = value;
  }
}

/** Whether two values of one cell say the same. */
export function isSameValue(one: CellValue | undefined, other: CellValue | undefined): boolean {
  if (one === other) return true;
  if (one === undefined || other === undefined) return false;
  if ('pieces' in one && 'pieces' in other) return isSameLane(one, other);
  if (one instanceof Map && other instanceof Map) return samePartners(one, other);
  return false;
}

function samePartners(one: Partners, other: Partners): boolean {
  return one.size === other.size && [...one].every(([id, where]) => other.get(id) === where);
}
