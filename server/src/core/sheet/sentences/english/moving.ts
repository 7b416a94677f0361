import type { Prose as WrittenProse } from '../../../model/values';
import { capitalised, closed, join, type Piece, sentences } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { englishGrammar as grammar } from './grammar';
import { helpedBy, parts } from './words';

/** Verbs about where a part goes, what is written down, and plain sentences. */
export const moving: Pick<VerbWriters, 'send' | 'receive' | 'return' | 'discard' | 'record' | 'say'> = {
  send: (one, facts) =>
    sentences(
      join('Send ', parts(one.send, facts), destination(one.to, facts), '.'),
      one.certificate && join('Ask for ', grammar.withArticle(facts.prose(one.certificate)), '.'),
    ),
  receive: (one, facts) =>
    join(
      'Receive ',
      parts(one.receive, facts),
      one.certificate && join(' with ', grammar.withArticle(facts.prose(one.certificate))),
      '.',
    ),
  return: (one, facts) => join('Return ', parts(one.return, facts), destination(one.to, facts), '.'),
  discard: (one, facts) => join('Discard ', parts(one.discard, facts), one.to && join(': ', facts.prose(one.to)), '.'),
  record: (one, facts) => {
    const serials = (one.serial ?? []).map(facts.part);
    const whose =
      serials.length > 0 &&
      join(`the serial ${serials.length > 1 ? 'numbers' : 'number'} of `, grammar.and(serials.map(grammar.the)));
    if (one.record === undefined) return join('Record ', whose || '…', '.');
    return sentences(join('Record: ', closed(facts.prose(one.record))), whose && join('Record also ', whose, '.'));
  },
  say: (one, facts) => {
    const help = helpedBy(one, facts);
    return help.length === 0 ? [] : closed(capitalised(join('Work', help)));
  },
};

function destination(to: WrittenProse | undefined, facts: SentenceFacts): Piece {
  return to && join(' to ', grammar.withArticle(facts.prose(to)));
}
