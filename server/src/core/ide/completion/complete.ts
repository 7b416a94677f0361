import { Names } from '../../analysis/names';
import type { Snapshot } from '../../analysis/snapshot';
import type { Uri } from '../../analysis/uri';
import type { Shape } from '../../model/shape';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { Span } from '../../text/span';
import type { Candidate, Completions } from './candidate';
import { type CursorContext, cursorContext } from './context';
import { keyCandidates } from './keys';
import { mentionCandidates, openMention } from './mentions';
import { type CompletionScene, typedIn } from './scene';
import { instructionPlace, type PlaceShape, shapeAt } from './shapeAt';
import { unitCandidates, unitPlace } from './units';
import { conditionValues, scalarCandidates } from './values';

export interface CompletionRequest {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  readonly offset: number;
  /** The files that a path may lead to; only asked for where `wantsFiles` says so. */
  readonly files?: readonly Uri[];
}

/** Everything that can be written at an offset, the best first; undefined where nothing can be chosen. */
export function completionsAt(request: CompletionRequest): Completions | undefined {
  const { snapshot, document, offset, files = [] } = request;
  const context = cursorContext(document.text, offset);
  const place = context === undefined ? undefined : shapeAt(document.kind, context);
  if (context === undefined || place === undefined) return undefined;
  const scene = { snapshot, document, context, place, names: Names.of(snapshot, document), files };
  const mention = takesText(scene.place.shape) ? openMention(context) : undefined;
  if (mention !== undefined) return replacing(scene, mention.span, mentionCandidates(scene, mention));
  if (context.layout === 'text') return undefined;
  return context.wants === 'key' ? replacing(scene, context.token, keyCandidates(scene)) : valuesAt(scene);
}

/** Whether the path of a file is wanted at an offset, so that the files have to be looked for. */
export function wantsFiles(document: SyntaxDocument, offset: number): boolean {
  const context = cursorContext(document.text, offset);
  const shape = context === undefined ? undefined : shapeAt(document.kind, context)?.shape;
  return shape?.as === 'scalar' && shape.scalar.is === 'path';
}

function valuesAt(scene: CompletionScene): Completions | undefined {
  const { context } = scene;
  const shape = valueShape(scene.place.shape);
  const scalar = shape.as === 'scalar' || shape.as === 'by-build' ? shape.scalar : undefined;
  if (scalar?.is === 'quantity') {
    const unit = unitPlace(scene);
    if (unit !== undefined) return replacing(scene, unit.span, unitCandidates(scene, scalar.dimension, unit));
  }
  // Behind a word that is complete nothing follows but in a text.
  if (scalar?.is !== 'text' && /\S\s+$/.test(typedIn(context))) return undefined;
  const isList = context.layout === 'own-line' && isListed(scene.place.shape);
  const candidates = [...scalarsAt(scene, shape), ...mapsAt(scene)];
  return replacing(scene, context.token, isList ? candidates.map(asEntry) : candidates);
}

function isListed(shape: Shape): boolean {
  return shape.as === 'list' || ('many' in shape && shape.many && shape.as !== 'prose');
}

/** The keys of a map that may begin at the cursor. */
function mapsAt(scene: CompletionScene): readonly Candidate[] {
  const { context, place } = scene;
  if (context.layout !== 'behind-dash' && context.layout !== 'own-line') return [];
  // A text for people is seldom a map, and its keys would be in the way of its words.
  if (context.quote !== '' || place.shape.as === 'prose' || isSentence(typedIn(context))) return [];
  const inside = context.layout === 'own-line' ? entryPlace(scene) : instructionHere(scene, place);
  return inside === undefined ? [] : keyCandidates({ ...scene, ...inside });
}

/** Keys are in small letters and have no blanks; anything else is the beginning of a sentence. */
function isSentence(typed: string): boolean {
  return /\s|^[^a-z]/.test(typed);
}

function instructionHere({ context }: CompletionScene, place: PlaceShape): Pick<CompletionScene, 'place'> | undefined {
  const here = place.shape.as === 'instruction' ? instructionPlace(context.keys()) : place;
  return here === undefined ? undefined : { place: here };
}

/** On a line of its own, below a key that holds a list, an entry begins with a dash; then the keys stand two further right. */
function entryPlace(scene: CompletionScene): Pick<CompletionScene, 'place' | 'context'> | undefined {
  const { context, place, document } = scene;
  if (place.shape.as !== 'list') {
    const here = instructionHere(scene, place);
    return here === undefined ? undefined : { ...here, context };
  }
  const steps = [...context.steps, { is: 'entry', at: context.token.start, others: () => [] } as const];
  const inside: CursorContext = {
    ...context,
    steps,
    layout: 'behind-dash',
    column: context.column + 2,
    keys: () => [],
  };
  const found = shapeAt(document.kind, { ...inside, wants: 'key' });
  return found === undefined ? undefined : { place: found, context: inside };
}

function scalarsAt(scene: CompletionScene, shape: Shape): readonly Candidate[] {
  switch (shape.as) {
    case 'scalar':
    case 'by-build':
      return scalarCandidates(scene, shape.scalar);
    case 'condition':
      return conditionValues(scene);
    case 'counted':
      return scalarCandidates(scene, { is: 'ref', kind: shape.kind });
    default:
      return [];
  }
}

/** What a map may be written as for short: its one key that counts. */
function valueShape(shape: Shape): Shape {
  const short = shape.as === 'object' && shape.shorthand !== undefined ? shape.keys[shape.shorthand]?.shape : undefined;
  return short ?? shape;
}

function takesText(shape: Shape): boolean {
  const short = valueShape(shape);
  if (short.as === 'scalar') return short.scalar.is === 'prose' || short.scalar.is === 'ref-or-prose';
  return short.as === 'prose' || short.as === 'instruction';
}

function asEntry(candidate: Candidate): Candidate {
  const { label, text = label, snippet, filter = label } = candidate;
  const entry = { ...candidate, text: `- ${text}`, filter };
  return snippet === undefined ? entry : { ...entry, snippet: `- ${snippet}` };
}

function replacing({ context }: CompletionScene, span: Span, found: readonly Candidate[]): Completions | undefined {
  if (found.length === 0) return undefined;
  // The sort keeps the given order of what is ranked alike.
  const candidates = [...found].sort((a, b) => (a.rank ?? 0) - (b.rank ?? 0));
  const isTight =
    span.start === context.offset && typedIn(context) === '' && context.text.charAt(span.start - 1) === ':';
  return {
    replace: span,
    insert: { start: span.start, end: Math.min(span.end, context.offset) },
    candidates: isTight && context.quote === '' ? candidates.map(behindColon) : candidates,
  };
}

/** A blank belongs between a colon and its value. */
function behindColon(candidate: Candidate): Candidate {
  const { label, text = label } = candidate;
  const spaced = { ...candidate, text: ` ${text}` };
  return candidate.snippet === undefined ? spaced : { ...spaced, snippet: ` ${candidate.snippet}` };
}
