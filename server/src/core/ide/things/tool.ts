import { documentValue } from '../../analysis/documentUnit';
import type { NamedThing } from '../../analysis/names';
import type { Tool } from '../../model/generated/types';
import { type Card, type CardRow, row } from './card';
import { quantityText } from './quantityWords';
import type { Scene } from './scene';
import { stepsRow } from './stepRows';

/** A tool of the stores, and the steps that use it. */
export function toolCard(scene: Scene, { id, name, document, declared }: NamedThing): Card | undefined {
  const tool = documentValue(document, 'stores')?.tools?.find((entry) => entry.id === declared)?.value;
  if (tool === undefined) return undefined;
  const uses = scene.uses.of('tool', id);
  const idle = scene.procedure !== undefined && uses.length === 0;
  return {
    name,
    kind: tool.kind?.value === undefined ? 'tool' : `tool: ${tool.kind.value.replaceAll('-', ' ')}`,
    id,
    rows: [
      ...row('Also called', (tool.also ?? []).map(({ text }) => text).join(', ')),
      ...sizeRows(tool),
      ...measuringRows(tool),
      ...row('Number', tool.number?.text),
      ...(idle ? row('Used in', 'no step of this procedure') : stepsRow('Used in', uses)),
      ...row('Note', tool.note?.text),
    ],
  };
}

function sizeRows({ size, driveSize, square, length, offset, setAt }: Tool): CardRow[] {
  return [
    ...row('Size', [size === undefined ? driveSize?.text : quantityText(size)]),
    ...row('Square drive', quantityText(square)),
    ...row('Length', quantityText(length)),
    ...row('Offset', [offset === undefined ? undefined : [quantityText(offset), angleText(setAt)].join('')]),
  ];
}

function angleText(setAt: Tool['setAt']): string {
  return setAt === undefined ? '' : `, set at ${quantityText(setAt)}`;
}

function measuringRows({ range, accuracy, resolution, direction, torqueType, calibrationDue }: Tool): CardRow[] {
  return [
    ...row('Range', quantityText(range)),
    ...row('Accuracy', accuracy === undefined ? undefined : `± ${quantityText(accuracy)}`),
    ...row('Resolution', quantityText(resolution)),
    ...row('Turns', direction?.value === undefined ? undefined : TURNS[direction.value]),
    ...row('Type', torqueType === undefined ? undefined : `${torqueType.text} of ISO 6789-1`),
    ...row('Calibration due', calibrationDue?.node.text),
  ];
}

const TURNS = { right: 'clockwise only', both: 'both ways' } as const;
