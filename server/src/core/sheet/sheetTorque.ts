import type { Acceptance } from './acceptance';
import type { PieceGrid, TurnLine } from './stepBlocks';

export type Hand = 'left' | 'right';
export type TurnDirection = 'clockwise' | 'counter-clockwise';

export interface Turn {
  direction: TurnDirection;
  hand: Hand;
}

/** One torque as printed: `primary` in the first unit, `secondary` in the second. */
export interface TorqueValue {
  primary: string;
  secondary?: string;
  /** A further turn after the torque, for example `110°`. */
  angle?: string;
  /** What the actual torque is judged by. */
  accepts?: Acceptance;
  /** Torques of the passes before the final one, in order. */
  passes: { primary: string; secondary?: string }[];
  /** Absent only where the hand of the thread is not known. */
  turn?: Turn;
}

/** `blank` is a torque that nobody has stated: it prints an empty line, never a value. */
export type SingleSetting =
  | { kind: 'one'; value: TorqueValue; bands?: ComputedBand[] }
  | { kind: 'blank'; turn?: Turn; bands?: ComputedBand[] };

/**
 * Between which torques a joint is usually tightened: worked out for its thread and class, and no value of the maker.
 * `none` says in words what it cannot be worked out without. `when` is there where what the bench finds decides.
 */
export type ComputedBand =
  | { kind: 'band'; when?: string; primary: string; secondary: string; of: string }
  | { kind: 'none'; when?: string; why: string };

/** What holds where the bench finds one thing rather than another. */
export interface TorqueBranch {
  condition: string;
  setting: SingleSetting;
}

export type TorqueSetting = SingleSetting | { kind: 'byOutcome'; branches: TorqueBranch[] };

export interface TorqueCallout {
  fastener: string;
  /** How many pieces are tightened; absent for one. */
  pieces?: number;
  setting: TorqueSetting;
  tools: string[];
  /** What is held and with what, for example `Hold the turbine hexagon with the 12 mm socket.` */
  hold?: string;
  inOrder?: string;
  /** A line for each hand that the bench can find, where the branches differ in nothing else. */
  found?: TurnLine[];
  /** Boxes for each piece and pass, where there is more than one. */
  grid?: PieceGrid;
}
