import type { SheetFigure, Turn } from './sheet';

/**
 * The blocks that stand within a step beside its words: which way to turn, boxes for each piece and pass, sums worked
 * out on paper, times, and what becomes of a part.
 */

/**
 * Which way something is turned. `condition` is there where what the bench finds decides, and prints a box to tick;
 * `fastener` where several turn differently; `turn` is absent where nobody states the hand.
 */
export interface TurnLine {
  fastener?: string;
  /** A whole phrase, for example `When the hand of the compressor nut is left`. */
  condition?: string;
  turn?: Turn;
}

/** What one row of boxes is for. `only`: there is no other pass; `torque`: a further turn follows the one pass. */
export type GridRow =
  | { kind: 'pass'; number: number }
  | { kind: 'final' }
  | { kind: 'only' }
  | { kind: 'torque' }
  | { kind: 'angle'; angle?: string };

/** A box for each piece in each pass, in as many bands as the pieces need to be told apart. */
export interface PieceGrid {
  rows: GridRow[];
  bands: PieceBand[];
  /** Where the order is stated and can be drawn. */
  picture?: SheetFigure;
}

/**
 * Columns that stand side by side. `ordered` names the pieces in the order in which they are turned, the first of them
 * being turned as the `first`th; where nobody states an order, the boxes have neither names nor numbers.
 */
export type PieceBand = { kind: 'ordered'; first: number; pieces: string[] } | { kind: 'boxes'; count: number };

/** One term of a sum: a blank for what was measured, or a value that is stated. */
export interface SumTerm {
  sign: '+' | '−';
  name: string;
  amount: { kind: 'blank'; unit: string } | { kind: 'stated'; text: string };
}

/** A sum worked out on paper, for example `bore − journal = clearance`. */
export interface Sum {
  terms: SumTerm[];
  result: { name: string; unit: string; limits?: string };
  /** How often it may have to be worked out: more than once where the work goes back. */
  rounds: number;
}

/**
 * A time or a temperature to write down. `on` is when stuff was put on, named where there are several; `earliest` when the joint may be loaded, after
 * the time that the stores state; `start` and `end` of a wait; `in` and `out` of heat or cold.
 */
export type TimeBlank =
  | { kind: 'on'; what?: string }
  | { kind: 'earliest'; after: string }
  | { kind: 'start' }
  | { kind: 'end'; after?: string }
  | { kind: 'in' }
  | { kind: 'out' }
  | { kind: 'temperature'; unit: string; limits?: string };

/** A part that the bench uses again or renews: what was decided, the number of the new one, and who decided. */
export interface RenewalBox {
  part: string;
}
