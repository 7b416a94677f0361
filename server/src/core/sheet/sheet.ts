import type { Acceptance } from './acceptance';
import type { PieceGrid, RenewalBox, Sum, TimeBlank, TurnLine } from './stepBlocks';

export type { GridRow, PieceBand, PieceGrid, RenewalBox, Sum, SumTerm, TimeBlank, TurnLine } from './stepBlocks';

import type { PortCaps, ReceivedUnit, SentSlip, SheetRecord } from './recordSheet';

/**
 * The published document: one tree that every printer reads. It is plain JSON, and everything in it is decided:
 * steps are numbered, sentences are written, links are resolved, tables are filled. A printer only lays it out,
 * so that the preview and the printed page can never disagree.
 */

/** Languages that the fixed labels exist in. */
export type SheetLanguage = 'en' | 'de' | 'es';

export type Paper = 'a4' | 'letter';

/** Printed on one side of the paper, or on both with the margins of facing pages mirrored. */
export type Sides = 'single' | 'double';

/** A place in a source document, as a character offset, so that a click on the sheet can open the source. */
export interface SheetSource {
  uri: string;
  offset: number;
}

/** A stretch of text with what it means; printers decide how each kind looks. */
export type Run = (
  | { kind: 'text'; text: string }
  | { kind: 'strong'; text: string }
  | { kind: 'part'; text: string }
  | { kind: 'tool'; text: string }
  | { kind: 'consumable'; text: string }
  | { kind: 'quantity'; text: string }
  | { kind: 'stepLink'; text: string; step: string }
) & {
  /** The language of these words, where it is not that of the sheet, so that they are pronounced right. */
  lang?: SheetLanguage;
};

export type Prose = Run[];

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

/** What every sheet says first. `wear` names the protection that the hazards on this sheet need. */
export interface StandingSafety {
  wear: string[];
}

export type SignalWord = 'danger' | 'warning' | 'caution' | 'notice';

/** One panel: a signal word and what it says, always printed before the act it warns of. */
export interface Caution {
  word: SignalWord;
  texts: Prose[];
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

/** What has changed since an earlier text. A step that is gone is named by its title then. */
export interface SheetChanges {
  /** What it is compared with: a revision, else whatever names that text. */
  since: { kind: 'revision' | 'text'; name: string };
  steps: ChangedStep[];
}

export type ChangedStep =
  | { kind: 'here'; step: number; stepId: string; title: string }
  | { kind: 'gone'; title: string };

export interface SheetStep {
  id: string;
  /** Counts through the whole sheet; phases do not restart it. */
  number: number;
  title: string;
  /** The language of the title, where it is not that of the sheet. */
  titleLang?: SheetLanguage;
  source: SheetSource;
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
