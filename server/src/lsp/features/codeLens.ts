import type { CodeLens, Command } from 'vscode-languageserver';
import type { Uri } from '../../core/analysis/uri';
import { lensesOf } from '../../core/ide/codeLens';
import { UseCounter, type UsePlace, usesText } from '../../core/ide/lensUses';
import type { RefKind } from '../../core/model/shape';
import { earlierLenses } from '../../core/review/earlierLenses';
import { documentKindOf } from '../../core/syntax/documentKind';
import { readDocument, type SyntaxDocument } from '../../core/syntax/readDocument';
import { ReadingMemo } from '../../core/syntax/readingMemo';
import { linesOf, toCoreUri, toRange } from '../convert';
import { currentDocument } from '../currentDocument';
import type { Feature } from '../feature';
import { type FolderText, folderTexts } from '../folderTexts';
import type { Session } from '../session';

/** The command by which a client shows the places that a lens counts; not every client has it. */
const SHOW_USES = 'witnessmark.showUses';

/** What a lens that is still to be counted takes along. */
interface LensData {
  readonly uri: string;
  readonly kind: RefKind;
  readonly id: string;
}

/** How often things are used, above where they are declared, and for which builds a step is. */
export const codeLens: Feature = {
  register(connection, session) {
    const counts = new Counts(session);
    connection.onCodeLens(({ textDocument }, token) =>
      session.answer(token, () => lensesFor(session, textDocument.uri)),
    );
    connection.onCodeLensResolve((lens, token) => session.answer(token, () => resolved(session, counts, lens)));
  },
};

async function lensesFor(session: Session, clientUri: string): Promise<CodeLens[]> {
  const current = await currentDocument(session, clientUri);
  if (current === undefined) return [];
  const { lenses } = await session.configuration(current.document.uri);
  const lines = linesOf(current.document);
  const earlier = earlierLenses(session.comparisons.changesIn(current.document.uri, current.snapshot));
  const asked = lensesOf(current.snapshot, current.document, lenses).map((lens): CodeLens => {
    const range = toRange(lines, lens.span);
    if (lens.is === 'builds') return { range, command: { title: lens.text, command: '' } };
    const data: LensData = { uri: clientUri, kind: lens.kind, id: lens.id };
    return { range, data };
  });
  const was = earlier.map(({ span, text }) => ({ range: toRange(lines, span), command: { title: text, command: '' } }));
  return [...asked, ...was];
}

async function resolved(session: Session, counts: Counts, lens: CodeLens): Promise<CodeLens> {
  const data = lens.data as LensData | undefined;
  if (data === undefined) return lens;
  const counter = await counts.of(data.uri);
  const uses = counter.of(data.kind, data.id);
  return { ...lens, command: commandOf(session, lens, data, usesText(uses), uses.places) };
}

function commandOf(
  session: Session,
  { range }: CodeLens,
  { uri }: LensData,
  title: string,
  places: readonly UsePlace[],
): Command {
  if (!session.showsUses || places.length === 0) return { title, command: '' };
  const locations = places.map((place) => ({
    uri: session.clientUriOf(place.uri),
    range: {
      start: { line: place.line, character: place.character },
      end: { line: place.line, character: place.character + place.length },
    },
  }));
  return { title, command: SHOW_USES, arguments: [uri, range.start, locations] };
}

/**
 * The uses in all procedures of the folders, counted once for a document. All lenses of a screen ask for the same count, and
 * it stands until a procedure changes; then only those that did are read again.
 */
class Counts {
  readonly #session: Session;
  readonly #known = new Map<Uri, { readonly counter: UseCounter; state: string; counted: Promise<void> }>();

  constructor(session: Session) {
    this.#session = session;
  }

  async of(clientUri: string): Promise<UseCounter> {
    const uri = toCoreUri(clientUri);
    const state = this.#stateNow();
    const known = this.#known.get(uri) ?? { counter: new UseCounter(uri), state: '', counted: Promise.resolve() };
    this.#known.set(uri, known);
    if (known.state !== state) {
      known.state = state;
      // Where files could not be read the last time, they may be now.
      const before = known.counted.catch(() => {});
      known.counted = before.then(() => known.counter.count(this.#procedures(), read));
    }
    await known.counted;
    return known.counter;
  }

  async *#procedures(): AsyncGenerator<FolderText> {
    for await (const one of folderTexts(this.#session)) if (documentKindOf(one.uri) === 'procedure') yield one;
  }

  /** Which procedures are open in which version, and how often files changed on disk. */
  #stateNow(): string {
    const { openUris, fileChanges, folders } = this.#session;
    const open = openUris.filter((uri) => documentKindOf(uri) === 'procedure');
    const versions = open.map((uri) => `${uri} ${this.#session.openDocument(uri)?.version}`);
    return [fileChanges, ...folders, ...versions].join('\n');
  }
}

function read(uri: Uri, text: string): SyntaxDocument {
  return readDocument(uri, 'procedure', text, new ReadingMemo());
}
