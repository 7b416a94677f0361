import { type BuildSet, BuildSpace } from '../builds';
import { type Unit, unitsIn } from '../model/facts';
import type { Consumable, Instruction, Phase, ProcedureDocument, Step, Tool } from '../model/generated/types';
import { unitOf } from '../model/readUnit';
import type { Condition, Entry, PathRef } from '../model/values';
import type { SyntaxDocument } from '../syntax/readDocument';
import { documentUnit, documentValue } from './documentUnit';
import { conditionOf, entriesById, FamilyView } from './familyView';
import { nestedInstructions } from './instructions';
import { type KitView, kitViewOf } from './kitView';
import { followPath, type LinkTarget } from './links';
import { type PhaseHead, phaseHeadOf } from './phaseHead';
import { type Numbered, nextSerial } from './runs';
import type { Snapshot } from './snapshot';

/**
 * A step with where it stands and the builds that it holds for. It is the same object as long as the step, the head of its
 * phase and these builds are the same, so what is worked out of a step can be kept with it.
 */
export interface StepView extends Numbered {
  readonly step: Step;
  readonly id: string;
  readonly phase: PhaseHead;
  /** The builds that its phase holds for. */
  readonly phaseWhere: BuildSet;
  readonly where: BuildSet;
  /** All instructions, those of `if-not` behind the one that they belong to. */
  readonly instructions: readonly InstructionView[];
}

/** A phase as it is read now, with its steps. */
export interface PhaseView {
  readonly phase: Phase;
  readonly head: PhaseHead;
  readonly steps: readonly StepView[];
}

export interface InstructionView {
  readonly instruction: Instruction;
  readonly where: BuildSet;
  readonly nested: boolean;
}

export interface StoresItem<Value> {
  readonly entry: Entry<Value>;
  readonly document: SyntaxDocument;
}

/** A procedure with everything that it links to. What cannot be read is absent, and nothing is concluded from it. */
export class ProcedureView {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  readonly unit: Unit;
  readonly value: ProcedureDocument;
  readonly family: FamilyView | undefined;
  readonly kits: readonly KitView[];
  readonly tools: ReadonlyMap<string, StoresItem<Tool>>;
  readonly consumables: ReadonlyMap<string, StoresItem<Consumable>>;
  /** Every stores document that the procedure names could be read, so what is in none of them is nowhere. */
  readonly storesComplete: boolean;
  /** The builds of the procedure; of a family without anything where the family cannot be read. */
  readonly space: BuildSpace;
  readonly phases: readonly PhaseView[];
  readonly steps: readonly StepView[];

  private constructor(snapshot: Snapshot, document: SyntaxDocument, unit: Unit) {
    this.snapshot = snapshot;
    this.document = document;
    this.unit = unit;
    this.value = unit.value as ProcedureDocument;
    this.family = this.#family();
    this.kits = this.#documents(this.value.kit).flatMap((kit) => kitViewOf(snapshot, kit) ?? []);
    const stores = this.#documents(this.value.stores);
    const { tools, consumables } = storesOf(stores);
    this.tools = tools;
    this.consumables = consumables;
    this.storesComplete = stores.length > 0 && stores.length === (this.value.stores ?? []).length;
    this.space = spaceOf(this.family, this.value);
    this.phases = (this.value.phases ?? []).map((phase) => this.#phase(phase));
    this.steps = this.phases.flatMap((phase) => phase.steps);
  }

  /** The view of a document; the same object as long as neither the snapshot nor the document changes. */
  static of(snapshot: Snapshot, document: SyntaxDocument): ProcedureView | undefined {
    const unit = documentUnit(document);
    if (unit === undefined || documentValue(document, 'procedure') === undefined) return undefined;
    const known = viewsIn(snapshot);
    const view = known.get(document) ?? new ProcedureView(snapshot, document, unit);
    known.set(document, view);
    return view;
  }

  follow(path: PathRef): LinkTarget {
    return followPath(this.snapshot, this.document.uri, path);
  }

  /** Where a part belongs to the finished unit; nothing where the family has no such part. */
  presence(part: string, as: 'finished' | 'received' = 'finished'): BuildSet {
    return this.family?.presence(part, this.space, as) ?? this.space.nothing;
  }

  /** The phase of a step. */
  phaseOf({ phase: head }: StepView): Phase | undefined {
    return this.phases.find((one) => one.head === head)?.phase;
  }

  step(id: string): StepView | undefined {
    return this.steps.find((view) => view.id === id);
  }

  /** Every unit of the procedure: its head first, then each step and instruction in order. */
  units(): Iterable<Unit> {
    return unitsIn(this.unit);
  }

  #family(): FamilyView | undefined {
    const target = this.value.family === undefined ? undefined : this.follow(this.value.family);
    return target?.is === 'document' ? FamilyView.of(target.document) : undefined;
  }

