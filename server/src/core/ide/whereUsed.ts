import { declarationsIn, type NamedThing } from '../analysis/declarations';
import { documentUnit } from '../analysis/documentUnit';
import { ProcedureView, type StepView } from '../analysis/procedureView';
import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import { describeBuilds } from '../builds';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { declarationOf, type IdTarget, idOfTarget, keyOfTarget } from './idTarget';
import { referencesIn } from './references';

/** Everything that depends on one thing: a part, a tool, a consumable, a kit, a limit, a whole document. */
export interface UsedThing {
  readonly target: IdTarget;
  /** For people: `part compressor nut`. */
  readonly name: string;
  /** Where it is declared; of a document, its beginning. */
  readonly at: { readonly uri: Uri; readonly span: Span };
  readonly users: readonly User[];
}

/** A document that names the thing. */
export interface User {
  readonly uri: Uri;
  /** Its own number, id or name. */
  readonly document: string;
  readonly kind: SyntaxDocument['kind'];
  readonly places: readonly UsePlace[];
}

export interface UsePlace {
  readonly span: Span;
  /** Id of the step, in a procedure. */
  readonly step: string | undefined;
  /** The builds of the step in words; empty where it holds for all. */
  readonly builds: string;
}

/**
 * The things that a person may mean by a word: an id, `kind/id`, a number of a part, kit or procedure, or the path of a
 * document, in all documents of a snapshot.
 */
export function thingsNamed(snapshot: Snapshot, word: string): IdTarget[] {
  const [, kind, id = word] = /^([a-z-]+)\/([a-z][a-z0-9-]+)$/.exec(word) ?? [];
  const found = new Map<string, IdTarget>();
  for (const document of documentsIn(snapshot)) {
    for (const target of namedIn(document, word, kind, id)) found.set(keyOfTarget(target), target);
  }
  return [...found.values()];
}

function documentsIn(snapshot: Snapshot): SyntaxDocument[] {
  return [...snapshot.uris].flatMap((uri) => snapshot.document(uri) ?? []);
}

function namedIn(document: SyntaxDocument, word: string, kind: string | undefined, id: string): IdTarget[] {
  if (document.uri.endsWith(`/${word}`) || ownNumber(document) === word) return [{ is: 'file', uri: document.uri }];
  const things: NamedThing[] = [];
  const declarations = declarationsIn(document);
  for (const one of declarations.kinds) {
    const thing = declarations.find(one, id);
    if (thing !== undefined && one !== 'step' && (kind === undefined || kind === one)) things.push(thing);
    if (one === 'part') for (const part of declarations.all(one).values()) if (hasNumber(part, word)) things.push(part);
  }
  return things.map((thing) => ({ is: 'thing', thing }));
}

/** The number that a kit or a procedure is known by, or the id of a family. */
function ownNumber(document: SyntaxDocument): string | undefined {
  const own = (documentUnit(document)?.value as Readonly<Record<string, unknown>> | undefined)?.[document.kind];
  const { text, id } = (own ?? {}) as { text?: string; id?: string };
  return text ?? id;
}

/** A part is known by its number, on whichever build. */
function hasNumber({ document, id }: NamedThing, number: string): boolean {
  const value = documentUnit(document)?.value as
    | { parts?: readonly { id: { id: string }; value: unknown }[] }
    | undefined;
  const part = value?.parts?.find((one) => one.id.id === id)?.value as { number?: unknown } | undefined;
  const written = part?.number as
    | { is: 'one'; value: { text: string } }
    | { is: 'cases'; cases: readonly { value: { text: string } }[] }
    | undefined;
  if (written === undefined) return false;
  return written.is === 'one'
    ? written.value?.text === number
    : written.cases.some(({ value }) => value.text === number);
}

/** Everything in the snapshot that depends on a thing; of a document, everything that links to it. */
export function whereUsed(snapshot: Snapshot, target: IdTarget): UsedThing {
  const users = documentsIn(snapshot).flatMap((document) => userOf(snapshot, document, target) ?? []);
  return { target, name: nameOf(snapshot, target), at: placeOf(target), users };
}

function userOf(snapshot: Snapshot, document: SyntaxDocument, target: IdTarget): User | undefined {
  const references = referencesIn(snapshot, document, [target]).filter(({ declares }) => !declares);
  if (references.length === 0) return undefined;
  const steps = stepsBySpan(snapshot, document);
  const places = references.map(({ span }): UsePlace => {
    const found = steps.find((one) => span.start >= one.span.start && span.end <= one.span.end);
    return {
      span,
      step: found?.view.id,
      builds: found === undefined ? '' : describeBuilds(found.view.where, found.space),
    };
  });
  return { uri: document.uri, document: ownNumber(document) ?? '', kind: document.kind, places };
}

interface SpannedStep {
  readonly view: StepView;
  readonly span: Span;
  readonly space: ProcedureView['space'];
}

function stepsBySpan(snapshot: Snapshot, document: SyntaxDocument): SpannedStep[] {
  const view = ProcedureView.of(snapshot, document);
  if (view === undefined) return [];
  return view.steps.map((step) => ({ view: step, span: document.spanOf(step.step.node), space: view.space }));
}

function nameOf(snapshot: Snapshot, target: IdTarget): string {
  if (target.is === 'file') {
    const document = snapshot.document(target.uri);
    const number = document === undefined ? undefined : ownNumber(document);
    return document === undefined ? target.uri : `${document.kind} ${number ?? ''}`.trim();
  }
  const { kind, document } = target.is === 'thing' ? target.thing : target.of;
  const id = idOfTarget(target) ?? '';
  const name = nameIn(document, kind, id);
  return `${kind.replaceAll('-', ' ')} ${name === undefined || name === id ? id : `${id} (${name})`}`;
}

function nameIn(document: SyntaxDocument, kind: string, id: string): string | undefined {
  const unit = documentUnit(document);
  const thing = declarationsIn(document).find(kind as NamedThing['kind'], id);
  if (unit === undefined || thing === undefined) return undefined;
  const entries = Object.values(unit.value as Readonly<Record<string, unknown>>)
    .filter(Array.isArray)
    .flat();
  const entry = entries.find((one) => (one as { id?: unknown }).id === thing.declared) as {
    value?: { name?: { text?: string } };
  };
  return entry?.value?.name?.text;
}

function placeOf(target: IdTarget): { uri: Uri; span: Span } {
  const declaration = declarationOf(target);
  if (target.is === 'file' || declaration === undefined)
    return { uri: target.is === 'file' ? target.uri : '', span: { start: 0, end: 0 } };
  return { uri: declaration.document.uri, span: declaration.document.spanOf(declaration.range) };
}
