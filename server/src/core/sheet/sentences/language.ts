import type { Instruction } from '../../model/generated/types';
import type { Count, QuantityValue, Ref, SignedTerm, Prose as WrittenProse } from '../../model/values';
import type { Hand, Prose, TorqueSetting, TurnDirection } from '../sheet';
import type { Grammar, Thing } from './grammar';

export type ToolUse = { readonly tool?: Ref; readonly count?: Count };

/** Which way to turn. `open`: it depends on what the bench finds, and boxes beside the sentence say on what. */
export type TurnFacts =
  | { readonly kind: 'known'; readonly direction: TurnDirection; readonly hand: Hand }
  | { readonly kind: 'open' }
  | { readonly kind: 'unknown' };

/** What is counter-held, and with what. */
export interface HoldFacts {
  readonly at: Prose;
  readonly with: readonly Thing[];
}

/** The joint that a band of torque is worked out for. */
export interface BandJoint {
  /** As the family writes it, for example `M5×0.8`. */
  readonly thread: string;
  /** Of the weakest part, for example `8.8`, or `grade 8`. */
  readonly propertyClass: string;
  /** Where the strength is from, for example `ISO 898-1`. */
  readonly standard: string;
  /** The parts whose class is not known. */
  readonly unknown: readonly Thing[];
  readonly hasPrevailing: boolean;
}

/** What stands against working a band of torque out. */
export type NoBand = 'no-thread' | 'odd-thread' | 'no-class' | 'odd-class' | 'no-strength' | 'angle';

/** Everything that a sentence may need to know, decided for the build. It asks by reference and is told names. */
export interface SentenceFacts {
  part(ref: Ref): Thing;
  tool(use: ToolUse): Thing;
  consumable(ref: Ref): Thing;
  /** A limit, reading, dimension, outcome or balance group. */
  value(ref: Ref): Thing;
  /** In the units of the sheet: `5.1 ± 0.3 N·m (45 ± 3 lbf·in)`. */
  quantity(value: QuantityValue): string;
  prose(written: WrittenProse): Prose;
  term(term: SignedTerm): { readonly sign: 1 | -1; readonly name: Prose };
  /** Whether the part comes new out of the kit at every rebuild. */
  alwaysRenewed(ref: Ref): boolean;
  readonly turn: TurnFacts;
  readonly hold: HoldFacts | undefined;
  /** How it faces and what it locates on, as the instruction says it, else the family. */
  readonly orient: Prose | undefined;
  readonly locate: Prose | undefined;
  readonly torque: TorqueSetting | undefined;
  /** Order of the pieces, as names. */
  readonly inOrder: readonly string[];
  readonly places: readonly string[];
  readonly from: readonly SignedTerm[];
  /** Sizes that a part comes in, and the step between them, in the units of the sheet. */
  readonly sizes: { readonly range: string; readonly step: string | undefined } | undefined;
  /** What the bench can find, as its values are written. */
  readonly findable: readonly string[];
  /** The sentence of a check of the family. */
  readonly check: Prose | undefined;
  readonly grade: string | undefined;
  /** Time that the consumables waited for need, where the stores say it. */
  readonly cure: string | undefined;
  /** Parts taken off here that are not fitted again. */
  readonly discarded: readonly Ref[];
}

/** The writer of each verb's sentence. */
export type VerbWriters = {
  readonly [Verb in Instruction['verb']]: (
    instruction: Extract<Instruction, { verb: Verb }>,
    facts: SentenceFacts,
  ) => Prose;
};

/** One way in which a condition can come true. */
export interface Alternative {
  readonly variants: readonly string[];
  readonly finished: readonly { readonly option: Thing; readonly present: boolean }[];
  readonly arrived: readonly { readonly option: Thing; readonly present: boolean }[];
  readonly found: readonly {
    readonly what: Thing;
    readonly values: readonly string[];
    /** `renewal`: whether a part was re-used or renewed. */
    readonly kind: 'identified' | 'renewal';
  }[];
  readonly ways: readonly Way[];
}

/** A way that the work takes: an optional step or not, or a result that is right or not. */
export type Way =
  | { readonly is: 'optional'; readonly title: string; readonly done: boolean }
  /** A check by its sentence, without a full stop. */
  | { readonly is: 'check'; readonly said: string; readonly holds: boolean }
  /** What was measured or inspected; undefined where nothing names it. */
  | { readonly is: 'result'; readonly what: Thing | undefined; readonly right: boolean };

/** A build by its variant and options; `arrives` where it is settled how the unit comes in. */
export interface NamedBuild {
  readonly variant: string | undefined;
  readonly finished: readonly Thing[];
  readonly arrives?: readonly Thing[];
}

/** What the sheet says around the sentences. */
export interface Phrases {
  /** `V4-28R + 44 mm machined compressor wheel, received with no options`. */
  build(build: NamedBuild): string;
  /** `K-V4-M revision 4`. */
  kit(number: string, revision: string): string;
  /** `the hand of the compressor nut is left, or the unit arrived with the wide inlet ring`. */
  clause(alternatives: readonly Alternative[]): string;
  onlyWhen(clause: string): string;
  when(clause: string): string;
  valueWhen(value: string, clause: string): string;
  hold(hold: HoldFacts): Prose;
  inOrder(names: readonly string[]): string;
  plus(torque: string, reading: string): string;
  /** `4.4 to 9.1 N·m`. */
  range(low: string, high: string, unit: string): string;
  bandOf(joint: BandJoint): string;
  noBand(why: NoBand): string;
  atMost(value: string): string;
  atLeast(value: string): string;
  piecesOf(thing: Thing, count: number): string;
  /** `cover screws (4)`, or of several: `cover screws (2 of 4)`. */
  pieces(thing: Thing, count: number, of?: number): string;
  /** What the bench finds, as its value is written in the document: `left`. */
  found(value: string): string;
  notStated: string;
  torqueToSet: string;
  sizeChosen: string;
  serialNumberOf(part: Thing): string;
  planes(count: number): string[];
  residualUnbalance(group: Thing): string;
  replace(parts: readonly Thing[]): Prose;
  rejectParts(parts: readonly Thing[]): Prose;
  rejectUnit: Prose;
  goBack(step: Prose, atMost: number | undefined): Prose;
  stillNot(then: Prose): Prose;
  step(number: number): string;
  stepElsewhere(title: string): string;
  figure(name: string): string;
  arrivedWith(option: Thing): string;
  yes: string;
  no: string;
  signer(role: 'fitter' | 'inspector' | 'supervisor' | 'customer'): string;
  protection(of: 'eyes' | 'skin' | 'breath'): string;
  superseded(number: string, by: string): string;
}

/** All that a sheet language brings for written sentences. */
export interface SheetWriting {
  readonly grammar: Grammar;
  readonly phrases: Phrases;
  readonly verbs: VerbWriters;
}
