import { conditionOf } from '../../analysis/familyView';
import type { KitView } from '../../analysis/kitView';
import { describeBuilds } from '../../builds';
import type { Line } from '../../model/generated/types';
import { buildsText } from './buildWords';
import { type Card, type CardRow, row } from './card';
import type { Scene } from './scene';

/** The kit lines that supply a part, with the builds for which they do. */
export function kitRows(scene: Scene, part: string): CardRow[] {
  const lines = scene.kits.flatMap((kit) =>
    kit.lines.filter((line) => line.part?.id === part).map((line) => supplyText(scene, kit, line)),
  );
  return row('Kit', lines);
}

function supplyText({ space }: Scene, kit: KitView, line: Line): string {
  const what = [`${kit.value.kit?.text ?? 'kit'} item ${line.item?.text ?? '?'}`, ...amountTexts(line)].join(', ');
  if (space === undefined || (line.when === undefined && line.unless === undefined)) return what;
  const builds = describeBuilds(space.set(conditionOf(line)), space);
  return builds === '' ? what : `${what}, for ${builds}`;
}

function amountTexts({ quantity, number }: Line): string[] {
  const pieces = quantity === undefined ? [] : [`${quantity.node.text} ${quantity.value === 1 ? 'piece' : 'pieces'}`];
  return [...(number === undefined ? [] : [number.text]), ...pieces];
}

/** A line of a kit bill. */
export function kitLineCard(scene: Scene, kit: KitView, line: Line): Card {
  const { space, family } = scene;
  const part = line.part?.id;
  const where = space?.set(conditionOf(line));
  const name =
    line.name?.text ?? (part === undefined ? undefined : family?.nameOf(part)) ?? part ?? 'line without a part';
  return {
    name,
    kind: `item ${line.item?.text ?? 'without a number'} of ${kit.value.kit?.text ?? 'the kit'}`,
    id: part,
    rows: [
      ...row('Part number', line.number?.text),
      ...row('Pieces', line.quantity?.node.text),
      ...(space === undefined || where === undefined ? [] : row('For', buildsText(where, space))),
      ...row('Supersedes', (line.replaces ?? []).map(({ text }) => text).join(', ')),
      ...row('Superseded by', line.supersededBy?.text),
      ...row('Note', line.note?.text),
    ],
  };
}
