import type { Prose as WrittenProse } from '../../model/values';
import { closed } from '../sentences/grammar';
import type { Caution, SignalWord } from '../sheet';
import type { BuildContext } from './buildContext';

interface Warned {
  readonly warning?: readonly WrittenProse[];
  readonly caution?: readonly WrittenProse[];
  readonly notice?: readonly WrittenProse[];
}

/** What must be known before the act, the gravest first. */
export function cautionsOf(owner: Warned, context: BuildContext): Caution[] {
  const of = (word: SignalWord, texts: readonly WrittenProse[] | undefined): Caution[] =>
    texts === undefined || texts.length === 0
      ? []
      : [{ word, texts: texts.map((text) => closed(context.prose.read(text))) }];
  return [...of('warning', owner.warning), ...of('caution', owner.caution), ...of('notice', owner.notice)];
}
