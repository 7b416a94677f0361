// Generated from schemas/ by npm run generate; do not edit.
import type { Node, ScalarNode } from '../../syntax/node';
import type {
  ByBuild, Choice, Condition, Count, CountedRef, DateText, Declared, Entry, Flag, PathRef, Prose, QuantityValue, Ref,
  RefOrProse, SignedTerm, Text,
} from '../values';

/** A family of turbochargers: variants, options, parts and how they hold each other, threads, dimensions, limits and checks. */
export interface FamilyDocument {
  readonly node: Node;
  /** Version of the document format. Always 1. */
  readonly witnessmark?: Count;
  /** Id of the family. */
  readonly family?: Declared;
  /** Name of the family. */
  readonly name?: Prose;
  /** Highest speed of the rotor in service. */
  readonly maxSpeed?: QuantityValue;
  /** The variants by id. */
  readonly variants?: readonly Entry<Variant>[];
  /** What a unit may have beyond its variant. */
  readonly options?: readonly Entry<Option>[];
  /** What only the bench can tell. */
  readonly identify?: readonly Entry<Identify>[];
  /** The part on which everything else sits, straight or through other parts. */
  readonly base?: Ref;
  /** The parts by id. */
  readonly parts?: readonly Entry<Part>[];
  /** Sub-assemblies at which a procedure may start or end. */
  readonly assemblies?: readonly Entry<Assembly>[];
  /** Parts that are balanced together. */
  readonly balanceGroups?: readonly Entry<BalanceGroup>[];
  /** Checks that a procedure calls by id. */
  readonly checks?: readonly Entry<Check>[];
  /** Dimensions with their tolerances. */
  readonly dimensions?: readonly Entry<ByBuild<QuantityValue>>[];
  /** What is measured against what. */
  readonly limits?: readonly Entry<Limit>[];
  /** Values that are read and used later. */
  readonly readings?: readonly Entry<Reading>[];
  /** Figures by id. */
  readonly figures?: readonly Entry<Figure>[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A variant of the family. */
export interface Variant {
  readonly node: Node;
  /** Name of the variant as on its plate. */
  readonly name?: Prose;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** An option: what a unit may have beyond its variant. */
export interface Option {
  readonly node: Node;
  /** Name of the option. */
  readonly name?: Prose;
  /** Variants that can have it; all where none is named. */
  readonly variants?: readonly Ref[];
  /** Options it cannot be without. */
  readonly needs?: readonly Ref[];
  /** Options it cannot be together with. */
  readonly excludes?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** What only the bench can tell. */
export interface Identify {
  readonly node: Node;
  /** What is found out, as the sheet prints it. */
  readonly name?: Prose;
  /** What it can turn out to be. */
  readonly values?: readonly Text[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** A figure that shows how to tell. */
  readonly figure?: Ref;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A part of the unit. */
export interface Part {
  readonly node: Node;
  /** What the sheet calls the part, in lower case, without an article. */
  readonly name?: Prose;
  /** Other names the trade uses for it. */
  readonly also?: readonly Text[];
  /** What sort of part it is. */
  readonly kind?: Choice<'nut' | 'bolt' | 'screw' | 'stud' | 'washer' | 'clamp' | 'retaining-ring' | 'seal-ring' | 'o-ring' | 'gasket' | 'bearing' | 'thrust-bearing' | 'collar' | 'spacer' | 'wheel' | 'shaft' | 'housing' | 'plate' | 'shield' | 'pin' | 'plug' | 'fitting' | 'pipe' | 'spring' | 'actuator' | 'lever' | 'rod' | 'vane' | 'sensor' | 'plate-label'>;
  /** The maker's part number, exactly as printed. */
  readonly number?: ByBuild<Text>;
  /** How many pieces of it the unit has. */
  readonly quantity?: ByBuild<Count>;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Parts whose place it takes on the builds that have it. */
  readonly insteadOf?: readonly Ref[];
  /** The part it is carried by: one, a list, or a map from part to the number of pieces there. */
  readonly sitsOn?: readonly CountedRef[];
  /** Fasteners that hold it. */
  readonly fastenedBy?: readonly Ref[];
  /** Whether its fasteners must come off or only be loose before it can be removed; on a fastener: what it needs for the parts it holds. */
  readonly freesWhen?: Choice<'off' | 'loose'>;
  /** Parts whose joint it seals; opening that joint spends it. */
  readonly seals?: readonly Ref[];
  /** The part whose thread it is screwed to. */
  readonly matesWith?: readonly Ref[];
  /** Thread designation as ISO 965-1 or ASME B1.1 writes it, for example M5×0.8 or 1/4-28 UNF-2A. */
  readonly thread?: ByBuild<Text>;
  /** Which way the thread runs. Left: turn counter-clockwise to tighten. */
  readonly hand?: ByBuild<Choice<'left' | 'right'>>;
  /** Property class or grade as marked on the fastener, for example 8.8, 10, A2-70. */
  readonly propertyClass?: ByBuild<Text>;
  /** Width across flats of its hexagon or of its socket drive. */
  readonly acrossFlats?: ByBuild<QuantityValue>;
  /** How a tool takes hold of it. */
  readonly drive?: Choice<'hexagon' | 'socket-hexagon' | 'hexalobular' | 'bi-hexagon' | 'square' | 'slot' | 'cross' | 'pin-holes' | 'knurl'>;
  /** Size of a drive that has no width across flats, for example T30. */
  readonly driveSize?: Text;
  /** Outside diameter of the face under its head. */
  readonly bearingDiameter?: ByBuild<QuantityValue>;
  /** Friction coefficient of thread and face where the maker states one, in per cent. */
  readonly friction?: QuantityValue;
  /** Tightening torque, with unit and tolerance, as the maker states it. */
  readonly torque?: ByBuild<QuantityValue>;
  /** Angle turned after the torque, as the maker states it. */
  readonly angle?: ByBuild<QuantityValue>;
  /** Torque needed to turn a locking fastener before it seats. */
  readonly prevailingTorque?: ByBuild<QuantityValue>;
  /** Order in which the pieces are tightened. */
  readonly inOrder?: readonly Text[];
  /** Where it must be counter-held while it is turned. */
  readonly hold?: Prose;
  /** What locks its adjustment. */
  readonly lockedBy?: readonly Ref[];
  /** Parts that must be off before it can be reached. */
  readonly behind?: readonly Ref[];
  /** What must be done to it, since it came off or out of its bag, before it is fitted. */
  readonly beforeFitting?: readonly Choice<'clean' | 'inspect' | 'lubricate' | 'threadlock' | 'heat' | 'cool' | 'mark' | 'measure'>[];
  /** What it locates on: pin, notch, groove. */
  readonly locate?: Prose;
  /** How it faces when it is fitted. */
  readonly orient?: Prose;
  /** Range of the sizes it comes in. */
  readonly sizes?: QuantityValue;
  /** Step between its sizes. */
  readonly sizeStep?: QuantityValue;
  /** Whether it is always renewed, renewed on condition, or never (the default). */
  readonly renew?: Choice<'always' | 'on-condition' | 'never'>;
  /** Parts that are renewed or refitted only together with it, as a set. */
  readonly comesWith?: readonly Ref[];
  /** Its serial number is recorded. */
  readonly serial?: Flag;
  /** Ways of cleaning that would spoil it. */
  readonly neverCleanWith?: readonly Choice<'wash' | 'ultrasonic' | 'brush' | 'wire-brush' | 'wipe' | 'blast' | 'caustic' | 'solvent' | 'steam' | 'compressed-air'>[];
  /** A blank, plug or pin that must not stay in the finished unit. */
  readonly temporary?: Flag;
  /** It carries a mark of its maker to be aligned by. */
  readonly makerMark?: Flag;
  /** The fit on the part it sits on. */
  readonly fit?: {
    readonly node: Node;
    /** The other part. */
    readonly with?: Ref;
    /** The bore's dimension. */
    readonly bore?: Ref;
    /** The shaft's dimension. */
    readonly shaft?: Ref;
    /** The fit as ISO 286-1 writes it, with the nominal size, for example 25 H7/p6. */
    readonly class?: Text;
    /** Interference on the diameter, as the drawing states it: how much larger the shaft is than the bore. */
    readonly interference?: QuantityValue;
    /** Clearance wanted while it is slid on hot. */
    readonly clearance?: QuantityValue;
  };
  /** Material, as its drawing states it. */
  readonly material?: Text;
  /** Coefficient of linear expansion, in 10⁻⁶ per kelvin. */
  readonly expansion?: Text;
  /** Highest temperature it stands while it is fitted. */
  readonly maxTemperature?: ByBuild<QuantityValue>;
  /** Its mass. */
  readonly mass?: ByBuild<QuantityValue>;
  /** Cross-section of an O-ring. */
  readonly section?: QuantityValue;
  /** Inside diameter of an O-ring. */
  readonly insideDiameter?: QuantityValue;
  /** The groove of an O-ring. */
  readonly groove?: {
    readonly node: Node;
    /** Depth from the groove's floor to the mating face. */
    readonly depth?: QuantityValue;
    /** Width of the groove. */
    readonly width?: QuantityValue;
    /** Diameter of the groove's floor. */
    readonly diameter?: QuantityValue;
    /** Whether the joint moves. */
    readonly motion?: Choice<'static' | 'dynamic'>;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A sub-assembly. */
export interface Assembly {
  readonly node: Node;
  /** Name of the sub-assembly. */
  readonly name?: Prose;
  /** The parts it holds. */
  readonly parts?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Parts that are balanced together. */
export interface BalanceGroup {
  readonly node: Node;
  /** Name of the group. */
  readonly name?: Prose;
  /** Its parts. */
  readonly members?: readonly Ref[];
  /** Re-used members go back in the position to each other that they were balanced in. */
  readonly keepPosition?: Flag;
  /** Balance grade as ISO 21940-11 writes it, for example G 6.3. */
  readonly grade?: Text;
  /** Mass of the group. */
  readonly mass?: QuantityValue;
  /** Number of correction planes. */
  readonly planes?: Count;
  /** Permissible residual unbalance, as the maker states it. */
  readonly permissible?: QuantityValue;
  /** Whether the permissible unbalance, and what a procedure accepts, is meant for the whole rotor (the default) or for each correction plane. */
  readonly permissibleFor?: Choice<'rotor' | 'plane'>;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A check by id. */
export interface Check {
  readonly node: Node;
  /** What must be found true. */
  readonly say?: Prose;
  /** Parts whose last touch the check must come after. */
  readonly after?: readonly Ref[];
  /** What is acceptable where a value is read. */
  readonly accept?: ByBuild<QuantityValue>;
  /** A figure that shows it. */
  readonly figure?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** What is measured against what. */
export interface Limit {
  readonly node: Node;
  /** What is measured, as the sheet prints it. */
  readonly name?: Prose;
  /** What is acceptable. */
  readonly accept?: ByBuild<QuantityValue>;
  /** Signed dimensions that it results from, for example [+bearing-bore, -shaft-journal]. */
  readonly from?: readonly SignedTerm[];
  /** Parts that make a result worthless once they are touched again. */
  readonly voidBy?: readonly Ref[];
  /** Where it is measured: a number of places or their names. */
  readonly places?: readonly Prose[];
  /** A figure that shows how to measure it. */
  readonly figure?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A value that is read on the bench and used later. */
export interface Reading {
  readonly node: Node;
  /** What is read, as the sheet prints it. */
  readonly name?: Prose;
  /** The dimension of the value. */
  readonly quantity?: Choice<'torque' | 'force' | 'length' | 'angle' | 'temperature' | 'pressure' | 'mass' | 'unbalance' | 'time' | 'rotational-speed' | 'voltage' | 'current' | 'resistance' | 'flow' | 'ratio'>;
  /** What is acceptable. */
  readonly accept?: ByBuild<QuantityValue>;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A figure. */
export interface Figure {
  readonly node: Node;
  /** Path of the SVG file, relative to this document. */
  readonly file?: PathRef;
  /** What the figure shows, in words, for whoever cannot see it. */
  readonly alt?: Prose;
  /** The line printed below the figure. */
  readonly caption?: Prose;
}

/** What a kit contains, by line, quantity and build. */
export interface KitDocument {
  readonly node: Node;
  /** Version of the document format. Always 1. */
  readonly witnessmark?: Count;
  /** Number of the kit, exactly as on its box. */
  readonly kit?: Text;
  /** Name of the kit. */
  readonly name?: Prose;
  /** Revision of the kit bill. */
  readonly revision?: Text;
  /** Path of the family document, relative to this one. */
  readonly family?: PathRef;
  /** The lines of the kit bill. */
  readonly lines?: readonly Line[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A line of the kit bill. */
export interface Line {
  readonly node: Node;
  /** Item number of the line. */
  readonly item?: Text;
  /** The part it supplies. */
  readonly part?: Ref;
  /** Part number, exactly as printed on the bag. */
  readonly number?: Text;
  /** Own name of the item, where it differs from the part's. */
  readonly name?: Prose;
  /** How many pieces the kit holds. */
  readonly quantity?: Count;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Part numbers that this one supersedes. */
  readonly replaces?: readonly Text[];
  /** The part number that supersedes this one. */
  readonly supersededBy?: Text;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** The tools and consumables that the shop holds. */
export interface StoresDocument {
  readonly node: Node;
  /** Version of the document format. Always 1. */
  readonly witnessmark?: Count;
  /** Name of the stores. */
  readonly stores?: Text;
  /** The tools by id. */
  readonly tools?: readonly Entry<Tool>[];
  /** The consumables by id. */
  readonly consumables?: readonly Entry<Consumable>[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A tool. */
export interface Tool {
  readonly node: Node;
  /** What the sheet calls the tool. */
  readonly name?: Prose;
  /** Other names of it. */
  readonly also?: readonly Text[];
  /** What sort of tool it is. */
  readonly kind?: Choice<'torque-wrench' | 'torque-screwdriver' | 'socket' | 'bit' | 'crow-foot' | 'spanner' | 'hexagon-key' | 'screwdriver' | 'extension' | 'ratchet' | 't-handle' | 'angle-gauge' | 'ring-pliers' | 'pliers' | 'ring-compressor' | 'puller' | 'press' | 'arbor' | 'holding-fixture' | 'soft-hammer' | 'gauge' | 'micrometer' | 'calliper' | 'bore-gauge' | 'feeler' | 'indicator' | 'scale' | 'balance-machine' | 'oven' | 'hot-plate' | 'thermometer' | 'pressure-source' | 'pressure-gauge' | 'vacuum-source' | 'wash-tank' | 'ultrasonic-bath' | 'blast-cabinet' | 'brush' | 'scraper' | 'marker' | 'lamp' | 'lifting-gear' | 'other'>;
  /** Inventory number. */
  readonly number?: Text;
  /** Width across flats it fits. */
  readonly size?: QuantityValue;
  /** Size of a drive that has no width across flats, for example T30. */
  readonly driveSize?: Text;
  /** Smallest step that can be read. */
  readonly resolution?: QuantityValue;
  /** Smallest to largest value that it measures or sets. */
  readonly range?: QuantityValue;
  /** Permissible deviation, in per cent of the value or as a value. */
  readonly accuracy?: QuantityValue;
  /** Square drive. */
  readonly square?: QuantityValue;
  /** From the middle of the square to the middle of the grip, where a torque wrench is pulled; of an extension bar, its length. */
  readonly length?: QuantityValue;
  /** From the middle of its square to the middle of the fastener, of a crow-foot or another head that stands out from the wrench. */
  readonly offset?: QuantityValue;
  /** Angle at which it always stands to the wrench: 0° straight on; 90° square to it, where the setting needs no correction. */
  readonly setAt?: QuantityValue;
  /** Which way a torque tool measures: right (clockwise) only, or both. */
  readonly direction?: Choice<'right' | 'both'>;
  /** Type and class as ISO 6789-1 writes it, for example II A. */
  readonly torqueType?: Text;
  /** Day on which its calibration ends. */
  readonly calibrationDue?: DateText;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A consumable. */
export interface Consumable {
  readonly node: Node;
  /** What the sheet calls the consumable. */
  readonly name?: Prose;
  /** Other names of it. */
  readonly also?: readonly Text[];
  /** What sort of consumable it is. */
  readonly kind?: Choice<'threadlocker' | 'sealant' | 'oil' | 'grease' | 'anti-seize' | 'assembly-paste' | 'solvent' | 'cleaner' | 'penetrant' | 'marking-compound' | 'paint' | 'blast-media' | 'wipe' | 'plug-cap' | 'wire' | 'abrasive' | 'other'>;
  /** Order number. */
  readonly number?: Text;
  /** Time until it has set. */
  readonly cure?: QuantityValue;
  /** Highest temperature it stands in service. */
  readonly maxTemperature?: QuantityValue;
  /** Hazard statements of its safety data sheet, by GHS code. */
  readonly hazards?: readonly Text[];
  /** Signal word of its label. */
  readonly signalWord?: Choice<'danger' | 'warning'>;
  /** Which safety data sheet the hazards are from, with its date. */
  readonly dataSheet?: Text;
  /** Day after which it must not be used. */
  readonly expires?: DateText;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A rebuild procedure: phases and steps for the builds that it covers. */
export interface ProcedureDocument {
  readonly node: Node;
  /** Version of the document format. Always 1. */
  readonly witnessmark?: Count;
  /** Number of the procedure. */
  readonly procedure?: Text;
  /** Title of the procedure. */
  readonly title?: Prose;
  /** Revision, by letter or number. */
  readonly revision?: Text;
  /** Where it stands in its life. */
  readonly status?: Choice<'draft' | 'released' | 'withdrawn'>;
  /** Path of the family document, relative to this one. */
  readonly family?: PathRef;
  /** Path of the kit bill, or a list of them. */
  readonly kit?: readonly PathRef[];
  /** Path of the stores document, or a list of them. */
  readonly stores?: readonly PathRef[];
  /** The units it covers. */
  readonly covers?: {
    readonly node: Node;
    /** Variants that it covers; all where none is named. */
    readonly variants?: readonly Ref[];
    /** Options that a unit may arrive with; none where the list is absent. A procedure without `covers` covers the whole family. */
    readonly options?: readonly Ref[];
  };
  /** Options that may be fitted by this procedure. */
  readonly adds?: readonly Ref[];
  /** How the unit is at the start: assembled, parts, or an assembly of the family. */
  readonly starts?: Ref;
  /** How the unit is at the end: assembled, parts, or an assembly of the family. */
  readonly ends?: Ref;
  /** Who prepared it. */
  readonly preparedBy?: Text;
  /** Who checked it. */
  readonly checkedBy?: Text;
  /** Who approved it. */
  readonly approvedBy?: Text;
  /** What changed, newest first. */
  readonly revisions?: readonly Revision[];
  /** Tools the fitter lays out before starting. */
  readonly tools?: readonly Ref[];
  /** Consumables the fitter lays out before starting. */
  readonly consumables?: readonly Ref[];
  /** What the fitter wears. */
  readonly protectiveEquipment?: readonly Prose[];
  /** Values that are read and used later in this procedure. */
  readonly readings?: readonly Entry<ProcedureReading>[];
  /** Figures by id. */
  readonly figures?: readonly Entry<ProcedureFigure>[];
  /** What must be known before the first step. */
  readonly beforeYouStart?: readonly NoticeLine[];
  /** The phases in their order. */
  readonly phases?: readonly Phase[];
  /** Findings that are let stand, each at one step. */
  readonly concessions?: readonly Concession[];
  /** What whoever installs the unit must do. */
  readonly atInstallation?: readonly Prose[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A revision of the procedure. */
export interface Revision {
  readonly node: Node;
  /** The revision. */
  readonly revision?: Text;
  /** Day of the revision. */
  readonly date?: DateText;
  /** What changed. */
  readonly what?: Prose;
  /** Who changed it. */
  readonly by?: Text;
}

/** A text, or a warning, caution or notice. */
export interface NoticeLine {
  readonly node: Node;
  /** A plain text. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A phase of the work. */
export interface Phase {
  readonly node: Node;
  /** Name of the phase. */
  readonly phase?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
  /** The steps in their order. */
  readonly steps?: readonly Step[];
}

/** A step. */
export interface Step {
  readonly node: Node;
  /** Id of the step. */
  readonly step?: Declared;
  /** What is done, in a few words. */
  readonly title?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Who must sign before the work goes on. */
  readonly sign?: Choice<'fitter' | 'inspector' | 'supervisor' | 'customer'>;
  /** How many people it takes. */
  readonly people?: Count;
  /** The step may be left out. */
  readonly optional?: Flag;
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
  /** The instructions in their order. */
  readonly do?: readonly Instruction[];
}

/** An instruction in words alone. */
export interface Sentence {
  readonly node: Node;
  readonly verb: 'say';
  readonly verbKey: ScalarNode;
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Loosen a fastener without taking it off. */
export interface LoosenInstruction {
  readonly node: Node;
  readonly verb: 'loosen';
  readonly verbKey: ScalarNode;
  /** Fasteners to loosen. */
  readonly loosen?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is counter-held, and with what. */
  readonly hold?: {
    readonly node: Node;
    /** Where it is held. */
    readonly at?: Prose;
    /** Tools it is done with. */
    readonly with?: readonly ({
      readonly node: Node;
      /** The tool. */
      readonly tool?: Ref;
      /** How many of it. */
      readonly count?: Count;
    })[];
  };
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Take a part off. */
export interface RemoveInstruction {
  readonly node: Node;
  readonly verb: 'remove';
  readonly verbKey: ScalarNode;
  /** Parts to take off. */
  readonly remove?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** How many pieces, where not all. */
  readonly count?: Count;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is counter-held, and with what. */
  readonly hold?: {
    readonly node: Node;
    /** Where it is held. */
    readonly at?: Prose;
    /** Tools it is done with. */
    readonly with?: readonly ({
      readonly node: Node;
      /** The tool. */
      readonly tool?: Ref;
      /** How many of it. */
      readonly count?: Count;
    })[];
  };
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Fit a part. */
export interface InstallInstruction {
  readonly node: Node;
  readonly verb: 'install';
  readonly verbKey: ScalarNode;
  /** Parts to fit. */
  readonly install?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** How many pieces, where not all. */
  readonly count?: Count;
  /** The part it is fitted to, where there are several. */
  readonly place?: Ref;
  /** How it faces. */
  readonly orient?: Prose;
  /** What it locates on. */
  readonly locate?: Prose;
  /** A trial fit: it comes off again. */
  readonly trial?: Flag;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Seat a ring that was only released. */
export interface SeatInstruction {
  readonly node: Node;
  readonly verb: 'seat';
  readonly verbKey: ScalarNode;
  /** Rings to seat. */
  readonly seat?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Tighten a fastener. */
export interface TightenInstruction {
  readonly node: Node;
  readonly verb: 'tighten';
  readonly verbKey: ScalarNode;
  /** Fasteners to tighten. */
  readonly tighten?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Torque with unit and tolerance. */
  readonly torque?: ByBuild<QuantityValue>;
  /** Angle turned after the torque. */
  readonly angle?: ByBuild<QuantityValue>;
  /** Torque of each pass; the last is the final one. */
  readonly passes?: readonly QuantityValue[];
  /** Order of the pieces. */
  readonly inOrder?: readonly Text[];
  /** A reading that is added to the torque, such as the prevailing torque. */
  readonly plus?: Ref;
  /** How many pieces, where not all. */
  readonly count?: Count;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is counter-held, and with what. */
  readonly hold?: {
    readonly node: Node;
    /** Where it is held. */
    readonly at?: Prose;
    /** Tools it is done with. */
    readonly with?: readonly ({
      readonly node: Node;
      /** The tool. */
      readonly tool?: Ref;
      /** How many of it. */
      readonly count?: Count;
    })[];
  };
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Put a consumable on. */
export interface ApplyInstruction {
  readonly node: Node;
  readonly verb: 'apply';
  readonly verbKey: ScalarNode;
  /** What is applied. */
  readonly apply?: readonly Ref[];
  /** Parts it is applied to. */
  readonly to?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Where on the part: thread, face, bore. */
  readonly at?: Prose;
  /** How much of it. */
  readonly amount?: Prose;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Clean a part. */
export interface CleanInstruction {
  readonly node: Node;
  readonly verb: 'clean';
  readonly verbKey: ScalarNode;
  /** Parts to clean. */
  readonly clean?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Where on the part, where not all of it: thread, bore, groove. */
  readonly at?: Prose;
  /** How it is cleaned. */
  readonly by?: Choice<'wash' | 'ultrasonic' | 'brush' | 'wire-brush' | 'wipe' | 'blast' | 'caustic' | 'solvent' | 'steam' | 'compressed-air'>;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Find out what only the bench can tell. */
export interface IdentifyInstruction {
  readonly node: Node;
  readonly verb: 'identify';
  readonly verbKey: ScalarNode;
  /** What is found out. */
  readonly identify?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Look a part over. */
export interface InspectInstruction {
  readonly node: Node;
  readonly verb: 'inspect';
  readonly verbKey: ScalarNode;
  /** Parts to inspect. */
  readonly inspect?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What to look for. */
  readonly lookFor?: readonly Prose[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** What to do when it is not as it should be. */
  readonly ifNot?: {
    readonly node: Node;
    /** Parts to renew. */
    readonly replace?: readonly Ref[];
    /** The unit or part is rejected; stop and ask. */
    readonly reject?: Flag;
    /** An earlier step to go back to. */
    readonly goTo?: Ref;
    /** How many times. */
    readonly atMost?: Count;
    /** What to do when it is still not right. */
    readonly then?: Prose;
    /** Further instructions. */
    readonly do?: readonly Instruction[];
    /** What to do, in words. */
    readonly say?: Prose;
    /** A remark for the writer and the reviewer; it is not printed as an instruction. */
    readonly note?: Prose;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Measure something against its limit. */
export interface MeasureInstruction {
  readonly node: Node;
  readonly verb: 'measure';
  readonly verbKey: ScalarNode;
  /** What is measured. */
  readonly measure?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is acceptable; `record-only` where the value is only written down. */
  readonly accept?: ByBuild<QuantityValue>;
  /** Where it is measured: a number of places or their names. */
  readonly places?: readonly Prose[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** What to do when it is not as it should be. */
  readonly ifNot?: {
    readonly node: Node;
    /** Parts to renew. */
    readonly replace?: readonly Ref[];
    /** The unit or part is rejected; stop and ask. */
    readonly reject?: Flag;
    /** An earlier step to go back to. */
    readonly goTo?: Ref;
    /** How many times. */
    readonly atMost?: Count;
    /** What to do when it is still not right. */
    readonly then?: Prose;
    /** Further instructions. */
    readonly do?: readonly Instruction[];
    /** What to do, in words. */
    readonly say?: Prose;
    /** A remark for the writer and the reviewer; it is not printed as an instruction. */
    readonly note?: Prose;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Work a value out of readings. */
export interface CalculateInstruction {
  readonly node: Node;
  readonly verb: 'calculate';
  readonly verbKey: ScalarNode;
  /** What is worked out. */
  readonly calculate?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Signed readings and quantities, for example [+bore-read, -journal-read]. */
  readonly from?: readonly SignedTerm[];
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is acceptable; `record-only` where the value is only written down. */
  readonly accept?: ByBuild<QuantityValue>;
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** What to do when it is not as it should be. */
  readonly ifNot?: {
    readonly node: Node;
    /** Parts to renew. */
    readonly replace?: readonly Ref[];
    /** The unit or part is rejected; stop and ask. */
    readonly reject?: Flag;
    /** An earlier step to go back to. */
    readonly goTo?: Ref;
    /** How many times. */
    readonly atMost?: Count;
    /** What to do when it is still not right. */
    readonly then?: Prose;
    /** Further instructions. */
    readonly do?: readonly Instruction[];
    /** What to do, in words. */
    readonly say?: Prose;
    /** A remark for the writer and the reviewer; it is not printed as an instruction. */
    readonly note?: Prose;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Choose the size of a part. */
export interface ChooseInstruction {
  readonly node: Node;
  readonly verb: 'choose';
  readonly verbKey: ScalarNode;
  /** The part that comes in sizes. */
  readonly choose?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Reading and signed quantities that give the size. */
  readonly size?: readonly SignedTerm[];
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Mark the position of parts to each other. */
export interface MarkInstruction {
  readonly node: Node;
  readonly verb: 'mark';
  readonly verbKey: ScalarNode;
  /** Parts to mark. */
  readonly mark?: readonly Ref[];
  /** Parts that the mark runs across to. */
  readonly across?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** How the mark is made; cleaning takes off paint. */
  readonly by?: Choice<'scribe' | 'punch' | 'paint' | 'etch'>;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Bring parts back to their marks. */
export interface AlignInstruction {
  readonly node: Node;
  readonly verb: 'align';
  readonly verbKey: ScalarNode;
  /** Parts to align. */
  readonly align?: readonly Ref[];
  /** Parts to align it to. */
  readonly to?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Press a part in or on. */
export interface PressInstruction {
  readonly node: Node;
  readonly verb: 'press';
  readonly verbKey: ScalarNode;
  /** Parts to press. */
  readonly press?: readonly Ref[];
  /** How far. */
  readonly to?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Force not to be exceeded. */
  readonly force?: QuantityValue;
  /** The part it is pressed into or onto, where there are several. */
  readonly place?: Ref;
  /** How it faces. */
  readonly orient?: Prose;
  /** What it locates on. */
  readonly locate?: Prose;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Heat a part. */
export interface HeatInstruction {
  readonly node: Node;
  readonly verb: 'heat';
  readonly verbKey: ScalarNode;
  /** Parts to heat. */
  readonly heat?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Temperature to reach. */
  readonly until?: QuantityValue;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Cool a part. */
export interface CoolInstruction {
  readonly node: Node;
  readonly verb: 'cool';
  readonly verbKey: ScalarNode;
  /** Parts to cool. */
  readonly cool?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Temperature to reach. */
  readonly until?: QuantityValue;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Balance a group of parts. */
export interface BalanceInstruction {
  readonly node: Node;
  readonly verb: 'balance';
  readonly verbKey: ScalarNode;
  /** The group. */
  readonly balance?: Ref;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Balance grade, where it is not the family's. */
  readonly grade?: Text;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is acceptable; `record-only` where the value is only written down. */
  readonly accept?: ByBuild<QuantityValue>;
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** What to do when it is not as it should be. */
  readonly ifNot?: {
    readonly node: Node;
    /** Parts to renew. */
    readonly replace?: readonly Ref[];
    /** The unit or part is rejected; stop and ask. */
    readonly reject?: Flag;
    /** An earlier step to go back to. */
    readonly goTo?: Ref;
    /** How many times. */
    readonly atMost?: Count;
    /** What to do when it is still not right. */
    readonly then?: Prose;
    /** Further instructions. */
    readonly do?: readonly Instruction[];
    /** What to do, in words. */
    readonly say?: Prose;
    /** A remark for the writer and the reviewer; it is not printed as an instruction. */
    readonly note?: Prose;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Set an adjustment. */
export interface AdjustInstruction {
  readonly node: Node;
  readonly verb: 'adjust';
  readonly verbKey: ScalarNode;
  /** Parts to adjust. */
  readonly adjust?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** What must be reached. */
  readonly until?: Prose;
  /** How far it is turned back then. */
  readonly backOff?: Text;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is acceptable; `record-only` where the value is only written down. */
  readonly accept?: ByBuild<QuantityValue>;
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** What to do when it is not as it should be. */
  readonly ifNot?: {
    readonly node: Node;
    /** Parts to renew. */
    readonly replace?: readonly Ref[];
    /** The unit or part is rejected; stop and ask. */
    readonly reject?: Flag;
    /** An earlier step to go back to. */
    readonly goTo?: Ref;
    /** How many times. */
    readonly atMost?: Count;
    /** What to do when it is still not right. */
    readonly then?: Prose;
    /** Further instructions. */
    readonly do?: readonly Instruction[];
    /** What to do, in words. */
    readonly say?: Prose;
    /** A remark for the writer and the reviewer; it is not printed as an instruction. */
    readonly note?: Prose;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Check something. */
export interface CheckInstruction {
  readonly node: Node;
  readonly verb: 'check';
  readonly verbKey: ScalarNode;
  /** A check of the family by id, or what must be found true. */
  readonly check?: RefOrProse;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** What is acceptable; `record-only` where the value is only written down. */
  readonly accept?: ByBuild<QuantityValue>;
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** What to do when it is not as it should be. */
  readonly ifNot?: {
    readonly node: Node;
    /** Parts to renew. */
    readonly replace?: readonly Ref[];
    /** The unit or part is rejected; stop and ask. */
    readonly reject?: Flag;
    /** An earlier step to go back to. */
    readonly goTo?: Ref;
    /** How many times. */
    readonly atMost?: Count;
    /** What to do when it is still not right. */
    readonly then?: Prose;
    /** Further instructions. */
    readonly do?: readonly Instruction[];
    /** What to do, in words. */
    readonly say?: Prose;
    /** A remark for the writer and the reviewer; it is not printed as an instruction. */
    readonly note?: Prose;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Wait. */
export interface WaitInstruction {
  readonly node: Node;
  readonly verb: 'wait';
  readonly verbKey: ScalarNode;
  /** How long, or `cure`. */
  readonly wait?: QuantityValue;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** The consumable that cures meanwhile. */
  readonly of?: readonly Ref[];
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Send a part out. */
export interface SendInstruction {
  readonly node: Node;
  readonly verb: 'send';
  readonly verbKey: ScalarNode;
  /** Parts to send. */
  readonly send?: readonly Ref[];
  /** Where to, and what for. */
  readonly to?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** The certificate that must come back. */
  readonly certificate?: Prose;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Take a part in. */
export interface ReceiveInstruction {
  readonly node: Node;
  readonly verb: 'receive';
  readonly verbKey: ScalarNode;
  /** Parts taken in. */
  readonly receive?: readonly Ref[];
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** The certificate that comes with it. */
  readonly certificate?: Prose;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Give a part back to its owner. */
export interface ReturnInstruction {
  readonly node: Node;
  readonly verb: 'return';
  readonly verbKey: ScalarNode;
  /** Parts given back. */
  readonly return?: readonly Ref[];
  /** To whom. */
  readonly to?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Scrap a part. */
export interface DiscardInstruction {
  readonly node: Node;
  readonly verb: 'discard';
  readonly verbKey: ScalarNode;
  /** Parts to scrap. */
  readonly discard?: readonly Ref[];
  /** Where to. */
  readonly to?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** Write something down. */
export interface RecordInstruction {
  readonly node: Node;
  readonly verb: 'record';
  readonly verbKey: ScalarNode;
  /** What is written down. */
  readonly record?: Prose;
  /** Holds only on the builds and outcomes that meet this condition: a variant, an option of the finished unit, `arrives=option`, `outcome=value`, a list (any of them), or a map of all, any, none. */
  readonly when?: Condition;
  /** Does not hold on the builds and outcomes that meet this condition. */
  readonly unless?: Condition;
  /** Parts whose serial number is written down. */
  readonly serial?: readonly Ref[];
  /** Tools it is done with. */
  readonly with?: readonly ({
    readonly node: Node;
    /** The tool. */
    readonly tool?: Ref;
    /** How many of it. */
    readonly count?: Count;
  })[];
  /** Consumables it is done with. */
  readonly using?: readonly Ref[];
  /** Own wording, printed instead of the written sentence. */
  readonly say?: Prose;
  /** What could kill or seriously injure if it is not avoided. Printed before the act. */
  readonly warning?: readonly Prose[];
  /** What could injure slightly or moderately if it is not avoided. Printed before the act. */
  readonly caution?: readonly Prose[];
  /** What could damage parts or equipment; not about injury. Printed before the act. */
  readonly notice?: readonly Prose[];
  /** A figure that shows it. */
  readonly figure?: readonly Ref[];
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A finding that is let stand. */
export interface Concession {
  readonly node: Node;
  /** Id of the rule. */
  readonly rule?: Ref;
  /** The step it is let stand at. */
  readonly at?: Ref;
  /** The ids that the finding is about, where the step has several. */
  readonly about?: readonly Text[];
  /** Why it may stand. */
  readonly because?: Prose;
  /** Who allows it. */
  readonly by?: Text;
  /** Last day on which it holds. */
  readonly until?: DateText;
}

/** A value that is read on the bench and used later. */
export interface ProcedureReading {
  readonly node: Node;
  /** What is read, as the sheet prints it. */
  readonly name?: Prose;
  /** The dimension of the value. */
  readonly quantity?: Choice<'torque' | 'force' | 'length' | 'angle' | 'temperature' | 'pressure' | 'mass' | 'unbalance' | 'time' | 'rotational-speed' | 'voltage' | 'current' | 'resistance' | 'flow' | 'ratio'>;
  /** What is acceptable. */
  readonly accept?: ByBuild<QuantityValue>;
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

/** A figure. */
export interface ProcedureFigure {
  readonly node: Node;
  /** Path of the SVG file, relative to this document. */
  readonly file?: PathRef;
  /** What the figure shows, in words, for whoever cannot see it. */
  readonly alt?: Prose;
  /** The line printed below the figure. */
  readonly caption?: Prose;
}

/** Settings for the documents in this folder and below; editor and command line read the same ones. */
export interface SettingsDocument {
  readonly node: Node;
  /** Version of the document format. Always 1. */
  readonly witnessmark?: Count;
  /** Severity by rule id. */
  readonly severities?: readonly Entry<Choice<'error' | 'warning' | 'info' | 'off'>>[];
  /** First and second unit on the sheet, by dimension. */
  readonly units?: {
    readonly node: Node;
    /** Units for torque, the first one leading. */
    readonly torque?: readonly Text[];
    /** Units for length, the first one leading. */
    readonly length?: readonly Text[];
    /** Units for temperature, the first one leading. */
    readonly temperature?: readonly Text[];
    /** Units for pressure, the first one leading. */
    readonly pressure?: readonly Text[];
    /** Units for force, the first one leading. */
    readonly force?: readonly Text[];
    /** Units for mass, the first one leading. */
    readonly mass?: readonly Text[];
    /** Units for unbalance, the first one leading. */
    readonly unbalance?: readonly Text[];
  };
  /** Paper of the sheet. */
  readonly paper?: Choice<'a4' | 'letter'>;
  /** Whether the sheet is printed on one side of the paper or on both. */
  readonly sides?: Choice<'single' | 'double'>;
  /** Language of the sheet. */
  readonly language?: Choice<'en' | 'de' | 'es'>;
  /** Language of the texts of the documents where they stand without one; usually `en`. */
  readonly writtenIn?: Choice<'en' | 'de' | 'es'>;
  /** How revision letters are counted. */
  readonly revisionLetters?: {
    readonly node: Node;
    /** Letters that are left out, for example IOQSXZ. */
    readonly skip?: Text;
  };
  /** A remark for the writer and the reviewer; it is not printed as an instruction. */
  readonly note?: Prose;
}

export type Instruction =
  | Sentence
  | LoosenInstruction
  | RemoveInstruction
  | InstallInstruction
  | SeatInstruction
  | TightenInstruction
  | ApplyInstruction
  | CleanInstruction
  | IdentifyInstruction
  | InspectInstruction
  | MeasureInstruction
  | CalculateInstruction
  | ChooseInstruction
  | MarkInstruction
  | AlignInstruction
  | PressInstruction
  | HeatInstruction
  | CoolInstruction
  | BalanceInstruction
  | AdjustInstruction
  | CheckInstruction
  | WaitInstruction
  | SendInstruction
  | ReceiveInstruction
  | ReturnInstruction
  | DiscardInstruction
  | RecordInstruction;
