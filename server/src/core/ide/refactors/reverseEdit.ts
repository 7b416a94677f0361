import type { ProcedureView, StepView } from '../../analysis/procedureView';
import { newlineOf } from '../../rules/support/newline';
import { blockOf, type EntryLines } from '../../rules/support/walkFixes/block';
import { pairOf } from '../../syntax/node';
import type { TextEdit } from '../../text/span';
import { endOfLine, indentOf, insertAt, startOfLine } from '../lineEdits';
import type { StepPlace } from './reversePlaces';

/** Writes a step, or a phase with it, at a place; undefined where the text is laid out in a way that only a person should change. */
export function stepEdits(
  procedure: ProcedureView,
  place: StepPlace,
  lines: EntryLines,
): readonly TextEdit[] | undefined {
  switch (place.is) {
    case 'beside-step':
      return besideStep(procedure, place, lines);
    case 'in-phase':
      return inPhase(procedure, place, lines);
    case 'new-phase':
      return newPhase(procedure, place, lines);
  }
}

function besideStep({ document, steps }: ProcedureView, place: StepPlace, lines: EntryLines): TextEdit[] | undefined {
  const node = steps[place.index]?.step.node;
  const block = node === undefined ? undefined : blockOf(document, node);
  if (block === undefined) return undefined;
  const { text } = document;
  const written = entryLines(lines, block.indent, block.gap);
  const gap = isSpaced(steps, document.text, document.spanOf) ? [''] : [];
  const newline = newlineOf(text);
  if (place.side === 'before') return [insertAt(block.start, joined([...written, ...gap], newline))];
  const isLast = block.end >= text.length && !text.endsWith('\n');
  if (isLast) return [insertAt(text.length, newline + [...gap, ...written].join(newline))];
  return [insertAt(block.end, joined([...gap, ...written], newline))];
}

function inPhase({ document, value }: ProcedureView, { index }: StepPlace, lines: EntryLines): TextEdit[] | undefined {
  const node = value.phases?.[index]?.node;
  const pair = node?.kind === 'map' ? pairOf(node, 'steps') : undefined;
  const indent = node?.kind === 'map' ? indentOf(document, node) : undefined;
  if (pair === undefined || indent === undefined || (pair.value !== undefined && pair.value.kind !== 'list'))
    return undefined;
  const newline = newlineOf(document.text);
  const written = entryLines(lines, `${indent}  `, ' ').join(newline);
  const key = document.spanOf(pair.key);
  const behind = insertAt(endOfLine(document.text, key.end), newline + written);
  const brackets = /^: *\[ *\]/.exec(document.text.slice(key.end));
  if (brackets === null) return [behind];
  return [{ span: { start: key.end + 1, end: key.end + brackets[0].length }, text: '' }, behind];
}

function newPhase(procedure: ProcedureView, place: StepPlace, lines: EntryLines): TextEdit[] | undefined {
  const { document, phases } = procedure;
  const { text } = document;
  const { phase, steps = [] } = phases[place.index] ?? {};
  const indent = phase?.node.kind === 'map' ? indentOf(document, phase.node) : undefined;
  const dash = indent?.slice(2);
  if (phase === undefined || indent === undefined || dash === undefined) return undefined;
  const newline = newlineOf(text);
  const written = [`${dash}- phase: Assemble`, `${indent}steps:`, ...entryLines(lines, `${indent}  `, ' ')];
  if (place.side === 'before') {
    const [first] = phase.node.kind === 'map' ? phase.node.pairs : [];
    if (first === undefined) return undefined;
    return [insertAt(startOfLine(text, document.spanOf(first.key).start), joined([...written, ''], newline))];
  }
  const last = steps.at(-1);
  const isLast = place.index === phases.length - 1;
  const block = last === undefined || !isLast ? undefined : blockOf(document, last.step.node);
  return block === undefined
    ? undefined
    : [insertAt(block.end, (text.endsWith('\n') ? '' : newline) + joined(['', ...written], newline))];
}

function entryLines(lines: EntryLines, indent: string, gap: string): string[] {
  const deeper = `${indent} ${gap}`;
  return lines.map((line, i) => (i === 0 ? `${indent}-${gap}${line}` : `${deeper}${line}`));
}

function joined(lines: readonly string[], newline: string): string {
  return lines.map((line) => line + newline).join('');
}

/** Whether the steps of a phase stand apart from each other by an empty line. */
function isSpaced(steps: readonly StepView[], text: string, spanOf: ProcedureView['document']['spanOf']): boolean {
  const second = steps.find((step, i) => i > 0 && steps[i - 1]?.phase === step.phase);
  if (second === undefined) return false;
  const line = startOfLine(text, spanOf(second.step.node).start);
  return /\n[ \t]*\r?\n$/.test(text.slice(Math.max(0, line - 200), line));
}
