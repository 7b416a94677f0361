import type { BuildSet } from '../../builds';
import type { SheetFigure, Instruction as SheetInstruction } from '../sheet';
import type { BuildContext } from './buildContext';
import { figuresOf } from './figures';
import type { Instruction } from './instructionKeys';
import { limitOf, limitsText, readingOf, unbalanceOf } from './readings';

/** With as many rows as the work may come to it. */
export function readingFor(
  one: Instruction,
  where: BuildSet,
  rounds: number,
  context: BuildContext,
): SheetInstruction['reading'] {
  const reading =
    one.verb === 'measure' || one.verb === 'calculate'
      ? readingOf(one, where, context)
      : one.verb === 'balance'
        ? unbalanceOf(one, where, context)
        : undefined;
  if (reading === undefined || rounds < 2) return reading;
  return { ...reading, rounds };
}

export function checkFor(one: Instruction, where: BuildSet, context: BuildContext): SheetInstruction['check'] {
  if (one.verb !== 'check' && one.verb !== 'adjust') return undefined;
  const { check } = one.verb === 'check' ? one : { check: undefined };
  const family = context.procedure.family?.value.checks;
  const known = check?.is === 'ref' ? family?.find((entry) => entry.id.id === check.ref.id)?.value : undefined;
  const accept = limitsText(one.accept ?? known?.accept, where, context);
  if (accept !== undefined) return { accept };
  return one.verb === 'check' ? {} : undefined;
}

export function recordFor(
  one: Instruction,
  where: BuildSet,
  { names, writing }: BuildContext,
): SheetInstruction['record'] {
  const { phrases } = writing;
  switch (one.verb) {
    case 'record': {
      const labels = (one.serial ?? []).map((ref) =>
        phrases.serialNumberOf({ ...names.part(ref.id, where), count: 1 }),
      );
      // What the writer asks for beside the serial numbers needs a line of its own.
      return { labels: one.record === undefined && labels.length > 0 ? labels : [...labels, ''] };
    }
    case 'choose':
      // A size that is worked out is written down where it is.
      return (one.size ?? []).length > 1 ? undefined : { labels: [phrases.sizeChosen] };
    default:
      return undefined;
  }
}

/** The instruction's own figure, else that of what it finds out, checks or measures. */
export function figureFor(one: Instruction, context: BuildContext): SheetFigure | undefined {
  const family = context.procedure.family?.value;
  const own = one.figure?.[0];
  const found =
    one.verb === 'identify'
      ? family?.identify?.find((entry) => entry.id.id === one.identify?.id)?.value.figure
      : undefined;
  const measured =
    one.verb === 'measure' && one.measure !== undefined ? limitOf(one.measure.id, context)?.figure : undefined;
  const check = one.verb === 'check' && one.check?.is === 'ref' ? one.check.ref.id : undefined;
  const checked = family?.checks?.find((entry) => entry.id.id === check)?.value.figure;
  return figuresOf([own ?? found ?? measured ?? checked], context)[0];
}
