import type { Instruction } from '../../../model/generated/types';
import { blockOf, type EntryLines } from './block';
import type { Candidate } from './candidate';
import { insert, moveInstruction, moveStep } from './edits';
import type { Place, Scene } from './scene';
import { later, partsOf, theEnd, touches, wideFrom } from './touching';

/** A check is made behind the last touch of what it comes after, beside the other checks where they come later. */
export function checkFixes(scene: Scene): Candidate[] {
  const { about, cause } = scene;
  const touch = lastTouch(scene);
  const checked = scene.last(
    ({ view: { instruction } }) => instruction.verb === 'check' && instruction.check?.is === 'ref',
  );
  const place = touch === undefined ? (checked ?? theEnd(scene)) : later(touch, checked);
  const title = `Make the check ${scene.name(about)}${cause === undefined ? '' : ' again'}`;
  const entries = [[`check: ${about}`]];
  return [
    ...insert(scene, title, 'behind', wideFrom(scene, place), entries, 'failing'),
    ...insert(scene, title, 'behind', place, entries, 'failing'),
    ...insert(scene, title, 'behind', theEnd(scene), entries, 'failing'),
  ];
}

/** A measurement is made again behind the last touch of what makes it worthless, or only then. */
export function measureAgainFixes(scene: Scene): Candidate[] {
  const { about, cause } = scene;
  const touch = lastTouch(scene);
  if (cause === undefined || touch === undefined) return [];
  const entry = sameAgain(scene, cause);
  const again = `Measure ${scene.the(about)} again`;
  const { verb } = cause.view.instruction;
  return [
    ...(entry === undefined ? [] : insert(scene, again, 'behind', wideFrom(scene, touch), [entry], 'failing')),
    ...moveStep(scene, cause, 'behind', touch),
    ...moveInstruction(scene, `Move "${verb}: ${about}" behind what makes it void`, cause, 'behind', touch),
  ];
}

/** A group is balanced once everything that it is made of was turned for the last time and its threadlocker has set. */
export function balanceFixes(scene: Scene): Candidate[] {
  const { relations, about } = scene;
  const members = relations.membersOf(about);
  const parts = new Set([...members, ...members.flatMap((id) => relations.fasteners(id))]);
  const place = scene.last((one) => touches(one, parts));
  const title = `Balance ${scene.the(about)}`;
  const entry = [`balance: ${about}`];
  return [
    ...insert(scene, title, 'behind', wideFrom(scene, place), [entry], 'failing'),
    ...insert(scene, title, 'behind', wideFrom(scene, place), [['wait: cure'], entry], 'failing'),
  ];
}

function lastTouch(scene: Scene): Place | undefined {
  const parts = partsOf(scene, scene.about);
  return scene.last((one) => touches(one, parts));
}

/** The lines of an instruction, to be written once more; undefined where it leads another way or is laid out unusually. */
function sameAgain({ procedure: { document } }: Scene, { view: { instruction } }: Place): EntryLines | undefined {
  const block = blockOf(document, instruction.node);
  if (block === undefined || instruction.node.kind !== 'map' || leadsElsewhere(instruction)) return undefined;
  const { start, end } = document.spanOf(instruction.node);
  const lines = document.text.slice(start, end).trimEnd().split(/\r?\n/);
  const deeper = `${block.indent} ${block.gap}`;
  if (lines.slice(1).some((line) => !line.startsWith(deeper))) return undefined;
  // Conditions are those of the new place.
  const entry = lines.map((line, i) => (i === 0 ? line : line.slice(deeper.length)));
  return entry.filter((line) => !/^(?:when|unless):/.test(line));
}

function leadsElsewhere(instruction: Instruction): boolean {
  const ifNot = 'ifNot' in instruction ? instruction.ifNot : undefined;
  return ifNot?.do !== undefined || ifNot?.goTo !== undefined;
}
