import type { BodyPlan, Plan } from './plan';

/** One part of a drawn family, with what the procedure must know of it. */
export interface MadePart {
  readonly id: string;
  readonly role: 'body' | 'fastener' | 'seal' | 'extra';
  readonly plan: BodyPlan;
  readonly carrier: string;
  /** Keys of the part in the family, beyond its name, as they are written. */
  readonly keys: Record<string, string>;
  behind: string[];
  fastenedBy: string[];
  readonly builds: BodyPlan['builds'];
  /** It is left where it is by the whole work. */
  kept: boolean;
}

export const BASE = 'base-housing';

/** The parts of a drawn family, and which must be off before which. Relations that would close a circle are left out. */
export class Structure {
  readonly parts = new Map<string, MadePart>();
  readonly #offBefore = new Map<string, Set<string>>();

  constructor(readonly plan: Plan) {
    plan.bodies.forEach((body, index) => {
      this.#makeBody(body, index);
    });
    plan.bodies.forEach((body, index) => {
      this.#relate(body, `body-${index}`);
    });
    for (const part of this.parts.values()) if (part.role === 'body') part.kept = this.#mayBeKept(part);
    for (const part of this.parts.values()) if (part.role === 'fastener') part.kept = this.#holdsOnlyKept(part.id);
  }

  part(id: string): MadePart {
    const part = this.parts.get(id);
    if (part === undefined) throw new Error(`No part ${id} was made`);
    return part;
  }

  held(fastener: string): MadePart[] {
    return [...this.parts.values()].filter(({ fastenedBy }) => fastenedBy.includes(fastener));
  }

  ridesOn(id: string, carrier: string): boolean {
    const own = this.parts.get(id)?.carrier;
    return own !== undefined && (own === carrier || this.ridesOn(own, carrier));
  }

  /** The order in which the parts come off, or go on: a part before all that waits for it, else by rank. */
  order(way: 'strip' | 'fit'): MadePart[] {
    const left = new Map([...this.parts].filter(([, part]) => !part.kept));
    const sorted: MadePart[] = [];
    while (left.size > 0) {
      const free = [...left.values()].filter(
        ({ id }) =>
          ![...left.keys()].some((other) => (way === 'strip' ? this.#leads(other, id) : this.#leads(id, other))),
      );
      free.sort((one, other) => rank(one, way) - rank(other, way));
      const next = free[0];
      if (next === undefined) throw new Error('The parts hold each other in a circle');
      left.delete(next.id);
      sorted.push(next);
    }
    return sorted;
  }

  #leads(first: string, then: string): boolean {
    return this.#offBefore.get(first)?.has(then) === true;
  }

  #makeBody(plan: BodyPlan, index: number): void {
    const candidates = [BASE, ...[...this.parts.values()].filter(mayCarry).map(({ id }) => id)];
    const carrier = candidates[plan.carrier % candidates.length] ?? BASE;
    const id = `body-${index}`;
    this.parts.set(id, made(id, 'body', plan, carrier));
    const { fastening } = plan;
    if (fastening !== 'none' && fastening !== 'shared') {
      const on = plan.fastenerOnBody && !fastening.endsWith('stays') ? id : carrier;
      this.parts.set(`fast-${index}`, made(`fast-${index}`, 'fastener', plan, on));
    }
    if (plan.seal !== 'none') {
      this.parts.set(`seal-${index}`, made(`seal-${index}`, 'seal', plan, plan.seal === 'on-body' ? id : carrier));
    }
  }

  #relate(plan: BodyPlan, id: string): void {
    const part = this.part(id);
    const fastener = this.parts.get(id.replace('body', 'fast')) ?? this.#shared(part);
    if (fastener !== undefined && this.#add([[fastener.id, id]])) part.fastenedBy.push(fastener.id);
    const seal = this.parts.get(id.replace('body', 'seal'));
    if (seal !== undefined) {
      this.#add([[id, seal.id]]);
      seal.behind = [id];
    }
    const bodies = [...this.parts.values()].filter(({ role }) => role === 'body');
    for (const drawn of plan.behind) {
      const cover = bodies[drawn % bodies.length];
      if (cover === undefined || cover.id === id || part.behind.includes(cover.id)) continue;
      const own = this.parts.get(id.replace('body', 'fast'));
      const covered = plan.fastenerBehind && own !== undefined ? [part, own] : [part];
      if (!this.#add(covered.flatMap((one) => this.#covering(cover.id, one)))) continue;
      for (const one of covered) one.behind.push(cover.id);
    }
  }

  /** What rides on a part is carried along, so the cover must also be off before what carries it. */
  #covering(cover: string, part: MadePart): [string, string][] {
    if (this.ridesOn(part.id, cover)) return [];
    const pairs: [string, string][] = [[cover, part.id]];
    for (let under = part.carrier; under !== BASE; under = this.part(under).carrier) {
      if (!this.ridesOn(cover, under)) pairs.push([cover, under]);
    }
    return pairs;
  }

  #shared(part: MadePart): MadePart | undefined {
    if (part.plan.fastening !== 'shared' || part.builds === 'option' || part.builds === 'variant') return undefined;
    return [...this.parts.values()].find(
      (other) =>
        other.role === 'fastener' &&
        other.carrier === part.carrier &&
        other.builds !== 'option' &&
        other.builds !== 'variant',
    );
  }

  #add(pairs: readonly (readonly [string, string])[]): boolean {
    if (pairs.some(([first, then]) => first === then || this.#reaches(then, first))) return false;
    const added: [string, string][] = [];
    for (const [first, then] of pairs) {
      if (this.#reaches(then, first)) {
        for (const [one, other] of added) this.#offBefore.get(one)?.delete(other);
        return false;
      }
      const set = this.#offBefore.get(first) ?? new Set();
      this.#offBefore.set(first, set);
      if (!set.has(then)) added.push([first, then]);
      set.add(then);
    }
    return true;
  }

  #reaches(from: string, to: string, seen = new Set<string>()): boolean {
    if (from === to) return true;
    if (seen.has(from)) return false;
    seen.add(from);
    return [...(this.#offBefore.get(from) ?? [])].some((next) => this.#reaches(next, to, seen));
  }

  #mayBeKept({ id, plan, builds }: MadePart): boolean {
    const isPlain = builds === 'all' && plan.seal === 'none' && this.plan.work === 'rebuild';
    return plan.kept && isPlain && (this.#offBefore.get(id)?.size ?? 0) === 0;
  }

  #holdsOnlyKept(id: string): boolean {
    const held = this.held(id);
    return held.length > 0 && held.every(({ kept }) => kept) && (this.#offBefore.get(id)?.size ?? 0) === held.length;
  }
}

function mayCarry({ role, builds }: MadePart): boolean {
  return role === 'body' && (builds === 'all' || builds === 'substitute');
}

function made(id: string, role: MadePart['role'], plan: BodyPlan, carrier: string): MadePart {
  return { id, role, plan, carrier, keys: {}, behind: [], fastenedBy: [], builds: plan.builds, kept: false };
}

function rank({ role, plan }: MadePart, way: 'strip' | 'fit'): number {
  if (role === 'fastener') return plan.fastenerRank;
  return way === 'strip' ? plan.stripRank : plan.fitRank;
}
