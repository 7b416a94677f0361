import type { Condition, LooseEnd, RecordRow, StepPlace } from './sheet';

/** What is written down about the unit as it comes in, each with the step that asks for it. */
export interface ReceivedUnit {
  /** What may be on the plate, for example `V4-28R`. */
  variants: string[];
  /** Parts of the arriving unit whose serial number the work writes down. */
  serials: SerialRow[];
  /** What the bench finds out about the unit, such as the hand of a nut. */
  found: FoundRow[];
  /** Measurements that are made before anything is taken off. */
  measured: RecordRow[];
  /** Options that a unit of these variants can arrive with. */
  arrivals: ArrivalRow[];
}

export interface FoundRow {
  what: string;
  values: string[];
  condition?: Condition;
  at: StepPlace[];
}

export interface ArrivalRow {
  /** For example `The unit arrived with the wide inlet ring`. */
  what: string;
  values: string[];
  /** How a unit of this sheet arrives; `either` where the sheet serves both. */
  expected: 'with' | 'without' | 'either';
}

/** What is filed of the work beside its torques and measurements. */
export interface SheetRecord {
  serials: SerialRow[];
  /** Parts that the bench uses again or renews. */
  decisions: DecisionRow[];
  /** Measuring and torque tools, whose numbers say what a value was measured with. */
  gauges: GaugeRow[];
  /** Consumables whose batch says what is in the unit. */
  batches: BatchRow[];
  signOffs: SignOff[];
  /** What is not tight as the work ends; absent where the work cannot be walked. */
  looseAtEnd?: LooseEnd[];
}

export interface SerialRow {
  part: string;
  condition?: Condition;
  at: StepPlace[];
}

export interface DecisionRow {
  part: string;
  condition?: Condition;
  /** The last step that may renew it. */
  at: StepPlace[];
}

export interface GaugeRow {
  name: string;
  at: StepPlace[];
  /** ISO 8601 calendar date. */
  calibrationDue?: string;
}

export interface BatchRow {
  name: string;
  at: StepPlace[];
  /** ISO 8601 calendar date after which it must not be used. */
  expires?: string;
}

/** A hold point, gathered where the record is signed. */
export interface SignOff {
  step: number;
  stepId: string;
  title: string;
  who: string;
  condition?: Condition;
}

/** A slip that goes with parts to one place and comes back with them. */
export interface SentSlip {
  /** Where to and what for, as the writer says it; empty where nothing is said. */
  to: string;
  lines: SentLine[];
}

export interface SentLine {
  /** With how many pieces, for example `water fittings (2)`. */
  part: string;
  condition?: Condition;
  /** The writer's own words about the sending. */
  say?: string;
  /** What must come back with it, as the writer says it. */
  certificate?: string;
  /** The part has a serial number of its own. */
  hasSerial: boolean;
  sent: StepPlace[];
  /** Empty where no step takes it in again. */
  back: StepPlace[];
}

/** Caps that close the ports, to be counted by whoever fits the unit. */
export interface PortCaps {
  name: string;
  at: StepPlace[];
}
