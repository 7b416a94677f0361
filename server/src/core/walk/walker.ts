import type { BuildSet } from '../builds';
import type { Instruction } from '../model/generated/types';
import type { Cause, Deed } from './failure';
import type { UnitModel } from './unitModel';
import type { WalkState } from './walkState';

/** An instruction as it is carried out, and for which builds. */
export interface Act {
  readonly instruction: Instruction;
  readonly where: BuildSet;
  /** Where its result is not right, so that it is worth nothing yet. */
  readonly fails: BuildSet;
}

/** A failure as an instruction finds it; what made it so is looked up afterwards. */
export interface Found {
  readonly cause: Cause;
  readonly about: string;
  readonly other: string | undefined;
  readonly where: BuildSet;
  /** The condition that shows it, by its place among those of the instruction; undefined where the instruction does. */
  readonly asked: number | undefined;
  readonly blame: Blame | undefined;
}

/** The last of these deeds to this part is to blame. */
export interface Blame {
  readonly part: string;
  readonly deeds: readonly Deed[];
}

export interface Done {
  readonly what: Deed;
  readonly part: string;
  readonly where: BuildSet;
}

interface Details {
  readonly asked?: number;
  readonly other?: string;
  readonly blame?: readonly Deed[];
  /** Whose deeds are to blame, where it is not the other part, or else the part itself. */
  readonly blamed?: string;
}

/** What the verbs work with: the state of the unit, and the means to say what fails and what was done. */
export class Walker {
  found: Found[] = [];
  done: Done[] = [];

  constructor(
    readonly unit: UnitModel,
    readonly state: WalkState,
  ) {}

  /** Says that something fails where the set holds anything; gives back whether it does. */
  fail(cause: Cause, about: string, where: BuildSet, details: Details = {}): boolean {
    if (where.isEmpty) return false;
    const { asked, other, blame, blamed } = details;
    this.found.push({
      cause,
      about,
      other,
      where,
      asked,
      blame: blame === undefined ? undefined : { part: blamed ?? other ?? about, deeds: blame },
    });
    return true;
  }

  happened(what: Deed, part: string, where: BuildSet): void {
    if (!where.isEmpty) this.done.push({ what, part, where });
  }

  /** A part was turned, moved or taken off: results that depend on it are worth nothing any more. */
  touched(part: string, where: BuildSet): void {
    if (where.isEmpty) return;
    const { relations } = this.unit;
    for (const id of relations.resultsOn(part)) {
      this.state.forget('valid', id, where);
      this.state.note('due', id, where);
    }
    for (const group of relations.groupsOf(part)) this.#unbalance(group, [part], where);
    const held = relations.heldBy(part).filter((one) => relations.groupsOf(one).length > 0);
    if (held.length === 0) return;
    for (const group of new Set(held.flatMap((one) => relations.groupsOf(one)))) {
      this.#unbalance(
        group,
        held.filter((one) => relations.membersOf(group).includes(one)),
        where,
      );
    }
  }

  /** In a group that keeps its position, members that are marked come back to where they were balanced. */
  #unbalance(group: string, moved: readonly string[], where: BuildSet): void {
    const keeps = this.unit.family.value.balanceGroups?.find((one) => one.id.id === group)?.value.keepPosition?.value;
    let lost = where;
    if (keeps === true) {
      const kept = moved.map((part) => this.state.lane(part).marked);
      lost = where.minus(kept.reduce((all, one) => all.and(one), where));
    }
    this.state.forget('valid', group, lost);
  }

  /** The builds of an act in which the part can be there at all; elsewhere the act says nothing about it. */
  meant(part: string, act: Act): BuildSet {
    return act.where.and(this.unit.everPresent(part));
  }
}
