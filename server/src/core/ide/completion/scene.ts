import type { Names } from '../../analysis/names';
import { ProcedureView, type StepView } from '../../analysis/procedureView';
import type { Snapshot } from '../../analysis/snapshot';
import type { Uri } from '../../analysis/uri';
import type { Instruction } from '../../model/generated/types';
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
  readonly procedure: ProcedureView;
  readonly step: StepView;
  /** Its place among the entries of the step's `do`, whether or not it can be read itself. */
  readonly index: number;
  /** The innermost instruction there. */
  readonly instruction: Instruction | undefined;
}

/** What was typed of the token, up to the cursor. */
export function typedIn({ text, token, offset }: CursorContext): string {
  return text.slice(token.start, offset);
}

const views = new WeakMap<SyntaxDocument, { readonly snapshot: Snapshot; readonly view: ProcedureView | undefined }>();

/** The procedure of a document, made once for a reading and its surroundings, so that its walk is made once too. */
export function procedureOf(snapshot: Snapshot, document: SyntaxDocument): ProcedureView | undefined {
  const known = views.get(document);
  if (known?.snapshot === snapshot) return known.view;
  const view = ProcedureView.of(snapshot, document);
  views.set(document, { snapshot, view });
  return view;
}

/** Finds the step and the instruction that hold the cursor by where they start, since their ends move while one types. */
export function instructionScene({ snapshot, document, context }: CompletionScene): InstructionScene | undefined {
  const procedure = procedureOf(snapshot, document);
  const stepAt = entryBehind(context, 'steps');
  const doAt = entryBehind(context, 'do');
  if (procedure === undefined || stepAt === undefined || doAt === undefined) return undefined;
  const startOf = (node: Node) => document.spanOf(node).start;
  const isHere = (node: Node, from: number) => from <= startOf(node) && startOf(node) <= context.offset;
  const step = procedure.steps.find((one) => isHere(one.step.node, stepAt));
  if (step === undefined) return undefined;
  const entries = step.step.do ?? [];
  const index = entries.findIndex(({ node }) => startOf(node) >= doAt);
  const instruction = step.instructions.findLast((one) => isHere(one.instruction.node, doAt))?.instruction;
  return { procedure, step, index: index < 0 ? entries.length : index, instruction };
}

/** Where the entry starts that the cursor stands in, of the first list behind a key. */
function entryBehind({ steps }: CursorContext, key: string): number | undefined {
  const entry = steps[steps.findIndex((step) => step.is === 'key' && step.name === key) + 1];
  return entry?.is === 'entry' ? entry.at : undefined;
}
