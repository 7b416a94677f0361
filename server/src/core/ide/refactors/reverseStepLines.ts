import type { ProcedureView, StepView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import { scalarText } from '../../rules/support/mapKey';
import type { EntryLines } from '../../rules/support/walkFixes/block';
import { pairOf } from '../../syntax/node';
import { startOfLine } from '../lineEdits';
import { conditionFor } from './reverseConditions';
import type { TakenApart } from './takenApart';

/** What ids and titles of steps begin with that take something off. */
const TAKES_OFF = /^(?:remove|take-off|take-out|open|strip|withdraw|release|loosen|pull|lift)-/;
const TAKES_OFF_WORDS = /^(?:take off|take out|remove|withdraw|release|strip|pull off|lift off)\s+(?=\S)/i;

/** A step as the entry of a list: its id, title and conditions, and the instructions. */
export function stepLines(
  procedure: ProcedureView,
  step: StepView,
  apart: readonly TakenApart[],
  entries: readonly EntryLines[],
  conditions: EntryLines,
): EntryLines {
  const indent = indentOfDo(procedure, step);
  const instructions = entries.flatMap((entry) =>
    entry.map((line, i) => (i === 0 ? `${indent}- ${line}` : `${indent}  ${line}`)),
  );
  return [
    `step: ${newStepId(procedure, step, apart)}`,
    `title: ${scalarText(titleOf(step, apart))}`,
    ...conditions,
    'do:',
    ...instructions,
  ];
}

/** `open-cover` becomes `fit-cover`, unless a step has that id. */
export function newStepId({ steps, value }: ProcedureView, step: StepView, apart: readonly TakenApart[]): string {
  const taken = new Set(steps.map(({ id }) => id));
  for (const { id } of value.figures ?? []) taken.add(id.id);
  const verb = apart.some(({ is }) => is === 'off') ? 'fit' : 'tighten';
  const [first] = apart;
  const stems = [step.id.replace(TAKES_OFF, ''), ...(first === undefined ? [] : [first.part])];
  const wanted = stems.map((stem) => `${verb}-${stem === '' ? 'parts' : stem}`);
  const free = wanted.find((id) => !taken.has(id));
  if (free !== undefined) return free;
  let number = 2;
  while (taken.has(`${wanted[0]}-${number}`)) number += 1;
  return `${wanted[0]}-${number}`;
}

/** The title turned round where it begins with taking off, else the names of the parts. */
function titleOf({ step }: StepView, apart: readonly TakenApart[]): string {
  const own = step.title?.text ?? '';
  if (apart.every(({ is }) => is === 'loose')) return `Tighten ${namesOf(apart)}`;
  return TAKES_OFF_WORDS.test(own) ? own.replace(TAKES_OFF_WORDS, 'Fit ') : `Fit ${namesOf(apart)}`;
}

/** What is fitted last is what the step is about: the rest belongs to it. */
function namesOf(apart: readonly TakenApart[]): string {
  const names = [...new Set(apart.map(({ part, scene }) => scene.the(part)))];
  const last = names.at(-1) ?? 'the parts';
  if (names.length > 3) return `${last} and what belongs to it`;
  return names.length < 2 ? last : `${names.slice(0, -1).join(', ')} and ${last}`;
}

/**
 * The conditions that the step may have, to be tried in turn: those of the step that took the parts off, those of the
 * builds to which they belong, and those of just the builds on which they are missing.
 */
export function conditionsFor(procedure: ProcedureView, step: StepView, apart: readonly TakenApart[]): EntryLines[] {
  const { space } = procedure;
  const [first] = apart;
  const exact = (set: BuildSet): EntryLines[] => (first === undefined ? [] : [conditionFor(first, set)]);
  const all = [
    ownConditions(step),
    ...exact(space.union(apart.map(({ part }) => procedure.presence(part)))),
    ...exact(space.union(apart.map(({ scene }) => scene.failure.where))),
  ];
  return [...new Map(all.map((lines) => [lines.join('\n'), lines])).values()];
}

function ownConditions({ step: { node } }: StepView): EntryLines {
  if (node.kind !== 'map') return [];
  return node.pairs.flatMap(({ key, value }) => {
    if (value === undefined || (key.text !== 'when' && key.text !== 'unless')) return [];
    const text = value.item.text.slice(value.from, value.to).trimEnd();
    return text.includes('\n') ? [] : [`${key.text}: ${text}`];
  });
}

/** How far the instructions stand in from `do`, as the step writes its own. */
function indentOfDo({ document }: ProcedureView, { step: { node } }: StepView): string {
  const pair = node.kind === 'map' ? pairOf(node, 'do') : undefined;
  const first = pair?.value?.kind === 'list' && !pair.value.flow ? pair.value.items[0] : undefined;
  if (pair === undefined || first === undefined) return '  ';
  const key = document.spanOf(pair.key).start;
  const entry = document.spanOf(first).start;
  const line = document.text.slice(startOfLine(document.text, entry), entry);
  const dash = line.indexOf('-');
  return ' '.repeat(Math.max(0, dash - (key - startOfLine(document.text, key))));
}
