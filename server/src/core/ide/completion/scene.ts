import { documentValue } from '../../analysis/documentUnit';
import { nestedInstructions } from '../../analysis/instructions';
import type { Names } from '../../analysis/names';
import type { Snapshot } from '../../analysis/snapshot';
import type { Uri } from '../../analysis/uri';
import type { Instruction, Step } from '../../model/generated/types';
import type { Node } from '../../syntax/node';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { CursorContext } from './context';
import type { PlaceShape } from './shapeAt';

/** A cursor in a document, with what it is known to stand in. */
export interface CompletionScene {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  readonly context: CursorContext;
  readonly place: PlaceShape;
  readonly names: Names;
  /** The files that a path may lead to. */
  readonly files: readonly Uri[];
}

/** The instruction around a cursor, as far as the document can be read there. */
export interface InstructionScene {
  readonly step: Step;
  /** The place of the step among all steps of the procedure. */
  readonly stepIndex: number;
  /** Its place among the entries of the step's `do`, whether or not it can be read itself. */
  readonly index: number;
  /** Where that entry starts in the text. */
  readonly at: number;
  /** The innermost instruction there. */
  readonly instruction: Instruction | undefined;
}

/** What was typed of the token, up to the cursor. */
export function typedIn({ text, token, offset }: CursorContext): string {
  return text.slice(token.start, offset);
}

/** Finds the step and the instruction that hold the cursor by where they start, since their ends move while one types. */
export function instructionScene({ document, context }: CompletionScene): InstructionScene | undefined {
  const stepAt = entryBehind(context, 'steps');
  const at = entryBehind(context, 'do');
  if (stepAt === undefined || at === undefined) return undefined;
  const startOf = (node: Node) => document.spanOf(node).start;
  const isHere = (node: Node, from: number) => from <= startOf(node) && startOf(node) <= context.offset;
  const steps = (documentValue(document, 'procedure')?.phases ?? []).flatMap((phase) => phase.steps ?? []);
  const stepIndex = steps.findIndex((one) => isHere(one.node, stepAt));
  const step = steps[stepIndex];
  if (step === undefined) return undefined;
  const entries = step.do ?? [];
  const index = entries.findIndex(({ node }) => startOf(node) >= at);
  const all = entries.flatMap(withNested);
  const instruction = all.findLast((one) => isHere(one.node, at));
  return { step, stepIndex, index: index < 0 ? entries.length : index, at, instruction };
}

function withNested(instruction: Instruction): Instruction[] {
  return [instruction, ...nestedInstructions(instruction).flatMap(withNested)];
}

/** Where the entry starts that the cursor stands in, of the first list behind a key. */
function entryBehind({ steps }: CursorContext, key: string): number | undefined {
  const entry = steps[steps.findIndex((step) => step.is === 'key' && step.name === key) + 1];
  return entry?.is === 'entry' ? entry.at : undefined;
}
