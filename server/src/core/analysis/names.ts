import type { RefKind } from '../model/shape';
import type { Mention, PathRef } from '../model/values';
import type { Item } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { nearest } from '../text/near';
import { type Declarations, declarationsIn, type NamedThing } from './declarations';
import { documentValue } from './documentUnit';
import { followPath } from './links';
import type { NameQuestions } from './nameQuestions';
import type { Snapshot } from './snapshot';

export type { NamedThing } from './declarations';

/** What an id was found to name. */
export type NameLookup =
  | { readonly is: 'found'; readonly thing: NamedThing }
  /** Nothing has this id. `near`: what may have been meant, nearest first, at most three. */
  | { readonly is: 'unknown'; readonly near: readonly NamedThing[] }
  /** Nobody can tell: what may declare it could not be read, or is not linked from here. */
  | { readonly is: 'unreadable' };

/** What a mention in a text for people was found to name. */
export type MentionLookup =
  | NameLookup
  /** Things of several kinds share the id, and the mention does not say which is meant. */
  | { readonly is: 'ambiguous'; readonly things: readonly NamedThing[] };

/** The kinds that a text for people can name as `<id>`, in the order in which they are offered. */
export const MENTION_KINDS: readonly RefKind[] = [
  'part',
  'tool',
  'consumable',
  'limit',
  'reading',
  'check',
  'step',
  'figure',
];

const FAMILY_KINDS: readonly RefKind[] = [
  'part',
  'variant',
  'option',
  'outcome',
  'assembly',
  'balance-group',
  'check',
  'dimension',
  'limit',
  'reading',
  'figure',
];
const STORES_KINDS: readonly RefKind[] = ['tool', 'consumable'];
const PROCEDURE_KINDS: readonly RefKind[] = ['step', 'reading', 'figure'];
const OWN_KINDS: ReadonlySet<RefKind> = new Set([...PROCEDURE_KINDS, 'limit-or-reading']);
const NO_KINDS: ReadonlySet<RefKind> = new Set();

/** A document in which ids of some kinds are declared; `document` is undefined where it is named but cannot be read. */
interface Source {
  readonly kinds: readonly RefKind[];
  readonly document: SyntaxDocument | undefined;
}

/**
 * The ids that can be used in a document: its own, and those of what it links to. A family sees itself, a kit its
 * family, a procedure itself, its family and its stores.
 */
export class Names {
  readonly #sources: readonly Source[];
  /** Kinds that the procedure itself declares beside what it links to; none in other documents. */
  readonly #own: ReadonlySet<RefKind>;
  #questions: NameQuestions | undefined;
  readonly #things = new Map<RefKind, ReadonlyMap<string, NamedThing>>();
  readonly #sourcesOf = new Map<RefKind, readonly Declarations[]>();

  private constructor(document: SyntaxDocument, sources: readonly Source[]) {
    this.#sources = sources;
    this.#own = document.kind === 'procedure' ? OWN_KINDS : NO_KINDS;
  }

  /** The names of a document; the same object as long as neither the snapshot nor the document changes. */
  static of(snapshot: Snapshot, document: SyntaxDocument): Names {
    const known = remembered.get(snapshot) ?? new WeakMap<SyntaxDocument, Names>();
    remembered.set(snapshot, known);
    const names = known.get(document) ?? new Names(document, sourcesOf(snapshot, document));
    known.set(document, names);
    return names;
  }

  /** From now on, writes down what is asked of the ids that the procedure declares itself; undefined ends it. */
  writeDown(questions: NameQuestions | undefined): void {
    this.#questions = questions;
  }

  /** Whether something has the id, and in which kind of document: all that the answer to a question comes to. */
  answer(kind: string, id: string): string {
    return this.#thing(kind as RefKind, id)?.document.kind ?? '';
  }

  /** Everything of a kind by id: what completion offers. `limit-or-reading` gives both. */
  all(kind: RefKind): ReadonlyMap<string, NamedThing> {
    if (this.#questions !== undefined && this.#own.has(kind)) this.#questions.all = true;
    return this.#all(kind);
  }

  #all(kind: RefKind): ReadonlyMap<string, NamedThing> {
    const known = this.#things.get(kind);
    if (known !== undefined) return known;
    const things = new Map<string, NamedThing>();
    for (const one of kindsWithin(kind)) {
      for (const { document, kinds } of this.#sources) {
        const found = document === undefined || !kinds.includes(one) ? [] : declarationsIn(document).all(one);
        for (const [id, thing] of found) if (!things.has(id)) things.set(id, thing);
      }
    }
    this.#things.set(kind, things);
    return things;
  }

  find(kind: RefKind, id: string): NamedThing | undefined {
    const thing = this.#thing(kind, id);
    if (this.#own.has(kind)) this.#questions?.found(kind, id, thing?.document.kind ?? '');
    return thing;
  }

  #thing(kind: RefKind, id: string): NamedThing | undefined {
    for (const one of kindsWithin(kind)) {
      for (const declarations of this.#declaring(one)) {
        const thing = declarations.find(one, id);
        if (thing !== undefined) return thing;
      }
    }
    return undefined;
  }

