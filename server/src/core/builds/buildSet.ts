import { ALWAYS, type DecisionDiagram, type DiagramNode, NEVER } from './decisionDiagram';

/** What the sets of one space share. */
export interface BuildSetOwner {
  readonly diagram: DecisionDiagram;
  /** All builds and outcomes that exist. */
  readonly existing: DiagramNode;
  /** The one object for a function that lies within what exists already. */
  setWithin(key: DiagramNode): BuildSet;
}

/**
 * A set of builds and outcomes, always within what exists. Equal sets of one space are one object with one `key`, so
 * that a set can be compared by `===` and can key a map. Immutable.
 */
export class BuildSet {
  /** Made by its space only, which gives the one object for a node. */
  constructor(
    readonly owner: BuildSetOwner,
    readonly key: DiagramNode,
  ) {}

  get isEmpty(): boolean {
    return this.key === NEVER;
  }

  /** Whether it holds all that exists. */
  get isEverything(): boolean {
    return this.key === this.owner.existing;
  }

  and(other: BuildSet): BuildSet {
    return this.with(this.owner.diagram.and(this.key, this.keyOf(other)), other);
  }

  or(other: BuildSet): BuildSet {
    return this.with(this.owner.diagram.or(this.key, this.keyOf(other)), other);
  }

  minus(other: BuildSet): BuildSet {
    return this.with(this.owner.diagram.minus(this.key, this.keyOf(other)), other);
  }

  /** All that exists outside this set. */
  complement(): BuildSet {
    return this.owner.setWithin(this.owner.diagram.minus(this.owner.existing, this.key));
  }

  equals(other: BuildSet): boolean {
    return this.key === this.keyOf(other);
  }

  isWithin(other: BuildSet): boolean {
    return this.owner.diagram.implies(this.key, this.keyOf(other));
  }

  overlaps(other: BuildSet): boolean {
    return this.owner.diagram.and(this.key, this.keyOf(other)) !== NEVER;
  }

  /** What is left to decide about the set once it is known that a build exists. */
  get distinction(): DiagramNode {
    return this.isEverything ? ALWAYS : this.owner.diagram.simplify(this.key, this.owner.existing);
  }

  /** The set for what came of two, which mostly is one of them, and then need not be looked up. */
  private with(key: DiagramNode, other: BuildSet): BuildSet {
    if (key === this.key) return this;
    return key === other.key ? other : this.owner.setWithin(key);
  }

  /** Mixing spaces is a mistake of the program, not of a document; any answer would be a silent wrong one. */
  private keyOf(other: BuildSet): DiagramNode {
    if (other.owner !== this.owner) throw new TypeError('Sets of two different build spaces were combined');
    return other.key;
  }
}
