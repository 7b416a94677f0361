import type { RefKind } from '../model/shape';
import type { Declared } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import { documentUnit, documentValue } from './documentUnit';
import { SameParts } from './sameParts';
import { summariesOf, type UnitSummary } from './unitSummary';

/** Something that has an id: a part, a tool, a step. */
export interface NamedThing {
  readonly kind: RefKind;
  readonly id: string;
  /** What people call it: its name, or the title of a step; the id where it has none. */
  readonly name: string;
  /** Where it is declared. */
  readonly declared: Declared;
  readonly document: SyntaxDocument;
}

/** An id that stands twice in a document, as the first thing of its kind and again. */
export interface Repeated {
  readonly first: Declared;
  readonly again: Declared;
}

/** The ids that a document declares, the first one where an id stands twice. */
export class Declarations {
  /** All ids in the order of the text, as one text: what tells whether two readings declare the same. */
  readonly written: string;
  readonly #document: SyntaxDocument;
  readonly #summaries: readonly UnitSummary[];
  #gathered: Gathered | undefined;
  readonly #things = new Map<RefKind, ReadonlyMap<string, NamedThing>>();
  #names: ReadonlyMap<Declared, string> | undefined;
  /** What was asked for, since what a family declares is asked for again and again. */
  readonly #made = new Map<Declared, NamedThing>();

  constructor(document: SyntaxDocument, summaries: readonly UnitSummary[]) {
    this.#document = document;
    this.#summaries = summaries;
    this.written = summaries.map((one) => one.ids).join('');
  }

  get kinds(): Iterable<RefKind> {
    return this.#byKind.keys();
  }

  get repeated(): readonly Repeated[] {
    // The same ids are the same once more, and to tell so is far less work than to look at each again.
    if (withoutRepeats.of([this.written], () => this.#all.repeated.length === 0)) return [];
    return this.#all.repeated;
  }

  get #byKind(): Gathered['byKind'] {
    return this.#all.byKind;
  }

  /** Gathered when somebody asks: after a key in a long procedure often nobody does. */
  get #all(): Gathered {
    this.#gathered ??= gather(this.#summaries);
    return this.#gathered;
  }

  *ids(): Generator<string> {
    for (const byId of this.#byKind.values()) yield* byId.keys();
  }

  find(kind: RefKind, id: string): NamedThing | undefined {
    for (const summary of this.#summaries) {
      const declared = summary.find(kind, id);
      if (declared !== undefined) return this.#thing(declared);
    }
    return undefined;
  }

  /** All things of a kind by id; made when somebody asks. */
  all(kind: RefKind): ReadonlyMap<string, NamedThing> {
    const known = this.#things.get(kind);
    if (known !== undefined) return known;
    const declared = this.#byKind.get(kind) ?? new Map<string, Declared>();
    const things = new Map(Array.from(declared, ([id, one]) => [id, this.#thing(one)]));
    this.#things.set(kind, things);
    return things;
  }

  #thing(declared: Declared): NamedThing {
    const known = this.#made.get(declared);
    if (known !== undefined) return known;
    const thing = this.#thingOf(declared);
    this.#made.set(declared, thing);
    return thing;
  }

  /** Most who look something up want to know whether it is there, and no name, so that is looked for when it is asked for. */
  #thingOf(declared: Declared): NamedThing {
    const nameOf = (): string => this.#nameOf(declared);
    return {
      kind: declared.kind,
      id: declared.id,
      get name() {
        return nameOf();
      },
      declared,
      document: this.#document,
    };
  }

  #nameOf(declared: Declared): string {
    this.#names ??= namesIn(this.#document);
    return this.#names.get(declared) ?? declared.id;
  }
}

/** What a document declares. Made once for a reading. */
export function declarationsIn(document: SyntaxDocument): Declarations {
  const known = remembered.get(document);
  if (known !== undefined) return known;
  const unit = documentUnit(document);
  const declarations = new Declarations(document, unit === undefined ? [] : summariesOf(unit));
  remembered.set(document, declarations);
  return declarations;
}

const remembered = new WeakMap<SyntaxDocument, Declarations>();

interface Gathered {
  readonly byKind: ReadonlyMap<RefKind, ReadonlyMap<string, Declared>>;
  readonly repeated: readonly Repeated[];
}

const withoutRepeats = new SameParts<boolean>();

function gather(summaries: readonly UnitSummary[]): Gathered {
  const byKind = new Map<RefKind, Map<string, Declared>>();
  const repeated: Repeated[] = [];
  for (const summary of summaries) {
    for (const declared of summary.declared) {
      const { kind, id } = declared;
      const byId = byKind.get(kind) ?? new Map<string, Declared>();
      byKind.set(kind, byId);
      const first = byId.get(id);
      if (first === undefined) byId.set(id, declared);
      else if (id !== '') repeated.push({ first, again: declared });
    }
  }
  return { byKind, repeated };
}

interface MayHaveName {
  readonly id: Declared;
  readonly value: object;
}

function namesIn(document: SyntaxDocument): Map<Declared, string> {
  const names = new Map<Declared, string>();
  for (const { id, value } of entriesOf(document)) {
    const text = 'name' in value ? (value.name as { text?: string } | undefined)?.text : undefined;
    if (text !== undefined) names.set(id, text);
  }
  for (const phase of documentValue(document, 'procedure')?.phases ?? []) {
    for (const { step, title } of phase.steps ?? []) {
      if (step !== undefined && title !== undefined) names.set(step, title.text);
    }
  }
  return names;
}

function entriesOf(document: SyntaxDocument): readonly MayHaveName[] {
  const family = documentValue(document, 'family');
  const stores = documentValue(document, 'stores');
  const procedure = documentValue(document, 'procedure');
  const lists: readonly (readonly MayHaveName[] | undefined)[] = [
    family?.variants,
    family?.options,
    family?.identify,
    family?.parts,
    family?.assemblies,
    family?.balanceGroups,
    family?.checks,
    family?.limits,
    family?.readings,
    family?.figures,
    stores?.tools,
    stores?.consumables,
    procedure?.readings,
    procedure?.figures,
  ];
  return lists.flatMap((list) => list ?? []);
}
