import type { Snapshot } from '../analysis/snapshot';
import type { Uri } from '../analysis/uri';
import { type Node, pairOf } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { declarationOf, type IdTarget, targetsOf } from './idTarget';
import { idUseAt } from './idUses';
import { nodeSpan } from './nodeSpan';

/** Where something is declared. */
export interface Definition {
  readonly uri: Uri;
  /** The id there; the start of a file. */
  readonly span: Span;
  /** All that is said of it there: the entry, the step. */
  readonly whole: Span;
}

/** What is declared elsewhere, and the id that led there. */
export interface DefinitionLink {
  readonly from: Span;
  readonly definitions: readonly Definition[];
}

/** Where the id at an offset is declared; where it is a path, the file. Undefined where no id stands, or nothing has it. */
export function definitionAt(snapshot: Snapshot, document: SyntaxDocument, offset: number): DefinitionLink | undefined {
  const use = idUseAt(document, offset);
  if (use === undefined) return undefined;
  const definitions = targetsOf(snapshot, document, use).map(definitionOf);
  return definitions.length === 0 ? undefined : { from: document.spanOf(use.range), definitions };
}

function definitionOf(target: IdTarget): Definition {
  const declaration = declarationOf(target);
  if (declaration === undefined || target.is === 'file') {
    const start = { start: 0, end: 0 };
    return { uri: target.is === 'file' ? target.uri : '', span: start, whole: start };
  }
  const { document, range } = declaration;
  const span = document.spanOf(range);
  return { uri: document.uri, span, whole: target.is === 'thing' ? entrySpan(document, target, span) : span };
}

/** From the id to the end of its entry. The id of a step or of a family stands within what it names. */
function entrySpan(document: SyntaxDocument, { thing }: IdTarget & { is: 'thing' }, span: Span): Span {
  const { node } = thing.declared;
  const { root } = document;
  for (const { value } of root?.pairs ?? []) {
    const pair = value?.kind === 'map' ? value.pairs.find(({ key }) => key === node) : undefined;
    if (pair !== undefined) return { start: span.start, end: nodeSpan(document, pair.value ?? pair.key).end };
  }
  if (thing.kind !== 'step' || root === undefined) return span;
  const phases = pairOf(root, 'phases')?.value;
  const steps = phases?.kind === 'list' ? phases.items.flatMap((phase) => stepsIn(phase)) : [];
  const step = steps.find((one) => one.kind === 'map' && pairOf(one, 'step')?.value === node);
  return step === undefined ? span : nodeSpan(document, step);
}

function stepsIn(phase: Node): readonly Node[] {
  const steps = phase.kind === 'map' ? pairOf(phase, 'steps')?.value : undefined;
  return steps?.kind === 'list' ? steps.items : [];
}
