import { judgeTorque } from '../../server/src/core/workings/torqueJudgement';
import { type PlausibleJoint, quantityOf, torqueUnit } from './plausibleJoints';

const units = ['N·m', 'lbf·in', 'lbf·ft', 'kgf·cm'].map(torqueUnit);

/** How the slips of one size and the torques as they were meant fared; `named` are those for which the right unit is offered. */
export interface SlipCount {
  slips: number;
  caught: number;
  named: number;
}

export interface SlipFigures {
  readonly torques: number;
  /** Torques as they were meant that are told all the same. */
  readonly wronglyTold: number;
  /** By the two units, `N·m for lbf·in`: the first was written where the second was meant. */
  readonly byUnits: ReadonlyMap<string, SlipCount>;
  /** Slips that change the torque eight times or more. */
  readonly large: SlipCount;
  /** All others. */
  readonly small: SlipCount;
}

/** Writes every torque in each wrong unit, the number as it was, and counts what is told. */
export function slipFigures(joints: readonly PlausibleJoint[]): SlipFigures {
  const byUnits = new Map<string, SlipCount>();
  const [large, small] = [emptyCount(), emptyCount()];
  let wronglyTold = 0;
  for (const { joint, written, unit } of joints) {
    if (judgeTorque(quantityOf(written, unit), joint)?.implausible === true) wronglyTold++;
    for (const wrong of units) {
      if (wrong === unit) continue;
      const judged = judgeTorque(quantityOf(written, wrong), joint);
      const key = `${wrong.symbol} for ${unit.symbol}`;
      const pair = byUnits.get(key) ?? emptyCount();
      byUnits.set(key, pair);
      const factor = wrong.factor / unit.factor;
      for (const count of [pair, factor >= 8 || factor <= 1 / 8 ? large : small]) {
        count.slips++;
        if (judged?.implausible === true) count.caught++;
        if (judged?.rightIn.includes(unit) === true) count.named++;
      }
    }
  }
  return { torques: joints.length, wronglyTold, byUnits, large, small };
}

function emptyCount(): SlipCount {
  return { slips: 0, caught: 0, named: 0 };
}

/** The figures as a table for reading. */
export function slipTable(title: string, figures: SlipFigures): string {
  const line = (name: string, { slips, caught, named }: SlipCount): string =>
    `| ${name} | ${slips} | ${percent(caught, slips)} | ${percent(named, slips)} |`;
  const { torques, wronglyTold, large, small, byUnits } = figures;
  return [
    `${title}: ${torques} torques, ${percent(wronglyTold, torques)} of them told though right`,
    '| written for meant | slips | told | right unit named |',
    '|---|---|---|---|',
    line('eight times and more', large),
    line('less', small),
    ...[...byUnits].sort(([a], [b]) => a.localeCompare(b)).map(([name, count]) => line(name, count)),
  ].join('\n');
}

export function percent(part: number, whole: number): string {
  return whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)} %`;
}
