import type { FamilyView } from '../analysis/familyView';
import { type HeldValue, heldValues } from '../analysis/heldValues';
import { presentBuilds } from '../analysis/presentBuilds';
import type { BuildSet, BuildSpace } from '../builds';
import type { Part } from '../model/generated/types';
import type { ByBuild, QuantityValue, Text } from '../model/values';

/** A fact and the part of which it is stated. */
export interface Stated<Value> {
  readonly value: Value;
  /** Id of the part. */
  readonly of: string;
}

/** What the family states of a fastener and of what it is screwed to, on some builds on which all of it is the same. */
export interface JointFacts {
  readonly where: BuildSet;
  /** Ids of the parts that it is screwed to. */
  readonly mates: readonly string[];
  readonly thread: Stated<Text> | undefined;
  /** Property classes as written, by the id of the part. */
  readonly classes: ReadonlyMap<string, Text>;
  readonly bearing: Stated<QuantityValue> | undefined;
  readonly friction: Stated<QuantityValue> | undefined;
  readonly prevailing: Stated<QuantityValue> | undefined;
}

/**
 * Everything that the family states for the joint of a fastener, a piece for each set of builds on which it differs. The
 * pieces do not overlap, and together hold for all builds that have the fastener.
 */
export function jointFacts(family: FamilyView, space: BuildSpace, id: string): readonly JointFacts[] {
  const part = family.part(id);
  const where = presentBuilds(family, space, id);
  if (part === undefined || where.isEmpty) return [];
  return new Splitting(family, space, id, where).pieces();
}

/** The parts that a part is screwed to, whichever of the two says so. */
export function matesOf(family: FamilyView, id: string): readonly string[] {
  return matesByPart(family).get(id) ?? [];
}

const rememberedMates = new WeakMap<FamilyView, ReadonlyMap<string, readonly string[]>>();

function matesByPart(family: FamilyView): ReadonlyMap<string, readonly string[]> {
  const known = rememberedMates.get(family);
  if (known !== undefined) return known;
  const mates = new Map<string, Set<string>>();
  const add = (one: string, other: string) => mates.set(one, (mates.get(one) ?? new Set()).add(other));
  for (const [id, { value }] of family.parts) {
    for (const ref of value.matesWith ?? []) {
      if (ref.id === id || family.part(ref.id) === undefined) continue;
      add(id, ref.id);
      add(ref.id, id);
    }
  }
  const lists = new Map([...mates].map(([id, others]) => [id, [...others]] as const));
  rememberedMates.set(family, lists);
  return lists;
}

type SingleFact = 'thread' | 'bearing' | 'friction' | 'prevailing';

class Splitting {
  #pieces: readonly JointFacts[];

  constructor(
    readonly family: FamilyView,
    readonly space: BuildSpace,
    readonly id: string,
    where: BuildSet,
  ) {
    const nothing = { thread: undefined, bearing: undefined, friction: undefined, prevailing: undefined };
    this.#pieces = [{ where, mates: [], classes: new Map(), ...nothing }];
  }

  pieces(): readonly JointFacts[] {
    const mates = matesOf(this.family, this.id);
    for (const mate of mates) this.#mate(mate);
    // What the fastener states itself comes before what is stated of its mate.
    for (const id of [this.id, ...mates]) this.#part(id);
    return this.#pieces;
  }

  #mate(mate: string): void {
    const held = [{ value: mate, where: presentBuilds(this.family, this.space, mate) }];
    this.#split(held, String, always, (piece, value) => ({ ...piece, mates: [...piece.mates, value] }));
  }

  #part(id: string): void {
    const part = this.family.part(id);
    if (part === undefined) return;
    const concerned = (piece: JointFacts) => id === this.id || piece.mates.includes(id);
    this.#split(this.#held(part.propertyClass), textOf, concerned, (piece, value) => ({
      ...piece,
      classes: new Map([...piece.classes, [id, value]]),
    }));
    this.#single('thread', id, this.#held(part.thread), textOf);
    this.#single('friction', id, this.#friction(part), textOf);
    if (id === this.id) this.#single('bearing', id, this.#held(part.bearingDiameter), textOf);
    this.#single('prevailing', id, this.#held(part.prevailingTorque), textOf);
  }

  #friction({ friction }: Part): readonly HeldValue<QuantityValue>[] {
    return friction === undefined ? [] : [{ value: friction, where: this.space.everything }];
  }

  #single<Value>(
    key: SingleFact,
    of: string,
    held: readonly HeldValue<Value>[],
    textOf: (value: Value) => string,
  ): void {
    const open = (piece: JointFacts) => piece[key] === undefined && (of === this.id || piece.mates.includes(of));
    this.#split(held, textOf, open, (piece, value) => ({ ...piece, [key]: { value, of } }));
  }

  #held<Value>(byBuild: ByBuild<Value> | undefined): readonly HeldValue<Value>[] {
    return heldValues(byBuild, this.space, this.space.everything).held;
  }

  /** Splits the pieces that `open` names by a value; values of the same text are one. */
  #split<Value>(
    held: readonly HeldValue<Value>[],
    textOf: (value: Value) => string,
    open: (piece: JointFacts) => boolean,
    put: (piece: JointFacts, value: Value) => JointFacts,
  ): void {
    if (held.length === 0) return;
    const values = this.#merged(held, textOf);
    this.#pieces = this.#pieces.flatMap((piece) => {
      if (!open(piece)) return [piece];
      const inside = values.map(({ value, where }) => ({ ...put(piece, value), where: piece.where.and(where) }));
      const rest = { ...piece, where: piece.where.minus(this.space.union(values.map(({ where }) => where))) };
      return [...inside, rest].filter(({ where }) => !where.isEmpty);
    });
  }

  #merged<Value>(held: readonly HeldValue<Value>[], textOf: (value: Value) => string): readonly HeldValue<Value>[] {
    const byText = new Map<string, HeldValue<Value>>();
    for (const one of held) {
      const known = byText.get(textOf(one.value));
      byText.set(textOf(one.value), known === undefined ? one : { ...known, where: known.where.or(one.where) });
    }
    return [...byText.values()];
  }
}

function textOf({ text }: { readonly text: string }): string {
  return text.trim();
}

function always(): boolean {
  return true;
}
