import { documentValue } from '../analysis/documentUnit';
import { nestedInstructions } from '../analysis/instructions';
import type { Instruction, Phase, Step } from '../model/generated/types';
import { valuesOf } from '../model/values';
import type { Node } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { nodeSpan } from './nodeSpan';
import type { OutlineEntry } from './outlineEntry';
import { oneLine } from './outlineGroups';

/** The phases of a procedure with their steps. A step that has no title yet goes by its id. */
export function phasesIn(document: SyntaxDocument): OutlineEntry[] {
  const phases = documentValue(document, 'procedure')?.phases ?? [];
  return phases.map((phase) => phaseEntry(document, phase));
}

function phaseEntry(document: SyntaxDocument, { node, phase, steps = [] }: Phase): OutlineEntry {
  const label = oneLine(phase?.text ?? '') || 'Phase without a name';
  const children = steps.map((step) => stepEntry(document, step));
  return { kind: 'phase', label, detail: '', symbol: undefined, ...spans(document, node, phase?.scalar), children };
}

function stepEntry(document: SyntaxDocument, step: Step): OutlineEntry {
  const id = step.step?.id ?? '';
  const title = oneLine(step.title?.text ?? '');
  const label = title || id || 'Step without a title';
  const detail = [title === '' ? '' : id, ...torquesOf(step), holdPoint(step)].filter((one) => one !== '');
  return {
    kind: 'step',
    label,
    detail: detail.join(' · '),
    symbol: id === '' ? undefined : { id, name: title || id },
    ...spans(document, step.node, step.step?.node),
    children: [],
  };
}

function holdPoint({ sign }: Step): string {
  return sign?.value === undefined ? '' : `hold point: ${sign.value}`;
}

/** The final torques that a step states, each once. */
function torquesOf({ do: instructions = [] }: Step): string[] {
  return [...new Set(instructions.flatMap(torquesStated))];
}

function torquesStated(instruction: Instruction): string[] {
  const nested = nestedInstructions(instruction).flatMap(torquesStated);
  if (instruction.verb !== 'tighten') return nested;
  const last = instruction.passes?.at(-1);
  const stated = [...valuesOf(instruction.torque), ...(last === undefined ? [] : [last])];
  return [...stated.map(({ text }) => oneLine(text)), ...nested].filter((text) => text !== '');
}

/** An editor wants the words to put the cursor at within the whole. */
function spans(document: SyntaxDocument, node: Node, named: Node | undefined) {
  const span = nodeSpan(document, node);
  const label = named === undefined ? { start: span.start, end: span.start } : document.spanOf(named);
  const isInside = span.start <= label.start && label.end <= span.end;
  return { span, labelSpan: isInside ? label : { start: span.start, end: span.start } };
}
