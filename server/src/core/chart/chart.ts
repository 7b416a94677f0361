import type { Severity } from '../analysis/settings';
import type { Instruction } from '../model/generated/types';

/** How a part stands at a moment, on one build. */
export type StandingKind =
  /** In the unit with its final torque. */
  | 'torqued'
  /** In the unit without its final torque: finger-tight. */
  | 'loose'
  /** In the unit, a ring or another part without a torque that was released and holds nothing. */
  | 'released'
  /** In the unit, where it needs no torque. */
  | 'fitted'
  /** In place on something that is itself off. */
  | 'bench'
  | 'off'
  /** Off and cleaned, lubricated, threadlocked, heated or cooled for its fitting. */
  | 'ready'
  /** Sent out. */
  | 'away'
  /** Scrapped or given back. */
  | 'gone'
  /** Not met yet: new and never fitted, or a temporary part that is not in use. */
  | 'absent';

export interface Standing {
  readonly kind: StandingKind;
  /** How many pieces are in place where it is neither none nor all of them. */
  readonly pieces: number | undefined;
  readonly heat: 'hot' | 'cold' | undefined;
  /** It bears a mark of its position. */
  readonly marked: boolean;
}

/** One thing done to a part: the verb, and what was applied or measured where that has a name. */
export interface Deed {
  readonly verb: Instruction['verb'];
  readonly what: string | undefined;
  /** It puts a part in its marked position, or makes the mark. */
  readonly mark: 'made' | 'aligned' | undefined;
  /** The part was looked at, measured or checked. */
  readonly examines: boolean;
}

/** What one instruction does to one part. */
export interface ChartBeat {
  /** Place of the instruction among the beats of its step, from 0. */
  readonly beat: number;
  /** Undefined where the part only goes with what carries it. */
  readonly deed: Deed | undefined;
  /** How it stands afterwards, and whether that is new. */
  readonly standing: Standing;
  readonly changed: boolean;
  /** Where the instruction stands, in UTF-16 code units of the document. */
  readonly source: number;
}

/** A finding as the chart shows it. Whoever checks has more to say of one; any object with these will do. */
export interface ChartFinding {
  readonly rule: string;
  readonly severity: Severity;
  readonly message: string;
  /** The builds for which it holds, in words; empty where it holds for all. */
  readonly builds: string;
  /** Id of the step at which it stands. */
  readonly step: string | undefined;
  readonly about: readonly string[];
}

/** Where something happens to a part, or is found about it. A part and step without one have no cell. */
export interface ChartCell {
  /** Index of the step; as many as there are steps for the end of the work. */
  readonly step: number;
  readonly beats: readonly ChartBeat[];
  readonly findings: readonly ChartFinding[];
}

export interface ChartRow {
  readonly part: string;
  readonly name: string;
  /** How many parts carry it in turn: 0 for the base. */
  readonly depth: number;
  readonly isTemporary: boolean;
  /** How it stands as the work begins. */
  readonly start: Standing;
  /** In the order of the steps. */
  readonly cells: readonly ChartCell[];
}

export interface ChartStep {
  readonly id: string;
  /** As on the step sheet of the same build. */
  readonly number: number;
  readonly title: string;
  readonly source: number;
  /** How many of its instructions do something to a part; at least 1. */
  readonly beats: number;
  /** Not on the way that the chart shows, but on another that the build leaves open. */
  readonly isLeftOut: boolean;
  /** What is measured, checked or balanced in it, by name. */
  readonly examined: readonly string[];
  readonly findings: readonly ChartFinding[];
}

export interface ChartPhase {
  readonly title: string;
  /** Index of its first step, and how many there are. */
  readonly first: number;
  readonly count: number;
}

/** The parts of a unit against the steps of a procedure, for one build. It depends on its arguments alone. */
export interface Chart {
  readonly document: string;
  readonly title: string;
  readonly revision: string;
  readonly build: string;
  /** What nobody can know before the work and the chart takes for granted, in words. */
  readonly assumed: readonly string[];
  readonly phases: readonly ChartPhase[];
  readonly steps: readonly ChartStep[];
  /** The base first, each part below what carries it, temporary parts last. */
  readonly rows: readonly ChartRow[];
  /** Findings at no step of the chart. */
  readonly elsewhere: readonly ChartFinding[];
}
