import type { Acceptance } from './acceptance';
import type { Condition, StepPlace } from './sheetSteps';
import type { ComputedBand, Turn } from './sheetTorque';

export interface TorqueRow {
  step: number;
  stepId: string;
  fastener: string;
  /** How many pieces are tightened; absent for one. */
  pieces?: number;
  condition?: Condition;
  /** Absent where nobody has stated the torque. */
  primary?: string;
  secondary?: string;
  angle?: string;
  accepts?: Acceptance;
  turn?: Turn;
  tools: string[];
  /** Present only where computed bands are asked for; then every row has one or more. */
  bands?: ComputedBand[];
}

/** One kind of blank, plug or pin. */
export interface TemporaryLine {
  part: string;
  condition?: Condition;
  /** How many pieces go in; as many boxes ask whether they came out. */
  count: number;
  in: StepPlace[];
  /** Empty where no step takes them out. */
  out: StepPlace[];
}

/**
 * `used`: back in its place; `bench`: used again or renewed, as the bench decides; `new`: the unit came without it; `off`:
 * off the unit, and nothing says what becomes of it.
 */
export type FateKind = 'used' | 'bench' | 'renewed' | 'new' | 'returned' | 'sent' | 'discarded' | 'off';

export interface FateGroup {
  kind: FateKind;
  lines: FateLine[];
}

export interface FateLine {
  /** With how many pieces, for example `water fittings (2)`. */
  part: string;
  condition?: Condition;
  /** Whom or where to, as the writer says it. */
  to?: string;
  at: StepPlace[];
}

export interface RecordRow {
  step: number;
  stepId: string;
  what: string;
  condition?: Condition;
  limits?: string;
  unit: string;
  /** What each value is judged by; absent for a record only, and where the limits cannot be read. */
  accepts?: Acceptance[];
  /** Names of the pieces and of the places that are measured: one blank for each pair; empty is one. */
  rows: string[];
  places: string[];
  /** How often it may be taken; the record has the last time. */
  rounds?: number;
}

/** A concession holds at one step, or for the whole sheet. */
export type ConcessionPlace = { kind: 'step'; step: number; stepId: string } | { kind: 'sheet' };

export interface SheetConcession {
  rule: string;
  at: ConcessionPlace;
  because: string;
  by: string;
  /** ISO 8601 calendar date. */
  until: string;
}

export interface RevisionLine {
  revision: string;
  date: string;
  what: string;
}
