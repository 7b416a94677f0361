import type { ProcedureView } from '../../analysis/procedureView';
import type { Settings } from '../../analysis/settings';
import type { Build, BuildSet } from '../../builds';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { SheetWriting } from '../sentences/language';
import type { Paper, SheetLanguage, Sides } from '../sheet';
import type { ConditionWords } from './conditionWords';
import type { Ground } from './ground';
import type { Names } from './names';
import type { ProseReader } from './proseReader';
import type { QuantityWords } from './quantityWords';
import type { StepNames } from './stepNames';
import type { Untranslated } from './untranslated';
import type { Uses } from './uses';

/** The build that a sheet is for: as named, and the set of builds and outcomes that it leaves open. */
export interface PickedSet {
  readonly build: Build;
  readonly set: BuildSet;
}

/** A finding as a sheet shows it. Whoever checks has more to say of one; any object with these will do. */
export interface FindingAtStep {
  readonly rule: string;
  readonly severity: 'error' | 'warning' | 'info';
  readonly message: string;
  /** The builds for which it holds, in words; empty where it holds for all. */
  readonly builds: string;
  /** Id of the step at which it stands. */
  readonly step: string | undefined;
}

/** A concession that lets a finding stand, by the rule and the step that it names. */
export interface ConcessionInForce {
  readonly rule: string;
  readonly step: string | undefined;
  readonly because: string;
  readonly by: string;
  /** ISO 8601 calendar date. */
  readonly until: string;
}

/** What an earlier text is called, and which steps differ from it. */
export interface ChangedSince {
  readonly since: { readonly kind: 'revision' | 'text'; readonly name: string };
  readonly steps: ReadonlySet<string>;
  /** Titles of steps that are gone. */
  readonly gone: readonly string[];
}

export interface SheetOptions {
  /** What stands against the procedure, without what a concession lets stand. */
  readonly findings: readonly FindingAtStep[];
  /** By default every concession of the procedure, whatever its date, since a sheet never depends on today. */
  readonly concessions?: readonly ConcessionInForce[];
  readonly settings: Settings;
  readonly language: SheetLanguage;
  readonly paper: Paper;
  /** By default what the settings say. */
  readonly sides?: Sides;
  /** Whether the torque table shows what each joint usually takes, worked out; by default only what is stated. */
  readonly torqueBands?: 'computed' | 'left-out';
  /** The steps that differ from an earlier text, by id, where the sheet marks them. */
  readonly changed?: ChangedSince;
  /** The text of a figure by its URI, where the snapshot has not loaded it. */
  readonly readFigure?: (uri: string) => string | undefined;
}

/** Everything that the parts of the builder share, made once for a sheet. */
export interface BuildContext {
  readonly procedure: ProcedureView;
  readonly document: SyntaxDocument;
  readonly picked: PickedSet;
  readonly options: SheetOptions;
  readonly writing: SheetWriting;
  readonly names: Names;
  readonly untranslated: Untranslated;
  readonly quantities: QuantityWords;
  readonly conditions: ConditionWords;
  readonly prose: ProseReader;
  /** Every instruction that is on the sheet, with the number of its step. */
  readonly uses: Uses;
  readonly stepNames: StepNames;
  /** What was built for the last sheets of this build hangs on it. */
  readonly ground: Ground;
}
