import { fillLabel } from '../labels';
import type { SingleSetting, TorqueCallout, TorqueSetting, TurnLine } from '../sheet';
import { type Asking, type FieldPlace, withNames } from './asking';

/** The actual torque of one line of the torque table, asked for where the torque is set. */
export interface ActualFields {
  /** The box that says which line holds. */
  readonly applies?: string;
  /** One for each piece where there are several. */
  readonly actual: readonly string[];
}

/** The torque with the names of its boxes and blanks, and what the torque table asks of it. */
export interface NamedTorque {
  readonly torque: TorqueCallout;
  readonly rows: readonly ActualFields[];
}

export function nameTorque(
  torque: TorqueCallout,
  at: FieldPlace,
  applies: string | undefined,
  asking: Asking,
): NamedTorque {
  const found = torque.found?.map((line, index) => nameTurn(line, index, at, asking));
  const { setting, rows } = nameSetting(torque, at, applies, asking);
  const named = { ...torque, setting, ...(found === undefined ? {} : { found }) };
  return { torque: nameGrid(named, at, asking), rows };
}

function nameSetting(
  torque: TorqueCallout,
  at: FieldPlace,
  applies: string | undefined,
  asking: Asking,
): { setting: TorqueSetting; rows: ActualFields[] } {
  const { setting } = torque;
  if (setting.kind !== 'byOutcome') {
    const actual = actualOf(torque, setting, at, asking);
    return {
      setting: nameBlank(setting, at, asking),
      rows: [{ ...(applies === undefined ? {} : { applies }), actual }],
    };
  }
  const rows: ActualFields[] = [];
  const branches = setting.branches.map((branch, index) => {
    const place = { ...at, path: [...at.path, 'branch', index + 1] };
    const { at: inBranch, field } = asking.condition(place, { kind: 'outcome', text: branch.condition });
    const actual = actualOf(torque, branch.setting, inBranch, asking);
    rows.push({ ...(field === undefined ? {} : { applies: field }), actual });
    return withNames({ ...branch, setting: nameBlank(branch.setting, inBranch, asking) }, { field });
  });
  return { setting: { kind: 'byOutcome', branches }, rows };
}

/** Nobody has stated the torque: it is asked for before it is tightened. */
function nameBlank(setting: SingleSetting, at: FieldPlace, asking: Asking): SingleSetting {
  if (setting.kind === 'one') return setting;
  const field = asking.text(at, 'stated-torque', asking.labels.torqueBlank);
  return withNames(setting, { field });
}

/** The templates print so many blanks for pieces, and one blank for more. */
const MOST_PIECES = 6;

function actualOf(
  { fastener, pieces = 1 }: TorqueCallout,
  setting: SingleSetting,
  at: FieldPlace,
  asking: Asking,
): string[] {
  const what = fillLabel(asking.labels.actualTorque, { fastener });
  if (pieces > MOST_PIECES) return [asking.text(at, 'actual', what)];
  const stated = setting.kind === 'one' ? setting.value.accepts : undefined;
  const unit = stated?.printedUnit ?? '';
  const accepts = stated === undefined ? [] : [stated];
  return Array.from({ length: pieces }, (_, index) => {
    const parts = pieces === 1 ? ['actual'] : ['actual', index + 1];
    return asking.field(at, parts, {
      kind: 'value',
      unit,
      accepts,
      what: pieces === 1 ? what : `${what} ${index + 1}`,
    });
  });
}

export function nameTurn(line: TurnLine, index: number, at: FieldPlace, asking: Asking): TurnLine {
  if (line.condition === undefined) return line;
  const place = { ...at, path: [...at.path, 'turn', index + 1] };
  return withNames(line, { field: asking.condition(place, { kind: 'outcome', text: line.condition }).field });
}

/** A box for each piece in each pass. */
function nameGrid(torque: TorqueCallout, at: FieldPlace, asking: Asking): TorqueCallout {
  const { grid } = torque;
  if (grid === undefined) return torque;
  const bands = grid.bands.map((band, bandIndex) => {
    const pieces =
      band.kind === 'ordered' ? band.pieces : Array.from({ length: band.count }, (_, index) => String(index + 1));
    const fields = grid.rows.map((_, row) =>
      pieces.map((piece, index) => {
        const what = `${torque.fastener}: ${fillLabel(asking.labels.pass, { number: row + 1 })}, ${piece}`;
        return asking.field(at, ['pass', row + 1, bandIndex + 1, index + 1], { kind: 'tick', what });
      }),
    );
    return withNames(band, { fields });
  });
  return { ...torque, grid: { ...grid, bands } };
}
