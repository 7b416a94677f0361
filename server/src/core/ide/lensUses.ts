import { documentValue } from '../analysis/documentUnit';
import { pathsOf } from '../analysis/links';
import { fileNameOf, resolvePath, type Uri } from '../analysis/uri';
import type { RefKind } from '../model/shape';
import type { Item } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { LineIndex } from '../text/lineIndex';
import { type IdUse, idUsesIn } from './idUses';

/** A place where a thing is named: an id stands on one line. Lines and UTF-16 characters are counted from zero. */
export interface UsePlace {
  readonly uri: Uri;
  readonly line: number;
  readonly character: number;
  readonly length: number;
}

/** How often the steps of procedures name a thing. */
export interface Uses {
  readonly steps: number;
  readonly procedures: number;
  /** The first places, as many as a person can look through. */
  readonly places: readonly UsePlace[];
}

const MOST_PLACES = 500;

/** What one procedure uses, by kind and id: in how many steps, and where, as line, character and length by turns. */
interface UsesOfOne {
  readonly text: string;
  readonly byThing: ReadonlyMap<string, { readonly steps: number; readonly places: readonly number[] }>;
}

/**
 * Counts what the steps of procedures name of the things of a family, kit bill or stores. A folder may hold a thousand
 * procedures: each is read alone, nothing of it is kept but numbers, and it is read again only when its text is another.
 */
export class UseCounter {
  readonly #fileName: string;
  #known = new Map<Uri, UsesOfOne>();

  constructor(readonly uri: Uri) {
    this.#fileName = fileNameOf(uri);
  }

  /** Counts anew, with these procedures and no others. `read` is asked for those of which the text may link to the document. */
  async count(
    procedures: AsyncIterable<{ readonly uri: Uri; readonly text: string }>,
    read: (uri: Uri, text: string) => SyntaxDocument,
  ): Promise<void> {
    const known = new Map<Uri, UsesOfOne>();
    for await (const { uri, text } of procedures) {
      if (!text.includes(this.#fileName)) continue;
      const before = this.#known.get(uri);
      const mark = markOf(text);
      known.set(uri, before?.text === mark ? before : { text: mark, byThing: this.#usesIn(read(uri, text)) });
    }
    this.#known = known;
  }

  of(kind: RefKind, id: string): Uses {
    let [steps, procedures] = [0, 0];
    const places: UsePlace[] = [];
    for (const [uri, { byThing }] of this.#known) {
      const uses = byThing.get(`${kind} ${id}`);
      if (uses === undefined) continue;
      steps += uses.steps;
      procedures += 1;
      places.push(...placesFrom(uri, uses.places).slice(0, MOST_PLACES - places.length));
    }
    return { steps, procedures, places };
  }

  #usesIn(document: SyntaxDocument): UsesOfOne['byThing'] {
    const byThing = new Map<string, { steps: number; places: number[] }>();
    const phases = documentValue(document, 'procedure')?.phases;
    const links = pathsOf(document).some(({ path }) => resolvePath(document.uri, path) === this.uri);
    if (phases === undefined || !links) return byThing;
    const steps = new Set<Item>(phases.flatMap((phase) => (phase.steps ?? []).map(({ node }) => node.item)));
    const lines = new LineIndex(document.text);
    for (const [id, uses] of idUsesIn(document)) {
      const inSteps = uses.filter(({ range }) => steps.has(range.item));
      for (const kind of new Set(inSteps.flatMap(kindsOf))) {
        const meant = inSteps.filter((use) => kindsOf(use).includes(kind));
        const places = meant.flatMap(({ range }) => {
          const { start, end } = document.spanOf(range);
          const { line, character } = lines.position(start);
          return [line, character, end - start];
        });
        byThing.set(`${kind} ${id}`, { steps: new Set(meant.map(({ range }) => range.item)).size, places });
      }
    }
    return byThing;
  }
}

function placesFrom(uri: Uri, numbers: readonly number[]): UsePlace[] {
  const places: UsePlace[] = [];
  for (let i = 0; i + 2 < numbers.length; i += 3) {
    const [line = 0, character = 0, length = 0] = numbers.slice(i, i + 3);
    places.push({ uri, line, character, length });
  }
  return places;
}

/** Tells texts apart without keeping them: the length and a checksum (FNV-1a over the UTF-16 units). */
function markOf(text: string): string {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i += 1) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193);
  return `${text.length} ${sum >>> 0}`;
}

/** Kinds that lenses count, where a text names an id and not its kind. */
const COUNTED: readonly RefKind[] = ['part', 'tool', 'consumable', 'limit', 'check'];

function kindsOf(use: IdUse): readonly RefKind[] {
  if (use.is === 'named') return use.kinds;
  if (use.is !== 'mentioned') return [];
  return COUNTED.filter((kind) => use.kind === undefined || use.kind === kind);
}

/** `used in 3 steps`, and of how many procedures where it is more than one. */
export function usesText({ steps, procedures }: Uses): string {
  if (steps === 0) return 'used in no step';
  const inSteps = `used in ${steps} ${steps === 1 ? 'step' : 'steps'}`;
  return procedures > 1 ? `${inSteps} of ${procedures} procedures` : inSteps;
}
