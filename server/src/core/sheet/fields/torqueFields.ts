import { fillLabel } from '../labels';
import type { SingleSetting, TorqueCallout, TorqueSetting, TurnLine } from '../sheet';
import { type Asking, type FieldPlace, under, withNames } from './asking';

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
  const { setting, rows } = nameSetting(torque, at, applies, asking);
  const named = { ...torque, setting, ...foundLines(torque, rows) };
  return { torque: nameGrid(named, at, asking), rows };
}

/** Where only the hand is open, a line for each hand stands in the place of the branches, and has their boxes. */
function foundLines({ found }: TorqueCallout, rows: readonly ActualFields[]): Pick<TorqueCallout, 'found'> {
  if (found === undefined) return {};
  return { found: found.map((line, index) => withNames(line, { field: rows[index]?.applies })) };
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
  const ticks = asking.choice(
    at,
    'branch',
    setting.branches.map((branch) => branch.condition),
    torque.fastener,
  );
  const branches = setting.branches.map((branch, index) => {
    const field = ticks[index] ?? '';
    const inBranch = { ...at, path: [...at.path, 'branch', index + 1], need: under(at.need, field) };
    rows.push({ applies: field, actual: actualOf(torque, branch.setting, inBranch, asking) });
    return withNames({ ...branch, setting: named(branch.setting, index, inBranch) }, { field });
  });
  return { setting: { kind: 'byOutcome', branches }, rows };

  // Where only the hand is open, what nobody has stated is asked once.
  function named(one: SingleSetting, index: number, inBranch: FieldPlace): SingleSetting {
    if (torque.found === undefined) return nameBlank(one, inBranch, asking);
    return index === 0 ? nameBlank(one, at, asking) : one;
  }
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

/** Ways to turn, of which the bench ticks the one that it has found. */
export function nameTurns(lines: readonly TurnLine[], question: string, at: FieldPlace, asking: Asking): TurnLine[] {
  const conditions = lines.flatMap(({ condition }) => (condition === undefined ? [] : [condition]));
  const ticks = asking.choice(at, 'turn', conditions, question);
  return lines.map((line) =>
    line.condition === undefined ? line : withNames(line, { field: ticks[conditions.indexOf(line.condition)] }),
  );
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
