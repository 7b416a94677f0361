import { documentValue } from '../analysis/documentUnit';
import { ProcedureView } from '../analysis/procedureView';
import type { Snapshot } from '../analysis/snapshot';
import { type BuildSet, countBuilds } from '../builds';
import type { RefKind } from '../model/shape';
import type { Declared, Entry } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';

/** What stands above a line: how often a thing is used, which is counted when it comes into sight, or a text. */
export type Lens =
  | { readonly is: 'uses'; readonly span: Span; readonly kind: RefKind; readonly id: string }
  | { readonly is: 'builds'; readonly span: Span; readonly text: string };

/** Which lenses somebody wants to see. */
export interface LensesWanted {
  readonly uses: boolean;
  readonly builds: boolean;
}

/** The lenses of a document, in the order of the text. Nothing is looked for in other documents yet. */
export function lensesOf(snapshot: Snapshot, document: SyntaxDocument, wanted: LensesWanted): Lens[] {
  return [...(wanted.uses ? usesOf(document) : []), ...(wanted.builds ? buildsOf(snapshot, document) : [])];
}

function usesOf(document: SyntaxDocument): Lens[] {
  const { parts = [], limits = [], checks = [] } = documentValue(document, 'family') ?? {};
  const { tools = [], consumables = [] } = documentValue(document, 'stores') ?? {};
  const declared = [parts, limits, checks, tools, consumables].flatMap((entries: readonly Entry<unknown>[]) =>
    entries.map(({ id }) => id),
  );
  return [...declared.map((id) => usesOfId(document, id)), ...usesOfLines(document)];
}

function usesOfId(document: SyntaxDocument, { kind, id, node }: Declared): Lens {
  return { is: 'uses', span: document.spanOf(node), kind, id };
}

/** A line of a kit is used where its part is. */
function usesOfLines(document: SyntaxDocument): Lens[] {
  return (documentValue(document, 'kit')?.lines ?? []).flatMap(({ part }): Lens[] =>
    part === undefined ? [] : [{ is: 'uses', span: document.spanOf(part.range), kind: 'part', id: part.id }],
  );
}

/** A step that some builds of the procedure do without. */
function buildsOf(snapshot: Snapshot, document: SyntaxDocument): Lens[] {
  const procedure = document.kind === 'procedure' ? ProcedureView.of(snapshot, document) : undefined;
  if (procedure?.family === undefined) return [];
  const { space } = procedure;
  const counts = new Map<BuildSet, number>();
  const countOf = (set: BuildSet): number => {
    const count = counts.get(set) ?? countBuilds(set, space);
    counts.set(set, count);
    return count;
  };
  return procedure.steps.flatMap(({ step, where }): Lens[] => {
    if (where.isEverything || step.step === undefined) return [];
    const [count, all] = [countOf(where), countOf(space.everything)];
    // What only the bench can tell leaves the number of builds as it is.
    if (count === all) return [];
    return [{ is: 'builds', span: document.spanOf(step.step.node), text: buildsText(count, all) }];
  });
}

/** `holds for 1 of 4 builds`. */
function buildsText(count: number, all: number): string {
  if (count === 0) return 'holds for no build';
  return `holds for ${count} of ${all} ${all === 1 ? 'build' : 'builds'}`;
}
