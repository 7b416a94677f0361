import type { InstructionView } from '../../analysis/procedureView';
import type { Span } from '../../text/span';
import type { Scene } from '../things/scene';
import { touches } from '../unitsWithin';

/** The instructions of the steps that a span touches, with the builds that they are for. */
export function instructionsWithin({ document, procedure }: Scene, within: Span): InstructionView[] {
  const steps = procedure?.steps.filter(({ step }) => touches(document, step.node, within)) ?? [];
  return steps.flatMap(({ instructions }) =>
    instructions.filter(({ instruction }) => touches(document, instruction.node, within)),
  );
}
