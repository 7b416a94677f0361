import type { FamilyView } from '../analysis/familyView';
import type { InstructionView, ProcedureView, StepView } from '../analysis/procedureView';
import type { BalanceGroup, Limit, Part, Tool } from '../model/generated/types';
import type { ByBuild, QuantityValue, Ref } from '../model/values';
import type { Quantity } from '../quantity';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';

/** What a place belongs to: the entry or the instruction of which the value under its key says something. */
export type PlaceOwner =
  | { readonly is: 'part'; readonly family: FamilyView; readonly id: string; readonly part: Part }
  | { readonly is: 'limit'; readonly family: FamilyView; readonly id: string; readonly limit: Limit }
  | {
      readonly is: 'dimension';
      readonly family: FamilyView;
      readonly id: string;
      readonly dimension: ByBuild<QuantityValue>;
    }
  | { readonly is: 'balance-group'; readonly family: FamilyView; readonly id: string; readonly group: BalanceGroup }
  | { readonly is: 'tool'; readonly id: string; readonly tool: Tool }
  | {
      readonly is: 'instruction';
      readonly procedure: ProcedureView;
      readonly step: StepView;
      readonly view: InstructionView;
    }
  /** Anything else: a quantity there has its units to show and nothing more. */
  | { readonly is: 'other' };

/** What stands at a place. */
export type PlaceValue =
  | { readonly is: 'quantity'; readonly value: QuantityValue }
  /** A quantity in a sentence, which the model does not know. */
  | { readonly is: 'in-prose'; readonly quantity: Quantity }
  | { readonly is: 'ref'; readonly ref: Ref }
  /** A key, or a text that is no quantity: all that its owner says under the key is meant. */
  | { readonly is: 'whole' };

/** A place of a document, as far as a calculation can be asked for there. */
export interface Place {
  readonly document: SyntaxDocument;
  /** What a hover marks. */
  readonly span: Span;
  /** The owner's key, as `torque`, `passes`, `from`, `groove`; the id where the entry as a whole is pointed at. */
  readonly key: string;
  readonly owner: PlaceOwner;
  readonly value: PlaceValue;
}
