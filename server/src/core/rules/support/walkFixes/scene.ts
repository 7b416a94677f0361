import type { FamilyView } from '../../../analysis/familyView';
import type { InstructionView, ProcedureView, StepView } from '../../../analysis/procedureView';
import type { ItemRange } from '../../../syntax/node';
import type { Failure } from '../../../walk/failure';
import { UnitRelations } from '../../../walk/unitRelations';
import { walkOf } from '../../../walk/walkProcedure';
import { nameOf } from '../nameOf';

/** An instruction where it stands. */
export interface Place {
  readonly index: number;
  readonly step: StepView;
  readonly view: InstructionView;
}

/** A failure with the instructions around it: what its fixes are made from. */
export class Scene {
  readonly relations: UnitRelations;
  /** All instructions in the order of the text. */
  readonly places: readonly Place[];
  /** The instruction that shows it. */
  readonly showing: Place | undefined;
  /** The earlier one that made it so. */
  readonly cause: Place | undefined;

  constructor(
    readonly procedure: ProcedureView,
    readonly family: FamilyView,
    readonly failure: Failure,
  ) {
    this.relations = UnitRelations.of(family);
    this.places = procedure.steps
      .flatMap((step) => step.instructions.map((view) => ({ step, view })))
      .map((one, index) => ({ ...one, index }));
    this.showing = this.placeOf(failure.at);
    this.cause = this.placeOf(failure.because?.at);
  }

  /** Everything that fails in the walk. */
  get failures(): readonly Failure[] {
    return walkOf(this.procedure)?.failures ?? [];
  }

  get about(): string {
    return this.failure.about;
  }

  /** The other part of the contradiction; what it is about where there is none. */
  get other(): string {
    return this.failure.other ?? this.failure.about;
  }

  name(id: string): string {
    return nameOf(this.procedure, id);
  }

  /** The part as its own text has it: `the cap nut`. */
  the(id: string): string {
    return `the ${this.name(id)}`;
  }

  /** The last instruction that meets a condition, or the first one; instructions under `if-not` lie on another way. */
  last(wanted: (place: Place) => boolean, before = this.places.length): Place | undefined {
    return this.places.findLast((one) => one.index < before && !one.view.nested && wanted(one));
  }

  first(wanted: (place: Place) => boolean, behind = -1): Place | undefined {
    return this.places.find((one) => one.index > behind && !one.view.nested && wanted(one));
  }

  /** The innermost instruction at a range. */
  placeOf(range: ItemRange | undefined): Place | undefined {
    if (range === undefined) return undefined;
    return this.places.findLast(({ view: { instruction } }) => {
      const { node } = instruction;
      return node.item === range.item && node.from <= range.from && range.to <= node.to;
    });
  }
}
