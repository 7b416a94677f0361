import type { Caution, Condition, SheetFigure } from './sheetSteps';
import type { Prose } from './sheetText';

/** What every sheet says first. `wear` names the protection that the hazards on this sheet need. */
export interface StandingSafety {
  wear: string[];
}

/** What must be known before the first step, piece by piece in the writer's order. */
export type BeforeLine =
  | { kind: 'caution'; caution: Caution }
  | { kind: 'line'; text: Prose }
  | { kind: 'figure'; figure: SheetFigure };

/** A hazard of the whole job with what brings it, for example `Flammable vapour` from `residue-free degreaser`. */
export interface Hazard {
  text: string;
  from: string[];
  /** Codes of the GHS, where a consumable brings the hazard. */
  codes: string[];
  /** Signal word of the statement under the GHS. */
  signalWord?: 'danger' | 'warning';
}

export interface ToolLine {
  id: string;
  name: string;
  count: number;
  size?: string;
  range?: string;
  /** ISO 8601 calendar date. */
  calibrationDue?: string;
}

export interface ConsumableLine {
  id: string;
  name: string;
  amount: ConsumableAmount;
  /** Numbers of the steps that use it, in their order. */
  steps: number[];
  /** Signal word of the label under the GHS. */
  signalWord?: 'danger' | 'warning';
  hazards: { code: string; text: string }[];
  /** ISO 8601 calendar date after which it must not be used. */
  expires?: string;
}

/** `differs`: each of its steps says how much, and one figure for all would be read wrong. */
export type ConsumableAmount = { kind: 'stated'; text: string } | { kind: 'differs' } | { kind: 'none' };

export interface KitList {
  number: string;
  name: string;
  revision: string;
  lines: KitLine[];
}

export interface KitLine {
  item: string;
  part: string;
  number: string;
  quantity: string;
  condition?: Condition;
  /** A number that this line supersedes, so that an old part in the drawer is recognised. */
  replaces?: string;
}
