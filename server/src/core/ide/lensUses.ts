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
const NO_USES: Uses = { steps: 0, procedures: 0, places: [] };

/**
 * Counts what the steps of procedures name of the things of a family, kit bill or stores. Procedures are added one by one,
 * each read alone, and nothing of them is kept but numbers: a folder may hold a thousand.
 */
export class UseCounter {
  readonly #fileName: string;
  readonly #uses = new Map<string, { steps: number; procedures: number; places: UsePlace[] }>();

  constructor(readonly uri: Uri) {
    this.#fileName = fileNameOf(uri);
  }

  /** Whether a text can be one that links to the document; others need not be read. */
  mayRead(text: string): boolean {
    return text.includes(this.#fileName);
  }

  add(document: SyntaxDocument): void {
    const phases = documentValue(document, 'procedure')?.phases;
    const links = pathsOf(document).some(({ path }) => resolvePath(document.uri, path) === this.uri);
    if (phases === undefined || !links) return;
    const steps = new Set<Item>(phases.flatMap((phase) => (phase.steps ?? []).map(({ node }) => node.item)));
    const lines = new LineIndex(document.text);
    for (const [id, uses] of idUsesIn(document)) {
      const inSteps = uses.filter(({ range }) => steps.has(range.item));
      for (const kind of new Set(inSteps.flatMap(kindsOf))) {
        const meant = inSteps.filter((use) => kindsOf(use).includes(kind));
        this.#count(`${kind} ${id}`, document, meant, lines);
      }
    }
  }

  of(kind: RefKind, id: string): Uses {
    return this.#uses.get(`${kind} ${id}`) ?? NO_USES;
  }

  #count(key: string, document: SyntaxDocument, uses: readonly IdUse[], lines: LineIndex): void {
    const known = this.#uses.get(key) ?? { steps: 0, procedures: 0, places: [] };
    this.#uses.set(key, known);
    known.steps += new Set(uses.map(({ range }) => range.item)).size;
    known.procedures += 1;
    for (const { range } of uses.slice(0, Math.max(0, MOST_PLACES - known.places.length))) {
      const { start, end } = document.spanOf(range);
      known.places.push({ uri: document.uri, ...lines.position(start), length: end - start });
    }
  }
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
