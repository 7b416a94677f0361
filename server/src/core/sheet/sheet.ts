import type { PortCaps, ReceivedUnit, SentSlip, SheetRecord } from './recordSheet';
import type { FateGroup, RecordRow, RevisionLine, SheetConcession, TemporaryLine, TorqueRow } from './sheetBack';
import type { BeforeLine, ConsumableLine, Hazard, KitList, StandingSafety, ToolLine } from './sheetFront';
import type { SheetFinding, SheetPhase, StepPlace } from './sheetSteps';
import type { Paper, Prose, SheetLanguage, SheetSource, Sides } from './sheetText';

export type {
  ConcessionPlace,
  FateGroup,
  FateKind,
  FateLine,
  RecordRow,
  RevisionLine,
  SheetConcession,
  TemporaryLine,
  TorqueRow,
} from './sheetBack';
export type {
  BeforeLine,
  ConsumableAmount,
  ConsumableLine,
  Hazard,
  KitLine,
  KitList,
  StandingSafety,
  ToolLine,
} from './sheetFront';
export type {
  Caution,
  Condition,
  FigureImage,
  IfNot,
  Instruction,
  LooseEnd,
  LooseNeed,
  Reading,
  SheetFigure,
  SheetFinding,
  SheetPhase,
  SheetStep,
  SignalWord,
  StepPlace,
} from './sheetSteps';
export type { Paper, Prose, Run, SheetLanguage, SheetSource, Sides } from './sheetText';
export type {
  ComputedBand,
  Hand,
  SingleSetting,
  TorqueBranch,
  TorqueCallout,
  TorqueSetting,
  TorqueValue,
  Turn,
  TurnDirection,
} from './sheetTorque';
export type { GridRow, PieceBand, PieceGrid, RenewalBox, Sum, SumTerm, TimeBlank, TurnLine } from './stepBlocks';

/**
 * The published document: one tree that every printer reads. It is plain JSON, and everything in it is decided:
 * steps are numbered, sentences are written, links are resolved, tables are filled. A printer only lays it out,
 * so that the preview and the printed page can never disagree.
 */

export interface Sheet {
  format: 1;
  language: SheetLanguage;
  paper: Paper;
  sides: Sides;
  header: SheetHeader;
  /** Absent only where no documents stand behind the sheet. */
  proof?: SheetProof;
  /** Present while errors stand: printed as a band on every page. */
  notReleased?: { errors: number };
  /** Where the sheet is compared with an earlier text: the steps that differ from it. */
  changes?: SheetChanges;
  safety: StandingSafety;
  /** What is written down about the unit as it arrives; absent where the work starts from parts. */
  asReceived?: ReceivedUnit;
  beforeYouStart: BeforeLine[];
  hazards: Hazard[];
  tools: ToolLine[];
  consumables: ConsumableLine[];
  kits: KitList[];
  phases: SheetPhase[];
  /** Absent only where no documents stand behind the sheet. */
  source?: SheetSource;
  /** Blanks, plugs and pins that the work puts in, to be counted out again. */
  temporaries: TemporaryLine[];
  /** What becomes of the parts that the work takes off or fits; only groups that have a part. */
  fates: FateGroup[];
  torqueTable: TorqueRow[];
  recordTable: RecordRow[];
  /** Findings that belong to no step; shown in the preview only. */
  findings: SheetFinding[];
  concessions: SheetConcession[];
  record: SheetRecord;
  /** A page for each place that parts are sent to. */
  slips: SentSlip[];
  atInstallation: Prose[];
  /** Caps that the work closes the ports with; none prints nothing. */
  portCaps: PortCaps[];
  /** Captions of the figures that the document has and this build does not need. */
  figuresNotNeeded: string[];
  revisions: RevisionLine[];
  /** Texts that the documents have not in the language of the sheet; absent where all are there. */
  untranslated?: UntranslatedText[];
}

/** A text that is printed in the language of its document. */
export interface UntranslatedText {
  /** `name`: of anything that is measured, found out or chosen. */
  kind: 'part' | 'tool' | 'consumable' | 'name' | 'text';
  text: string;
  language: SheetLanguage;
  /** Where a text of the steps stands; empty for a name, and for what stands around the steps. */
  at: StepPlace[];
}

export interface SheetHeader {
  /** The document number, for example `OP-410`. */
  document: string;
  title: string;
  revision: string;
  /** ISO 8601 calendar date of the revision; also dates the PDF, so that its bytes never depend on today. */
  revisionDate?: string;
  status: 'draft' | 'released' | 'withdrawn';
  family: string;
  /** The build in words, for example `V4-28R with the 44 mm wheel`. */
  build: string;
  /** The build by its ids, for example `v4-28r,wheel-44`: short enough for the foot of a page. */
  buildId: string;
  kits: string[];
  preparedBy?: string;
  checkedBy?: string;
  approvedBy?: string;
}

/** From which texts a sheet was made, so that a print can be told from the print of another text. It is no signature. */
export interface SheetProof {
  /** SHA-256 of the list of sources, 64 hexadecimal digits. */
  digest: string;
  /** Its first twelve digits in groups of four, to be compared by eye. */
  short: string;
  builtFrom: SourceFile[];
}

export interface SourceFile {
  /** The path from the folder that holds all sources, with forward slashes. */
  name: string;
  /** SHA-256 of the text in UTF-8. */
  sha: string;
  /** With line feeds alone and no byte order mark. */
  text: string;
}

/** What has changed since an earlier text. A step that is gone is named by its title then. */
export interface SheetChanges {
  /** What it is compared with: a revision, else whatever names that text. */
  since: { kind: 'revision' | 'text'; name: string };
  steps: ChangedStep[];
}

export type ChangedStep =
  | { kind: 'here'; step: number; stepId: string; title: string }
  | { kind: 'gone'; title: string };
