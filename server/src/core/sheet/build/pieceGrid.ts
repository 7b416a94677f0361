import type { TightenInstruction } from '../../model/generated/types';
import { orderPicture } from '../orderPicture';
import type { GridRow, PieceBand, PieceGrid, SheetFigure, SingleSetting, TorqueSetting } from '../sheet';
import type { BuildContext } from './buildContext';

/**
 * Boxes for each piece in each pass; undefined where one box is enough. An order that is stated for all pieces names
 * them; with fewer pieces nobody has said which ones they are.
 */
export function pieceGrid(
  one: TightenInstruction,
  count: number,
  order: readonly string[],
  setting: TorqueSetting,
  { writing }: BuildContext,
): PieceGrid | undefined {
  const rows = gridRows(one, setting);
  if (count < 2 && rows.length < 2) return undefined;
  if (order.length !== count)
    return { rows, bands: lengthsOfBands(count).map((length) => ({ kind: 'boxes', count: length })) };
  // Where the writer has a drawing, ours must not contradict it.
  const svg = one.figure === undefined ? orderPicture(order) : undefined;
  if (svg === undefined) return { rows, bands: orderedBands(order) };
  const picture: SheetFigure = { id: 'order', alt: writing.phrases.inOrder(order), image: { kind: 'svg', svg } };
  return { rows, bands: orderedBands(order), picture };
}

/** So many boxes side by side are still told apart. */
const MOST_IN_BAND = 12;

/** Bands of about equal length. */
function lengthsOfBands(count: number): number[] {
  const bands = Math.ceil(count / MOST_IN_BAND);
  const length = Math.ceil(count / bands);
  return Array.from({ length: bands }, (_, band) => Math.min(length, count - band * length));
}

function orderedBands(order: readonly string[]): PieceBand[] {
  let first = 0;
  return lengthsOfBands(order.length).map((length) => {
    const band: PieceBand = { kind: 'ordered', first: first + 1, pieces: order.slice(first, first + length) };
    first += length;
    return band;
  });
}

function gridRows(one: TightenInstruction, setting: TorqueSetting): GridRow[] {
  const before = (one.passes ?? []).slice(0, -1);
  const rows: GridRow[] = before.map((_, index) => ({ kind: 'pass', number: index + 1 }));
  const angles = new Set(singleSettings(setting).map(angleOf));
  angles.delete(undefined);
  const [angle] = angles;
  const only: GridRow = angles.size === 0 ? { kind: 'only' } : { kind: 'torque' };
  const last: GridRow = rows.length === 0 ? only : { kind: 'final' };
  if (angles.size === 0) return [...rows, last];
  return [...rows, last, angles.size === 1 && angle !== undefined ? { kind: 'angle', angle } : { kind: 'angle' }];
}

function singleSettings(setting: TorqueSetting): SingleSetting[] {
  return setting.kind === 'byOutcome' ? setting.branches.map((branch) => branch.setting) : [setting];
}

function angleOf(setting: SingleSetting): string | undefined {
  return setting.kind === 'one' ? setting.value.angle : undefined;
}
