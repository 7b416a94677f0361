import type { Prose as WrittenProse } from '../../../model/values';
import { closed, join, type Piece, sentences } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { spanishGrammar as grammar } from './grammar';
import { helpedBy, ofParts, parts, withinSentence } from './words';

/** Verbs about where a part goes, what is written down, and plain sentences. */
export const moving: Pick<VerbWriters, 'send' | 'receive' | 'return' | 'discard' | 'record' | 'say'> = {
  send: (one, facts) =>
    sentences(
      join('Envíe ', parts(one.send, facts), destination(one.to, facts), '.'),
      one.certificate && join('Pida ', grammar.withArticle(facts.prose(one.certificate)), '.'),
    ),
  receive: (one, facts) =>
    join(
      'Reciba ',
      parts(one.receive, facts),
      one.certificate && join(' con ', grammar.withArticle(facts.prose(one.certificate))),
      '.',
    ),
  return: (one, facts) => join('Devuelva ', parts(one.return, facts), destination(one.to, facts), '.'),
  discard: (one, facts) =>
    join('Deseche ', parts(one.discard, facts), one.to && join(': ', withinSentence(facts.prose(one.to))), '.'),
  record: (one, facts) => {
    const serials = one.serial ?? [];
    const whose =
      serials.length > 0 &&
      join(serials.length > 1 ? 'los números de serie ' : 'el número de serie ', ofParts(one.serial, facts));
    if (one.record === undefined) return join('Anote ', whose || '…', '.');
    return sentences(
      join('Anote: ', closed(withinSentence(facts.prose(one.record)))),
      whose && join('Anote también ', whose, '.'),
    );
  },
  say: (one, facts) => {
    const help = helpedBy(one, facts);
    return help.length === 0 ? [] : join('Trabaje', help, '.');
  },
};

function destination(to: WrittenProse | undefined, facts: SentenceFacts): Piece {
  return to && join(' a ', grammar.withArticle(facts.prose(to)));
}
