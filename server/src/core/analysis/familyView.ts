import type { BuildFacts, BuildSet } from '../builds';
import { BuildSpace, type ConditionExpr } from '../builds';
import { unitsIn } from '../model/facts';
import type { FamilyDocument, Part } from '../model/generated/types';
import type { Condition, Declared, Entry, Prose } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import { documentUnit, documentValue } from './documentUnit';

/** A family with everything in it found by id. Made once for a reading of its document. */
export class FamilyView {
  readonly document: SyntaxDocument;
  readonly value: FamilyDocument;
  readonly parts: ReadonlyMap<string, Entry<Part>>;
  readonly #declared = new Map<string, Map<string, Declared>>();
  #space: BuildSpace | undefined;
  #replacers: Map<string, string[]> | undefined;
  readonly #presences = new WeakMap<BuildSpace, Presences>();

  private constructor(document: SyntaxDocument, value: FamilyDocument) {
    this.document = document;
    this.value = value;
    this.parts = entriesById(value.parts);
    const unit = documentUnit(document);
    for (const one of unit === undefined ? [] : unitsIn(unit)) for (const id of one.facts.declared) this.#declare(id);
  }

  static of(document: SyntaxDocument): FamilyView | undefined {
    const known = views.get(document);
    const value = documentValue(document, 'family');
    if (known !== undefined || value === undefined) return known;
    const view = new FamilyView(document, value);
    views.set(document, view);
    return view;
  }

  #declare(declared: Declared): void {
    const byId = this.#declared.get(declared.kind) ?? new Map<string, Declared>();
    if (!byId.has(declared.id)) byId.set(declared.id, declared);
    this.#declared.set(declared.kind, byId);
  }

  /** The ids that the family declares of a kind. */
  declared(kind: string): ReadonlyMap<string, Declared> {
    return this.#declared.get(kind) ?? new Map();
  }

  part(id: string): Part | undefined {
    return this.parts.get(id)?.value;
  }

  nameOf(id: string): string {
    return this.part(id)?.name?.text ?? id;
  }

  /** All builds of the family, whoever covers them. */
  get space(): BuildSpace {
    this.#space ??= new BuildSpace(this.buildFacts());
    return this.#space;
  }

  buildFacts(): BuildFacts {
    const { variants = [], options = [], identify = [] } = this.value;
    const nameOf = (id: Declared, name: Prose | undefined): { id: string; name: string } => ({
      id: id.id,
      name: name?.text ?? id.id,
    });
    const ids = (refs: readonly { id: string }[] | undefined): string[] => (refs ?? []).map((ref) => ref.id);
    return {
      variants: variants.map(({ id, value }) => nameOf(id, value.name)),
      options: options.map(({ id, value }) => ({
        ...nameOf(id, value.name),
        ...(value.variants === undefined ? {} : { variants: ids(value.variants) }),
        needs: ids(value.needs),
        excludes: ids(value.excludes),
      })),
      identify: identify.map(({ id, value }) => ({
        ...nameOf(id, value.name),
        values: outcomeValues(value.values),
        when: conditionOf(value),
      })),
      renewable: [...this.parts.values()]
        .filter(({ value }) => value.renew?.value === 'on-condition')
        .map(({ id, value }) => ({ ...nameOf(id, value.name), when: this.#inPlaceWhen(id.id, value) })),
    };
  }

  /** The condition of a part less those of the parts that take its place: nobody renews what the build does not have. */
  #inPlaceWhen(id: string, part: Part): ConditionExpr {
    const replacers = this.#replacersOf(id).flatMap((one) => this.part(one) ?? []);
    const own = conditionOf(part);
    return replacers.length === 0 ? own : { kind: 'all', of: [own, { kind: 'none', of: replacers.map(conditionOf) }] };
  }

  /** Where a part belongs to the unit: its own condition, less the builds in which another takes its place. */
  presence(id: string, space: BuildSpace, as: 'finished' | 'received' = 'finished'): BuildSet {
    const known = this.#presences.get(space) ?? { finished: new Map(), received: new Map() };
    this.#presences.set(space, known);
    const set = known[as].get(id) ?? this.#presence(id, space, as, new Set());
    known[as].set(id, set);
    return set;
  }

  #presence(id: string, space: BuildSpace, as: 'finished' | 'received', seen: ReadonlySet<string>): BuildSet {
    const part = this.part(id);
    if (part === undefined || seen.has(id)) return space.nothing;
    const own = space.set(conditionOf(part), as);
    const replacers = this.#replacersOf(id);
    if (replacers.length === 0) return own;
    const taken = replacers.map((one) => this.#presence(one, space, as, new Set([...seen, id])));
    return own.minus(space.union(taken));
  }

  /** The parts that take the place of a part on the builds that have them. */
  #replacersOf(id: string): readonly string[] {
    if (this.#replacers === undefined) {
      this.#replacers = new Map();
      for (const [replacer, { value }] of this.parts) {
        for (const ref of value.insteadOf ?? []) {
          this.#replacers.set(ref.id, [...(this.#replacers.get(ref.id) ?? []), replacer]);
        }
      }
    }
    return this.#replacers.get(id) ?? [];
  }
}

interface Presences {
  readonly finished: Map<string, BuildSet>;
  readonly received: Map<string, BuildSet>;
}

const views = new WeakMap<SyntaxDocument, FamilyView>();

/** The condition of anything that may have \`when\` and \`unless\`. */
export function conditionOf(owner: { readonly when?: Condition; readonly unless?: Condition }): ConditionExpr {
  const { when, unless } = owner;
  if (when === undefined && unless === undefined) return { kind: 'always' };
  const parts: ConditionExpr[] = when === undefined ? [] : [when.expr];
  if (unless !== undefined) parts.push({ kind: 'none', of: [unless.expr] });
  return { kind: 'all', of: parts };
}

export function entriesById<Value>(entries: readonly Entry<Value>[] | undefined): Map<string, Entry<Value>> {
  const byId = new Map<string, Entry<Value>>();
  for (const entry of entries ?? []) if (!byId.has(entry.id.id)) byId.set(entry.id.id, entry);
  return byId;
}

function outcomeValues(values: readonly { readonly text: string }[] | undefined): string[] {
  return (values ?? []).map((value) => value.text);
}
