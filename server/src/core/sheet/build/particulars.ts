import type { BuildSet } from '../../builds';
import type { SheetFigure, Instruction as SheetInstruction } from '../sheet';
import type { BuildContext } from './buildContext';
import { figuresOf } from './figures';
import type { Instruction } from './instructionKeys';
import { limitOf, limitsText, readingOf, unbalanceOf } from './readings';

export function readingFor(one: Instruction, where: BuildSet, context: BuildContext): SheetInstruction['reading'] {
  if (one.verb === 'measure' || one.verb === 'calculate') return readingOf(one, where, context);
  return one.verb === 'balance' ? unbalanceOf(one, where, context) : undefined;
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
    case 'tighten':
      return one.plus === undefined ? undefined : { labels: [phrases.torqueToSet] };
    case 'choose':
      return { labels: [phrases.sizeChosen] };
    case 'wait':
      return one.wait?.word === 'cure' ? { labels: [phrases.started] } : undefined;
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
