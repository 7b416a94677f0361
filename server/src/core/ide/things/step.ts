import { objectIds } from '../../analysis/instructions';
import { type NamedThing, Names } from '../../analysis/names';
import type { InstructionView, StepView } from '../../analysis/procedureView';
import { lastPass } from '../../analysis/statedTorques';
import { buildsText, valueLines } from './buildWords';
import { type Card, row } from './card';
import { quantityText } from './quantityWords';
import type { Scene } from './scene';
import { stepsRow } from './stepRows';

/** A step by its id, as a way back or a concession names it. */
export function stepCardOf(scene: Scene, { id }: NamedThing): Card | undefined {
  const step = scene.procedure?.step(id);
  return step === undefined ? undefined : stepCard(scene, step);
}

/** A step: its phase, the builds that it is for, its torques, and who signs for it. */
export function stepCard(scene: Scene, view: StepView): Card {
  const { step, id, phase, where, instructions } = view;
  const back = scene.uses.of('step', id).filter(({ key }) => key === 'go-to');
  return {
    name: step.title?.text ?? id,
    kind: 'step',
    id: id === '' ? undefined : id,
    rows: [
      ...row('Phase', phase.phase?.text),
      ...(scene.space === undefined ? [] : row('For', buildsText(where, scene.space))),
      ...row(
        'Torques',
        instructions.flatMap((one) => torqueTexts(scene, one)),
      ),
      ...row('Hold point', step.sign?.value),
      ...row('People', step.people?.node.text),
      ...row('Optional', step.optional?.value === true ? 'yes' : undefined),
      ...row('Work', workTexts(scene, view)),
      ...stepsRow('Gone back to from', back),
    ],
  };
}

/** What is done, verb by verb: `remove: compressor cover, cover O-ring`. */
function workTexts({ snapshot, document }: Scene, { instructions }: StepView): string[] {
  const names = Names.of(snapshot, document);
  const byVerb = new Map<string, string[]>();
  for (const { instruction } of instructions) {
    const { verb } = instruction;
    const things = objectIds(instruction).map((id) => names.mentionable(id)[0]?.name ?? id);
    byVerb.set(verb, [...(byVerb.get(verb) ?? []), ...things]);
  }
  return [...byVerb].flatMap(([verb, things]) => {
    const all = [...new Set(things)].join(', ');
    return verb === 'say' ? [] : [all === '' ? verb : `${verb}: ${all}`];
  });
}

function torqueTexts({ family, space }: Scene, { instruction, where }: InstructionView): string[] {
  if (instruction.verb !== 'tighten') return [];
  const names = (instruction.tighten ?? []).map(({ id }) => family?.nameOf(id) ?? id).join(', ');
  const last = lastPass(instruction);
  const torques =
    last === undefined ? valueLines(instruction.torque, space, where, quantityText) : [quantityText(last)];
  const angles = valueLines(instruction.angle, space, where, quantityText).map((angle) => `then ${angle}`);
  return torques.length + angles.length === 0 ? [] : [`${names}: ${[...torques, ...angles].join('; ')}`];
}
