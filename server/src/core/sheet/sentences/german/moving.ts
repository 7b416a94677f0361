import type { Prose as WrittenProse } from '../../../model/values';
import type { Prose } from '../../sheet';
import { closed, join, plain, sentences } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { phrase, whose } from './grammar';
import { helpedBy, parts, sentence, trimmed } from './words';

/** Verbs about where a part goes, what is written down, and plain sentences. */
export const moving: Pick<VerbWriters, 'send' | 'receive' | 'return' | 'discard' | 'record' | 'say'> = {
  send: (one, facts) =>
    sentences(
      movedTo(parts(one.send, facts), one.to, 'versenden', facts),
      one.certificate && sentence(phrase(facts.prose(one.certificate), 'accusative', 'bare'), ' anfordern'),
    ),
  receive: (one, facts) =>
    sentence(
      parts(one.receive, facts),
      one.certificate && join(' samt ', phrase(facts.prose(one.certificate), 'dative', 'bare')),
      ' entgegennehmen',
    ),
  return: (one, facts) => movedTo(parts(one.return, facts), one.to, 'zurückgeben', facts),
  discard: (one, facts) => sentence(parts(one.discard, facts), ' entsorgen', one.to && join(': ', facts.prose(one.to))),
  record: (one, facts) => {
    const serials = (one.serial ?? []).map((ref) => ({ ...facts.part(ref), count: 1 }));
    const numbers = serials.length > 1 ? 'Seriennummern' : 'Seriennummer';
    const all = serials.length > 0 && join(numbers, whose(serials));
    if (one.record === undefined) return sentence(all || '…', ' eintragen');
    return sentences(
      join('Eintragen: ', closed(facts.prose(one.record))),
      all && sentence('außerdem ', all, ' eintragen'),
    );
  },
  say: (one, facts) => {
    const help = trimmed(helpedBy(one, facts));
    return help.length === 0 ? [] : sentence(help, ' arbeiten');
  },
};

/** `Rad an den Kunden zurückgeben.`; what has a comma of its own comes behind: `Rad zurückgeben: an den Kunden, …`. */
function movedTo(what: Prose, to: WrittenProse | undefined, verb: string, facts: SentenceFacts): Prose {
  if (to === undefined) return sentence(what, ` ${verb}`);
  const where = join('an ', phrase(facts.prose(to), 'accusative', 'as written'));
  return plain(where).includes(',') ? sentence(what, ` ${verb}: `, where) : sentence(what, ' ', where, ` ${verb}`);
}
