import type { InstructionView } from '../../analysis/procedureView';
import { lastPass } from '../../analysis/statedTorques';
import { type BuildSet, type BuildSpace, describeBuilds } from '../../builds';
import type { Part } from '../../model/generated/types';
import { handsOf } from '../handsOf';
import { valueLines } from './buildWords';
import { type CardRow, row, sideRow } from './card';
import { quantityInUnits, quantityText } from './quantityWords';
import type { Scene } from './scene';
import { stepName } from './stepRows';
import { verbOf } from './stepUses';

const TURNS = {
  left: 'left-hand (counter-clockwise to tighten)',
  right: 'right-hand (clockwise to tighten)',
} as const;

/** How a part is screwed in: its thread and hand, what turns it, and its torques in the family and in the procedure. */
export function fasteningRows(scene: Scene, id: string, part: Part, present: BuildSet | undefined): CardRow[] {
  const { space } = scene;
  const lines = <Value>(value: Parameters<typeof valueLines<Value>>[0], textOf: (value: Value) => string) =>
    valueLines(value, space, present, textOf);
  const classes = lines(part.propertyClass, ({ text }) => text);
  return [
    ...sideRow(
      'Thread',
      lines(part.thread, ({ text }) => text),
    ),
    ...row('Hand', handLines(scene, part, present)),
    ...sideRow('Property class', classes),
    ...row('Turned by', drivenBy(part, lines(part.acrossFlats, quantityText))),
    ...sideRow('Torque', lines(part.torque, quantityInUnits)),
    ...sideRow('Then turn', lines(part.angle, quantityText)),
    ...row('Prevailing torque', lines(part.prevailingTorque, quantityText)),
    ...row('In this procedure', torquesHere(scene, id)),
    ...row('In order', (part.inOrder ?? []).map(({ text }) => text).join(', ')),
    ...row('Held at', part.hold?.text),
  ];
}

/** Which way it is turned, by build; as it is written where no family says what the builds are. */
function handLines({ space }: Scene, part: Part, present: BuildSet | undefined): string[] {
  if (space === undefined || present === undefined) return [];
  return handsOf(part, space, present).map(({ value, where }) =>
    where.equals(present) ? TURNS[value] : `${TURNS[value]} on ${describeBuilds(where, space) || 'every build'}`,
  );
}

function drivenBy({ drive, driveSize }: Part, acrossFlats: readonly string[]): string[] {
  const size = driveSize === undefined ? [] : [driveSize.text];
  const shape = drive?.value?.replaceAll('-', ' ');
  const widths = acrossFlats.map((width) =>
    [shape, `${width} across flats`].filter((one) => one !== undefined).join(', '),
  );
  return widths.length > 0 ? widths : [[shape, ...size].filter((one) => one !== undefined).join(' ')];
}

/** The torques that the steps of the procedure state for a part, with the step of each. */
function torquesHere(scene: Scene, id: string): string[] {
  const tightening = scene.uses.of('part', id).filter((use) => verbOf(use) === 'tighten');
  return tightening.flatMap(({ step, instruction }) => {
    const texts = instruction === undefined ? [] : torqueTexts(scene, instruction);
    return texts.map((text) => `${text} in ${stepName(step.step)}`);
  });
}

interface TorquesThere {
  readonly space: BuildSpace | undefined;
  readonly texts: readonly string[];
}

/** A fastener may be tightened in a thousand steps, and their torques stay what they are while others are written. */
const remembered = new WeakMap<InstructionView, TorquesThere>();

function torqueTexts({ space }: Scene, view: InstructionView): readonly string[] {
  const known = remembered.get(view);
  if (known !== undefined && known.space === space) return known.texts;
  const texts = textsOfTorque(space, view);
  remembered.set(view, { space, texts });
  return texts;
}

function textsOfTorque(space: BuildSpace | undefined, { instruction, where }: InstructionView): string[] {
  if (instruction.verb !== 'tighten') return [];
  const last = lastPass(instruction);
  if (last !== undefined) return [`${quantityText(last)} in ${instruction.passes?.length ?? 1} passes`];
  return valueLines(instruction.torque, space, where, quantityText);
}
