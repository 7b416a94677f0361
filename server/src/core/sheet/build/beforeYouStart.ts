import { closed } from '../sentences/grammar';
import type { BeforeLine } from '../sheet';
import type { BuildContext } from './buildContext';
import { cautionsOf } from './cautions';
import { figuresOf } from './figures';
import { within } from './plannedSteps';

/** What must be known before the first step, in the writer's order. A plain line stays one: it warns of nothing. */
export function beforeYouStart(context: BuildContext): BeforeLine[] {
  const { procedure, picked, prose } = context;
  return (procedure.value.beforeYouStart ?? []).flatMap((line): BeforeLine[] => {
    if (within(picked.set, line, procedure).isEmpty) return [];
    return [
      ...cautionsOf(line, context).map((caution) => ({ kind: 'caution' as const, caution })),
      ...(line.say === undefined ? [] : [{ kind: 'line' as const, text: closed(prose.read(line.say)) }]),
      ...figuresOf([line.figure], context).map((figure) => ({ kind: 'figure' as const, figure })),
    ];
  });
}
