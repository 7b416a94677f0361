import type { BuildSet } from '../../../builds';
import type { Node } from '../../../syntax/node';
import { blockOf, type EntryLines, insertion, move } from './block';
import type { Candidate } from './candidate';
import { conditionsBeside } from './conditions';
import type { Place, Scene } from './scene';

/** Whether a new instruction serves all builds of its neighbour, or had better serve those of the failure alone. */
export type Serves = 'neighbour' | 'failing';

/** New instructions before or behind another, each with the conditions that they need there. */
export function insert(
  scene: Scene,
  title: string,
  side: 'before' | 'behind',
  beside: Place | undefined,
  entries: readonly EntryLines[],
  serves: Serves = 'neighbour',
  where: BuildSet = scene.failure.where,
): Candidate[] {
  const { document } = scene.procedure;
  const block = beside === undefined ? undefined : blockOf(document, beside.view.instruction.node);
  if (beside === undefined || block === undefined) return [];
  return conditionsBeside(scene, beside, serves === 'failing', where).map((conditions) => ({
    title,
    edits: [
      insertion(
        document,
        block,
        side,
        entries.map((entry) => [...entry, ...conditions]),
      ),
    ],
  }));
}

/** An instruction that names one part alone, in another place. */
export function moveInstruction(
  { procedure: { document } }: Scene,
  title: string,
  moved: Place | undefined,
  side: 'before' | 'behind',
  beside: Place | undefined,
): Candidate[] {
  if (moved === undefined || beside === undefined || moved === beside) return [];
  return moveNode(document, title, moved.view.instruction.node, side, beside.view.instruction.node);
}

/** A whole step in another place. */
export function moveStep(
  { procedure: { document } }: Scene,
  moved: Place | undefined,
  side: 'before' | 'behind',
  beside: Place | undefined,
): Candidate[] {
  if (moved === undefined || beside === undefined || moved.step === beside.step) return [];
  const title = `Move step "${titleOf(moved)}" ${side === 'before' ? 'before' : 'behind'} step "${titleOf(beside)}"`;
  return moveNode(document, title, moved.step.step.node, side, beside.step.step.node);
}

function titleOf({ step }: Place): string {
  return step.step.title?.text ?? step.id;
}

function moveNode(
  document: Scene['procedure']['document'],
  title: string,
  moved: Node,
  side: 'before' | 'behind',
  beside: Node,
): Candidate[] {
  const [block, target] = [blockOf(document, moved), blockOf(document, beside)];
  const edits = block === undefined || target === undefined ? undefined : move(document, block, target, side);
  return edits === undefined ? [] : [{ title, edits }];
}