  #declaring(kind: RefKind): readonly Declarations[] {
    const known = this.#sourcesOf.get(kind);
    if (known !== undefined) return known;
    const declaring = this.#sources.flatMap(({ document, kinds }) =>
      document === undefined || !kinds.includes(kind) ? [] : [declarationsIn(document)],
    );
    this.#sourcesOf.set(kind, declaring);
    return declaring;
  }

  lookUp(kind: RefKind, id: string): NameLookup {
    const thing = this.find(kind, id);
    if (thing !== undefined) return { is: 'found', thing };
    return kindsWithin(kind).some((one) => this.#mayBeDeclared(one, id))
      ? { is: 'unreadable' }
      : { is: 'unknown', near: this.near([kind], id) };
  }

  /** Looks up `<id>` among all kinds that a text can name, `<kind/id>` in its kind. */
  lookUpMention(mention: Mention): MentionLookup {
    const { id, kind: written } = mention;
    const kind = MENTION_KINDS.find((one) => one === written);
    if (written !== undefined) return kind === undefined ? this.#wrongKind(id) : this.lookUp(kind, id);
    const things = this.mentionable(id);
    const [thing, second] = things;
    if (thing !== undefined) return second === undefined ? { is: 'found', thing } : { is: 'ambiguous', things };
    const near = this.near(MENTION_KINDS, id);
    const misspelt = near.length > 0;
    // A family speaks of tools that it cannot see, so there only what looks like a slip is held to be one.
    const unseen = MENTION_KINDS.some((one) => (misspelt ? this.#isHeldBack(one, id) : this.#mayBeDeclared(one, id)));
    return unseen ? { is: 'unreadable' } : { is: 'unknown', near };
  }

  /** Everything that `<id>` in a text may mean. */
  mentionable(id: string): NamedThing[] {
    const things: NamedThing[] = [];
    for (const kind of MENTION_KINDS) {
      const thing = this.find(kind, id);
      if (thing !== undefined) things.push(thing);
    }
    return things;
  }

  /** What a misspelt id of one of these kinds may have meant, nearest first, at most three. */
  near(kinds: readonly RefKind[], id: string): NamedThing[] {
    const known = new Map(kinds.flatMap((kind) => [...this.all(kind)]));
    return nearest(id, known.keys()).flatMap((one) => known.get(one) ?? []);
  }

  #wrongKind(id: string): MentionLookup {
    const near = this.mentionable(id);
    return { is: 'unknown', near };
  }

  /** Whether an id that was not found may be declared where nobody can look. */
  #mayBeDeclared(kind: RefKind, id: string): boolean {
    const sources = this.#sources.filter((source) => source.kinds.includes(kind));
    return sources.length === 0 || this.#isHeldBack(kind, id);
  }

  /** Whether a document that declares this kind could not be read, or not in the place that holds the id. */
  #isHeldBack(kind: RefKind, id: string): boolean {
    if (this.#questions !== undefined && this.#own.has(kind)) this.#questions.torn = true;
    return this.#sources.some(
      ({ kinds, document }) =>
        kinds.includes(kind) &&
        (document === undefined || brokenItems(document).some((item) => item.text.includes(id))),
    );
  }
}

/** Kept with the snapshot: a document outlives many of them, and must not hold what is gone. */
const remembered = new WeakMap<Snapshot, WeakMap<SyntaxDocument, Names>>();

const LIMIT_OR_READING: readonly RefKind[] = ['limit', 'reading'];

/** A kind and what it stands for, as lists made once, for an id is looked up at every turn. */
const WITHIN: ReadonlyMap<RefKind, readonly RefKind[]> = new Map(
  [...FAMILY_KINDS, ...STORES_KINDS, ...PROCEDURE_KINDS].map((kind) => [kind, [kind]]),
);

function kindsWithin(kind: RefKind): readonly RefKind[] {
  return kind === 'limit-or-reading' ? LIMIT_OR_READING : (WITHIN.get(kind) ?? [kind]);
}

function sourcesOf(snapshot: Snapshot, document: SyntaxDocument): Source[] {
  const linked = (path: PathRef): SyntaxDocument | undefined => {
    const target = followPath(snapshot, document.uri, path);
    return target.is === 'document' && target.document.root !== undefined ? target.document : undefined;
  };
  const familySource = (path: PathRef | undefined): Source => ({
    kinds: FAMILY_KINDS,
    document: path === undefined ? undefined : linked(path),
  });
  switch (document.kind) {
    case 'family':
      return [{ kinds: FAMILY_KINDS, document }];
    case 'stores':
      return [{ kinds: STORES_KINDS, document }];
    case 'kit':
      return [familySource(documentValue(document, 'kit')?.family)];
    case 'procedure': {
      const value = documentValue(document, 'procedure');
      const stores = (value?.stores ?? []).map((path): Source => ({ kinds: STORES_KINDS, document: linked(path) }));
      return [{ kinds: PROCEDURE_KINDS, document }, familySource(value?.family), ...stores];
    }
    case 'settings':
      return [];
  }
}

/** The items of a document in which something may be declared that could not be read. */
function brokenItems(document: SyntaxDocument): readonly Item[] {
  return document.items.filter((item) => item.problems.some((problem) => problem.kind === 'broken'));
}
