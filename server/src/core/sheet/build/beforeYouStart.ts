import { closed } from '../sentences/grammar';
import type { Caution } from '../sheet';
import type { BuildContext } from './buildContext';
import { cautionsOf } from './cautions';
import { within } from './steps';

/** What must be known before the first step, in the writer's order. A plain line is a notice: it is not about injury. */
export function beforeYouStart(context: BuildContext): Caution[] {
  const { procedure, picked, prose } = context;
  return (procedure.value.beforeYouStart ?? []).flatMap((line) => {
    if (within(picked.set, line, procedure).isEmpty) return [];
    const said: Caution[] = line.say === undefined ? [] : [{ word: 'notice', texts: [closed(prose.read(line.say))] }];
    return [...cautionsOf(line, context), ...said];
  });
}
