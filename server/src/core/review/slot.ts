import type { Keys } from '../model/shape';
import { camel } from '../model/typeNames';
import type { Node } from '../syntax/node';
import type { Subject } from './change';
import { type Judged, judgeGone } from './judge';
import type { Two, TwoDocuments, TwoSets } from './twoSides';

/** A typed value of some definition, in two versions. */
export type Values = Two<Readonly<Record<string, unknown>>>;

/** What is compared: the keys of a definition, on something that a person can name. */
export interface Compared {
  readonly def: string;
  readonly keys: Keys;
  readonly of: Subject;
  /** Keys that somebody else compares. */
  readonly without?: ReadonlySet<string>;
  readonly within: TwoSets;
  /** Compares instructions that stand inside, where there are any. */
  readonly instructions?: (values: Two<readonly unknown[]>) => void;
}

/** The value of one key in two versions. */
export class Slot {
  constructor(
    readonly two: TwoDocuments,
    readonly values: Values,
    readonly compared: Compared,
    readonly key: string,
    readonly before: Node | undefined,
    readonly after: Node | undefined,
  ) {}

  get def(): string {
    return this.compared.def;
  }

  /** The typed values under the key. */
  get typed(): Two<unknown> {
    const name = camel(this.key);
    return { before: this.values.before[name], after: this.values.after[name] };
  }

  /** Tells that one value became another, where that is a change. */
  tell(judged: Judged | undefined, before: Node | undefined = this.before, after: Node | undefined = this.after): void {
    if (judged === undefined) return;
    this.two.tell({ ...judged, kind: kindOf(before, after), of: this.compared.of, key: this.key }, before, after);
  }

  /** Tells that a value came or went. */
  tellGone(before: Node | undefined, after: Node | undefined): void {
    this.tell(judgeGone(this.def, this.key, kindOf(before, after)), before, after);
  }
}

export function kindOf(before: unknown, after: unknown): 'added' | 'removed' | 'changed' {
  if (before === undefined) return 'added';
  return after === undefined ? 'removed' : 'changed';
}
