import type { ProcedureView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { Lane } from '../walk/lane';
import type { Moment } from '../walk/trace';
import { UnitRelations } from '../walk/unitRelations';

/** Something that gets as warm as a part that is heated, on the builds on which it does. */
export type Warmed =
  | { readonly is: 'part'; readonly id: string; readonly where: BuildSet }
  /** A consumable that was put on a part and not taken off since. */
  | { readonly is: 'consumable'; readonly id: string; readonly on: string; readonly where: BuildSet };

interface Applied {
  readonly consumable: string;
  readonly where: BuildSet;
}

/** What was put on each part and not taken off since. */
export type AppliedTo = ReadonlyMap<string, readonly Applied[]>;

export function isSameApplied(some: readonly Applied[] = NONE, others: readonly Applied[] = NONE): boolean {
  if (some === others) return true;
  const isSame = (one: Applied, i: number): boolean =>
    one.consumable === others[i]?.consumable && one.where === others[i]?.where;
  return some.length === others.length && some.every(isSame);
}

const NONE: readonly never[] = [];

/** The lanes of the parts as they are at the moment; kept up by the owner. */
export interface LanesNow {
  get(id: string): Lane | undefined;
}

/** What is in place on a part and what was put on it, at each moment of a walk. */
export class Surroundings {
  /** The parts of which it was looked at, or changed, what was put on them. */
  readonly touched = new Set<string>();
  readonly #before: AppliedTo;
  #applied: Map<string, readonly Applied[]> | undefined;
  readonly #relations: UnitRelations | undefined;

  constructor(
    { family }: ProcedureView,
    readonly lanes: LanesNow,
    applied: AppliedTo,
  ) {
    this.#before = applied;
    this.#relations = family === undefined ? undefined : UnitRelations.of(family);
  }

  get applied(): AppliedTo {
    return this.#applied ?? this.#before;
  }

  /** What gets warm with a part: itself, what rides on it in place, its fasteners and seals in place, and what was put on them. */
  of(id: string, where: BuildSet): Warmed[] {
    const there = this.lanes.get(id)?.partly.and(where);
    const riders = this.#ridersOf(id, where, new Set([id]));
    const near = there === undefined || there.isEmpty ? [] : this.#holding(id, there);
    const parts: Warmed[] = [{ is: 'part', id, where }, ...riders, ...near];
    return [...parts, ...parts.flatMap((one) => this.#consumablesOn(one.id, one.where))];
  }

  /** What newly gets warm by a hot part when another one, or the hot one itself, is fitted. */
  meeting(fitted: string, hot: string, where: BuildSet): Warmed[] {
    const carriers = this.#relations?.carriers(fitted) ?? NONE;
    const parts: Warmed[] = [];
    if (fitted === hot) parts.push(...this.#inPlace(this.#relations?.sealsOf(hot) ?? NONE, where));
    else if (carriers.includes(hot)) parts.push({ is: 'part', id: fitted, where });
    return [...parts, ...parts.flatMap((one) => this.#consumablesOn(one.id, one.where))];
  }

  /** Keeps what an instruction puts on parts, and forgets what it takes off with them or by cleaning. */
  remember({ instruction, where }: Moment): void {
    if (instruction.verb === 'apply') {
      const added = (instruction.apply ?? []).map((ref) => ({ consumable: ref.id, where }));
      for (const { id } of instruction.to ?? []) this.#put(id, [...this.#on(id), ...added]);
    }
    const ids = cleared(instruction);
    if (ids.length === 0) return;
    for (const id of ids) {
      const left = this.#on(id).map((one) => ({ ...one, where: one.where.minus(where) }));
      this.#put(
        id,
        left.filter((one) => !one.where.isEmpty),
      );
    }
  }

  #on(id: string): readonly Applied[] {
    this.touched.add(id);
    return this.applied.get(id) ?? NONE;
  }

  #put(id: string, list: readonly Applied[]): void {
    if (isSameApplied(list, this.applied.get(id))) return;
    this.#applied ??= new Map(this.#before);
    if (list.length === 0) this.#applied.delete(id);
    else this.#applied.set(id, list);
  }

  #ridersOf(id: string, where: BuildSet, seen: Set<string>): Warmed[] {
    return this.#inPlace(this.#relations?.riders(id) ?? NONE, where).flatMap((rider) => {
      if (seen.has(rider.id)) return [];
      seen.add(rider.id);
      return [rider, ...this.#ridersOf(rider.id, rider.where, seen)];
    });
  }

  #holding(id: string, where: BuildSet): Warmed[] {
    const relations = this.#relations;
    return relations === undefined ? [] : this.#inPlace([...relations.fasteners(id), ...relations.sealsOf(id)], where);
  }

  #inPlace(ids: readonly string[], where: BuildSet): Warmed[] {
    return [...new Set(ids)].flatMap((id): Warmed[] => {
      const there = this.lanes.get(id)?.partly.and(where);
      return there === undefined || there.isEmpty ? [] : [{ is: 'part', id, where: there }];
    });
  }

  #consumablesOn(on: string, within: BuildSet): Warmed[] {
    return this.#on(on).flatMap(({ consumable: id, where }): Warmed[] => {
      const both = where.and(within);
      return both.isEmpty ? [] : [{ is: 'consumable', id, on, where: both }];
    });
  }
}

/** Parts from which an instruction takes what was put on them. */
function cleared(instruction: Instruction): readonly string[] {
  switch (instruction.verb) {
    case 'clean':
      return (instruction.clean ?? []).map((ref) => ref.id);
    case 'remove':
      return (instruction.remove ?? []).map((ref) => ref.id);
    case 'discard':
      return (instruction.discard ?? []).map((ref) => ref.id);
    default:
      return NONE;
  }
}