  #documents(paths: readonly PathRef[] | undefined): SyntaxDocument[] {
    return (paths ?? []).flatMap((path) => {
      const target = this.follow(path);
      return target.is === 'document' ? [target.document] : [];
    });
  }

  #phase(phase: Phase): PhaseView {
    const head = phaseHeadOf(phase);
    const inPhase = this.#where(this.space.everything, phase);
    return { phase, head, steps: (phase.steps ?? []).map((step) => this.#step(step, head, inPhase)) };
  }

  #step(step: Step, phase: PhaseHead, phaseWhere: BuildSet): StepView {
    const unit = unitOf(step.node);
    const known = unit?.view as StepView | undefined;
    // A set belongs to one space, and a space to one family.
    if (known?.phase === phase && known.phaseWhere === phaseWhere) return known;
    const where = this.#where(phaseWhere, step);
    const instructions = (step.do ?? []).flatMap((one) => this.#instructions(one, where, false));
    const id = step.step?.id ?? '';
    const view = { serial: nextSerial(), step, id, phase, phaseWhere, where, instructions };
    if (unit !== undefined) unit.view = view;
    return view;
  }

  #instructions(instruction: Instruction, outer: BuildSet, nested: boolean): InstructionView[] {
    const where = this.#where(outer, instruction);
    const inner = nestedInstructions(instruction).flatMap((one) => this.#instructions(one, where, true));
    return [{ instruction, where, nested }, ...inner];
  }

  #where(outer: BuildSet, owner: { readonly when?: Condition; readonly unless?: Condition }): BuildSet {
    // Without the family nobody can tell what a condition means, so it narrows nothing.
    if (this.family === undefined || (owner.when === undefined && owner.unless === undefined)) return outer;
    return outer.and(this.space.set(conditionOf(owner)));
  }
}

const views = new WeakMap<Snapshot, WeakMap<SyntaxDocument, ProcedureView>>();

/** Kept with the snapshot: a document outlives many of them, and must not hold what is gone. */
function viewsIn(snapshot: Snapshot): WeakMap<SyntaxDocument, ProcedureView> {
  const known = views.get(snapshot) ?? new WeakMap<SyntaxDocument, ProcedureView>();
  views.set(snapshot, known);
  return known;
}

interface StoresItems {
  readonly documents: readonly SyntaxDocument[];
  readonly tools: ReadonlyMap<string, StoresItem<Tool>>;
  readonly consumables: ReadonlyMap<string, StoresItem<Consumable>>;
}

const NO_STORES: StoresItems = { documents: [], tools: new Map(), consumables: new Map() };
const storesSeen = new WeakMap<SyntaxDocument, StoresItems>();

/** Everything of some stores; the same objects as long as the documents are the same. */
function storesOf(documents: readonly SyntaxDocument[]): StoresItems {
  if (documents.length === 0) return NO_STORES;
  const [first] = documents;
  const known = first === undefined ? undefined : storesSeen.get(first);
  if (known?.documents.length === documents.length && known.documents.every((one, i) => one === documents[i]))
    return known;
  const items = {
    documents,
    tools: storesItems(documents, 'tools'),
    consumables: storesItems(documents, 'consumables'),
  };
  if (first !== undefined) storesSeen.set(first, items);
  return items;
}

function storesItems<Key extends 'tools' | 'consumables'>(
  documents: readonly SyntaxDocument[],
  key: Key,
): Map<string, StoresItem<Key extends 'tools' ? Tool : Consumable>> {
  const items = new Map<string, StoresItem<Key extends 'tools' ? Tool : Consumable>>();
  for (const document of documents) {
    const entries = documentValue(document, 'stores')?.[key] as
      | readonly Entry<Key extends 'tools' ? Tool : Consumable>[]
      | undefined;
    for (const [id, entry] of entriesById(entries)) if (!items.has(id)) items.set(id, { entry, document });
  }
  return items;
}

const NO_FAMILY = new BuildSpace({ variants: [], options: [], identify: [], renewable: [] });
const spaces = new WeakMap<FamilyView, Map<string, BuildSpace>>();

/** Procedures that cover the same builds of a family share one space, and a keystroke makes no new one. */
function spaceOf(family: FamilyView | undefined, value: ProcedureDocument): BuildSpace {
  if (family === undefined) return NO_FAMILY;
  const ids = (refs: readonly { id: string }[] | undefined): string[] => (refs ?? []).map((ref) => ref.id);
  const { covers } = value;
  const facts =
    covers === undefined
      ? { covers: {} }
      : {
          covers: {
            ...(covers.variants === undefined ? {} : { variants: ids(covers.variants) }),
            options: ids(covers.options),
          },
        };
  const adds = ids(value.adds);
  const key = JSON.stringify([facts, adds]);
  const known = spaces.get(family) ?? new Map<string, BuildSpace>();
  spaces.set(family, known);
  const space = known.get(key) ?? new BuildSpace({ ...family.buildFacts(), ...facts, adds });
  known.set(key, space);
  return space;
}
