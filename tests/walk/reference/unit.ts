import type { UnitFacts } from './unitFacts';

/** The facts of one part, all of them plain and changed in place. */
export interface PartState {
  pieces: number;
  tight: number;
  snug: boolean;
  released: boolean;
  spent: boolean;
  trial: boolean;
  fresh: boolean;
  away: boolean;
  scrapped: boolean;
  returned: boolean;
  clean: boolean;
  inspected: boolean;
  lubricated: boolean;
  threadlocked: boolean;
  oily: boolean;
  dirty: boolean;
  curing: boolean;
  hot: boolean;
  cold: boolean;
  marked: boolean;
  painted: boolean;
  misaligned: boolean;
  chosen: boolean;
  disturbed: boolean;
  decided: boolean;
  /** It was loosened in place since it last had threadlocker. */
  threadlockBroken: boolean;
  /** It was fitted in this work. */
  fitted: boolean;
  partners: Set<string>;
}

/** What was made of a limit, reading, check or balance group. */
export interface Result {
  /** A value was read, whatever became of it. */
  taken: boolean;
  done: boolean;
  valid: boolean;
  /** Something that it comes behind was touched. */
  due: boolean;
}

export interface Failed {
  readonly cause: string;
  readonly about: string;
  readonly other: string | undefined;
}

/** The unit on the bench, with everything that is known of it. */
export class Unit {
  readonly parts = new Map<string, PartState>();
  readonly results = new Map<string, Result>();
  readonly known = new Set<string>();
  readonly open = new Set<string>();
  /** What the instruction that is being carried out fails in. */
  failures: Failed[] = [];

  constructor(readonly facts: UnitFacts) {
    for (const id of facts.partIds) this.parts.set(id, this.#start(id));
  }

  #start(id: string): PartState {
    const { procedure } = this.facts;
    const starts = procedure.value.starts?.id ?? 'assembled';
    const comes = this.facts.comesWithUnit(id);
    const temporary = this.facts.part(id).temporary?.value === true;
    const inAssembly = starts !== 'parts' && (starts === 'assembled' || assemblyParts(this.facts, starts).includes(id));
    const isThere = inAssembly || (starts === 'parts' && id === this.facts.base);
    const pieces = isThere && comes && !temporary ? this.facts.piecesOf(id) : 0;
    return { ...NEW_PART, pieces, tight: pieces, fresh: pieces === 0 && (!comes || temporary), partners: new Set() };
  }

  of(id: string): PartState {
    const state = this.parts.get(id);
    if (state === undefined) throw new Error(`The unit has no ${id}`);
    return state;
  }

  result(id: string): Result {
    const result = this.results.get(id) ?? { taken: false, done: false, valid: false, due: false };
    this.results.set(id, result);
    return result;
  }

  fail(cause: string, about: string, other?: string): void {
    this.failures.push({ cause, about, other });
  }

  isInPlace(id: string): boolean {
    return this.of(id).pieces > 0;
  }

  isTorqued(id: string): boolean {
    const { pieces, tight } = this.of(id);
    return pieces > 0 && tight >= pieces;
  }

  isInUnit(id: string, seen: readonly string[] = []): boolean {
    if (id === this.facts.base) return true;
    if (!this.isInPlace(id) || seen.includes(id)) return false;
    if (this.facts.needsNoCarrier(id)) return true;
    return this.facts.carriersOf(id).some((carrier) => this.isInUnit(carrier, [...seen, id]));
  }

  /** Whether a fastener holds a part in its place. */
  holdsFast(fastener: string, id: string): boolean {
    if (!this.isInPlace(fastener)) return false;
    return !(this.facts.freesWhenLoose(fastener, id) && this.of(fastener).released);
  }

  /** Fails for each part that must be off before this one can be reached. */
  needsReach(id: string): void {
    if (!this.isInUnit(id)) return;
    for (const cover of this.facts.coversOf(id)) {
      const apart = !this.facts.ridesOn(id, cover) && !this.facts.ridesOn(cover, id);
      if (apart && this.isInUnit(cover)) this.fail('unreachable', id, cover);
    }
  }
}

const NEW_PART: Omit<PartState, 'partners'> = {
  pieces: 0,
  tight: 0,
  snug: false,
  released: false,
  spent: false,
  trial: false,
  fresh: false,
  away: false,
  scrapped: false,
  returned: false,
  clean: false,
  inspected: false,
  lubricated: false,
  threadlocked: false,
  oily: false,
  dirty: false,
  curing: false,
  hot: false,
  cold: false,
  marked: false,
  painted: false,
  misaligned: false,
  chosen: false,
  disturbed: false,
  decided: false,
  threadlockBroken: false,
  fitted: false,
};

/** The parts of an assembly of the family; none where it has no such assembly. */
export function assemblyParts(facts: UnitFacts, assembly: string): string[] {
  const entry = facts.family.value.assemblies?.find(({ id }) => id.id === assembly);
  return (entry?.value.parts ?? []).map(({ id }) => id);
}
