import type { ItemRange } from '../syntax/node';
import type { CellTable, CellValue } from './cellTable';
import type { Lane } from './lane';
import type { Moment, Stretch } from './trace';
import type { Transition } from './transition';
import type { WalkedStep } from './walkedStep';
import type { Done, Found } from './walker';
import { type PlanEntry, placeIn } from './walkPlan';

/** What every cell holds at one moment, by its number. */
export type Values = readonly (CellValue | undefined)[];

/** A failure with the entry of the stretch that shows it, and the last one up to there that does not resolve, or -1. */
export interface FoundHere {
  readonly found: Found;
  readonly place: number;
  readonly at: ItemRange | undefined;
  readonly unresolved: number;
}

const NONE: readonly never[] = [];

/**
 * What some steps that follow each other did, wherever they stand. Whoever goes through a long walk asks a stretch for
 * what it sums up, and looks into few of them; a key pressed in a step makes one of them anew.
 */
export class StretchWork {
  #cells: { reads: ReadonlySet<number>; writes: ReadonlySet<number> } | undefined;
  #entries: readonly PlanEntry[] | undefined;
  #moments: readonly Moment[] | undefined;
  #found: readonly FoundHere[] | undefined;
  #deeds: ReadonlyMap<string, readonly Deeds[]> | undefined;
  #changing: ReadonlyMap<string, readonly Moment[]> | undefined;
  /** The last entry that does not resolve, or -1. */
  #unresolved = -1;

  /** How many entries it has. */
  readonly length: number;

  constructor(readonly steps: readonly WalkedStep[]) {
    this.length = steps.reduce((sum, { transitions }) => sum + transitions.length, 0);
  }

  /** The cells that it reads as they are before it. */
  get reads(): ReadonlySet<number> {
    this.#cells ??= this.#sumOfCells();
    return this.#cells.reads;
  }

  get writes(): ReadonlySet<number> {
    this.#cells ??= this.#sumOfCells();
    return this.#cells.writes;
  }

  get entries(): readonly PlanEntry[] {
    this.#entries ??= this.steps.flatMap((step) => step.laid.entries);
    return this.#entries;
  }

  get moments(): readonly Moment[] {
    this.#moments ??= this.steps.flatMap((step) => step.moments);
    return this.#moments;
  }

  get found(): readonly FoundHere[] {
    this.#found ??= this.#allFound();
    return this.#found;
  }

  get unresolved(): number {
    this.#found ??= this.#allFound();
    return this.#unresolved;
  }

  /** What was done to a part, or to a limit, check or balance group, in order. */
  deedsTo(part: string): readonly Deeds[] {
    this.#deeds ??= this.#deedsByPart();
    return this.#deeds.get(part) ?? NONE;
  }

  /** The moments that change the lane of a part, in order. */
  momentsOf(part: string): readonly Moment[] {
    this.#changing ??= byPart(this.moments);
    return this.#changing.get(part) ?? NONE;
  }

  #sumOfCells(): { reads: ReadonlySet<number>; writes: ReadonlySet<number> } {
    const reads = new Set<number>();
    const writes = new Set<number>();
    for (const { transitions } of this.steps) {
      for (const transition of transitions) {
        for (const cell of transition.reads) if (!writes.has(cell)) reads.add(cell);
        for (const { cell } of transition.changes) writes.add(cell);
      }
    }
    return { reads, writes };
  }

  #allFound(): FoundHere[] {
    const all: FoundHere[] = [];
    let place = 0;
    for (const { laid, transitions } of this.steps) {
      for (let index = 0; index < transitions.length; index++) {
        const transition = transitions[index] as Transition;
        const entry = laid.entries[index];
        if (entry?.is === 'gap' || (entry?.is === 'act' && !entry.resolved)) this.#unresolved = place;
        for (const found of transition.found) {
          const at = placeIn(entry, found.about, found.asked);
          all.push({ found, place, at, unresolved: this.#unresolved });
        }
        place++;
      }
    }
    return all;
  }

  #deedsByPart(): ReadonlyMap<string, readonly Deeds[]> {
    const deeds = new Map<string, Deeds[]>();
    let place = 0;
    for (const { laid, transitions } of this.steps) {
      for (let index = 0; index < transitions.length; index++) {
        const { done } = transitions[index] as Transition;
        for (const one of done) {
          const known = deeds.get(one.part) ?? [];
          const last = known.at(-1);
          if (last?.place === place) last.done.push(one);
          else known.push(new Deeds(place, one, laid.entries[index]));
          deeds.set(one.part, known);
        }
        place++;
      }
    }
    return deeds;
  }
}

/** What one entry did to a part. */
export class Deeds {
  readonly done: Done[];
  #at: { readonly range: ItemRange | undefined } | undefined;

  constructor(
    /** The entry's place in the stretch. */
    readonly place: number,
    readonly first: Done,
    readonly entry: PlanEntry | undefined,
  ) {
    this.done = [first];
  }

  get at(): ItemRange | undefined {
    this.#at ??= { range: placeIn(this.entry, this.first.part) };
    return this.#at.range;
  }
}

function byPart(moments: readonly Moment[]): ReadonlyMap<string, readonly Moment[]> {
  const lists = new Map<string, Moment[]>();
  for (const moment of moments) {
    for (const part of moment.lanes.keys()) {
      const list = lists.get(part);
      if (list === undefined) lists.set(part, [moment]);
      else list.push(moment);
    }
  }
  return lists;
}

/** A stretch in its place: what it did, and the unit as it stood before. */
export class PlacedStretch implements Stretch {
  constructor(
    readonly work: StretchWork,
    readonly before: Values,
    readonly table: CellTable,
  ) {}

  get moments(): readonly Moment[] {
    return this.work.moments;
  }

  momentsOf(part: string): readonly Moment[] {
    return this.work.momentsOf(part);
  }

  lane(id: string): Lane | undefined {
    return this.before[this.table.number('lane', id)] as Lane | undefined;
  }
}
