import type { BuildSet } from '../builds';
import type { Lane } from './lane';

/** What each part was marked across to, and where. */
export type Partners = ReadonlyMap<string, BuildSet>;

/** One thing that an instruction can read and change. */
export type CellValue = Lane | BuildSet | Partners;

/**
 * The kinds of what is known beside the lanes: outcomes found out; limits, readings, checks and balance groups that were
 * ever made, and those still worth something; checks that are due, since something they come behind
 * was touched; adjustments that are not locked; partners of marks.
 */
export type CellKind = 'lane' | 'known' | 'done' | 'valid' | 'due' | 'open' | 'partners';

/** Numbers for the cells of a family, so that what an instruction reads can be kept as a few small numbers. */
export class CellTable {
  readonly #numbers = new Map<CellKind, Map<string, number>>();
  readonly names: { readonly kind: CellKind; readonly id: string }[] = [];

  number(kind: CellKind, id: string): number {
    let byId = this.#numbers.get(kind);
    if (byId === undefined) {
      byId = new Map();
      this.#numbers.set(kind, byId);
    }
    let number = byId.get(id);
    if (number === undefined) {
      number = this.names.push({ kind, id }) - 1;
      byId.set(id, number);
    }
    return number;
  }
}
