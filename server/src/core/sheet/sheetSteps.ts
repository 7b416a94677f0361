import type { Acceptance } from './acceptance';
import type { Prose, SheetLanguage } from './sheetText';
import type { TorqueCallout, TorqueSetting } from './sheetTorque';
import type { RenewalBox, Sum, TimeBlank, TurnLine } from './stepBlocks';

export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';

/** One panel: a signal word and what it says, always printed before the act it warns of. */
export interface Caution {
  word: SignalWord;
  texts: Prose[];
}

/**
 * When something applies. `build` is already decided and only said; `outcome` is learnt on the bench,
 * so that its branch is printed with a box to tick.
 */
export interface Condition {
  kind: 'build' | 'outcome';
  /** A whole phrase, for example `Only when the nut is left-hand`. */
  text: string;
}

export interface SheetPhase {
  title: string;
  /** The language of the title, where it is not that of the sheet. */
  titleLang?: SheetLanguage;
  condition?: Condition;
  steps: SheetStep[];
  /** What is in place and not tight as the phase ends. */
  looseEnds: LooseEnd[];
}

/** A step by its number on the sheet and its id. */
export interface StepPlace {
  step: number;
  stepId: string;
}

/** A fastener that is in place and not tight. */
export interface LooseEnd {
  /** With how many pieces, for example `Cover screws (2 of 4)`. */
  what: string;
  condition?: Condition;
  need: LooseNeed;
  /** Where that is done; empty where no later step does it. */
  at: StepPlace[];
}

/** The final torque, whichever way it is turned; `seat`: a ring that no torque holds; `off`: it comes off again before it is ever made tight. */
export type LooseNeed = { kind: 'torque'; setting: TorqueSetting } | { kind: 'seat' } | { kind: 'off' };

export interface SheetStep {
  id: string;
  /** Counts through the whole sheet; phases do not restart it. */
  number: number;
  title: string;
  /** The language of the title, where it is not that of the sheet. */
  titleLang?: SheetLanguage;
  condition?: Condition;
  optional: boolean;
  /** It differs from the text that the sheet is compared with. */
  changed?: true;
  /** How many people the step takes; 1 prints nothing. */
  people: number;
  /** A hold point: who must sign before work goes on. */
  sign?: string;
  cautions: Caution[];
  figures: SheetFigure[];
  instructions: Instruction[];
  notes: Prose[];
  findings: SheetFinding[];
}

export interface Instruction {
  text: Prose;
  condition?: Condition;
  cautions: Caution[];
  torque?: TorqueCallout;
  /** Which way to turn, where no torque says it. */
  turning?: TurnLine[];
  reading?: Reading;
  /** Stands in the place of the reading that is worked out. */
  sum?: Sum;
  times?: TimeBlank[];
  /** Boxes for what the bench finds out, one for each value. */
  choices?: string[];
  renewals?: RenewalBox[];
  /** A check that is ticked as passed; `accept` says when it is. */
  check?: { accept?: string };
  /** Lines to write on, each with the label before it; an empty label is a line alone. */
  record?: { labels: string[] };
  figure?: SheetFigure;
  ifNot?: IfNot;
  notes: Prose[];
}

/** What to do when the limit, the check or the inspection fails. */
export interface IfNot {
  text: Prose;
  instructions: Instruction[];
}

/** A blank to fill in: one row for each name in `rows`, one column for each name in `places`. */
export interface Reading {
  name: string;
  unit: string;
  /** Limits in words and figures, for example `0.04 to 0.09 mm`; absent for a record only. */
  limits?: string;
  /** What each value is judged by; absent for a record only, and where the limits cannot be read. */
  accepts?: Acceptance[];
  rows: string[];
  places: string[];
  /** How often it may be taken, where the work may come back to it; each time has its numbered row. */
  rounds?: number;
}

export interface SheetFigure {
  id: string;
  /** The language of its words, where it is not that of the sheet. */
  lang?: SheetLanguage;
  /** Says in words what the picture shows, for whoever cannot see it. */
  alt: string;
  caption?: string;
  image: FigureImage;
}

export type FigureImage =
  | { kind: 'svg'; svg: string }
  | { kind: 'file'; name: string; mediaType: 'image/png' | 'image/jpeg' };

export interface SheetFinding {
  severity: 'error' | 'warning' | 'information';
  rule: string;
  message: string;
}
