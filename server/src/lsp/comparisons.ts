import { dependenciesOf } from '../core/analysis/dependencies';
import { documentValue } from '../core/analysis/documentUnit';
import type { Snapshot } from '../core/analysis/snapshot';
import type { Uri } from '../core/analysis/uri';
import { type FileSource, type SourceText, Workspace } from '../core/analysis/workspace';
import type { Change } from '../core/review/change';
import { stepsChanged } from '../core/review/changedSteps';
import { type Comparison, compareVersions } from '../core/review/compareVersions';
import type { Version } from '../core/review/version';
import type { ChangedSince } from '../core/sheet/build/buildContext';
import { documentKindOf } from '../core/syntax/documentKind';

/** An earlier text of a procedure and of all that it links to, to compare with what is written now. */
export interface EarlierText {
  /** What a person calls it. */
  readonly label: string;
  readonly version: Version;
}

/** What somebody compares: for each procedure the earlier text that it was compared with last. */
export class Comparisons {
  readonly #earlier = new Map<Uri, EarlierText>();
  readonly #made = new WeakMap<
    EarlierText,
    { readonly snapshot: Snapshot; readonly comparison: Comparison; readonly now: Version }
  >();

  /** The URIs of a procedure and of everything that can change what it prints. */
  sourcesOf(snapshot: Snapshot, uri: Uri): Uri[] {
    return [uri, ...dependenciesOf(snapshot, uri)];
  }

  async compareWith(uri: Uri, label: string, texts: ReadonlyMap<Uri, string>, now: Snapshot): Promise<void> {
    const workspace = new Workspace(now.roots);
    const read = (one: Uri): SourceText => {
      const text = texts.get(one);
      return text === undefined ? { is: 'missing' } : { is: 'text', text };
    };
    const source: FileSource = { read: async (one) => read(one) };
    await workspace.loadLinked(uri, source);
    const [then, today] = [revisionOf(workspace.snapshot, uri), revisionOf(now, uri)];
    const name = then === undefined || then === today ? label : `revision ${then}`;
    this.#earlier.set(uri, { label: name, version: versionOf(workspace.snapshot, [...texts.keys()]) });
  }

  stop(uri: Uri): void {
    this.#earlier.delete(uri);
  }

  of(uri: Uri): EarlierText | undefined {
    return this.#earlier.get(uri);
  }

  /** Compares with what is written now; made once for a snapshot. */
  comparisonOf(uri: Uri, snapshot: Snapshot): { readonly comparison: Comparison; readonly now: Version } | undefined {
    const earlier = this.#earlier.get(uri);
    if (earlier === undefined) return undefined;
    const known = this.#made.get(earlier);
    if (known?.snapshot === snapshot) return known;
    const now = versionOf(snapshot, this.sourcesOf(snapshot, uri));
    const made = { snapshot, now, comparison: compareVersions(earlier.version, now) };
    this.#made.set(earlier, made);
    return made;
  }

  /** The steps that a preview or a print marks, for one build. */
  changedSince(uri: Uri, snapshot: Snapshot, build: string): ChangedSince | undefined {
    const earlier = this.#earlier.get(uri);
    const made = this.comparisonOf(uri, snapshot);
    if (earlier === undefined || made === undefined) return undefined;
    const changed = stepsChanged(made.comparison, uri, build);
    if (changed === undefined) return undefined;
    const { revision, steps, gone } = changed;
    const since =
      revision === undefined
        ? { kind: 'text' as const, name: earlier.label }
        : { kind: 'revision' as const, name: revision };
    return { since, steps, gone };
  }

  /** Every change that stands in a document, in whichever comparison, with what it is compared with. */
  changesIn(uri: Uri, snapshot: Snapshot): { readonly change: Change; readonly since: string }[] {
    return [...this.#earlier].flatMap(([procedure, { label }]) => {
      const changes = this.comparisonOf(procedure, snapshot)?.comparison.changes ?? [];
      return changes.filter(({ after }) => after?.uri === uri).map((change) => ({ change, since: label }));
    });
  }
}

function revisionOf(snapshot: Snapshot, uri: Uri): string | undefined {
  const document = snapshot.document(uri);
  return document === undefined ? undefined : documentValue(document, 'procedure')?.revision?.text;
}

/** Names are whole URIs here: both texts stand in the same place. */
function versionOf(snapshot: Snapshot, uris: readonly Uri[]): Version {
  const documents = uris.filter((uri) => documentKindOf(uri) !== undefined && snapshot.document(uri) !== undefined);
  return { snapshot, root: rootOf(snapshot, documents), uris: documents.toSorted() };
}

function rootOf({ roots }: Snapshot, uris: readonly Uri[]): Uri {
  return roots.find((root) => uris.every((uri) => uri.startsWith(`${root}/`))) ?? '';
}
