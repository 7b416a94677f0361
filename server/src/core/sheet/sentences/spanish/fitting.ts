import type { InstallInstruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import { join, type Piece, quantity, sentences, strong } from '../grammar';
import type { SentenceFacts, VerbWriters } from '../language';
import { agreeing, spanishGrammar as grammar } from './grammar';
import { nounOfThing } from './thingNouns';
import {
  directionWords,
  helpedBy,
  holdSentence,
  ofParts,
  parts,
  placingSentences,
  things,
  turnSentence,
} from './words';

/** Verbs that take a part off, put it on or set it in its place. */
export const fitting: Pick<VerbWriters, 'remove' | 'install' | 'press' | 'align' | 'mark' | 'adjust'> = {
  remove: (one, facts) =>
    sentences(
      join('Desmonte ', parts(one.remove, facts, one.count?.value), helpedBy(one, facts), '.'),
      turnSentence(facts),
      holdSentence(facts),
      discardSentence(facts, one.remove?.length ?? 0),
    ),
  install: (one, facts) => {
    const isTrial = one.trial?.value === true;
    const placed = (one.install ?? []).map(facts.part);
    return sentences(
      join(
        isTrial ? 'A modo de prueba, monte ' : 'Monte ',
        installed(one, facts),
        placeOf(one.place && facts.part(one.place)),
        helpedBy(one, facts),
        '.',
      ),
      ...placingSentences(facts, placed),
      turnSentence(facts),
      isTrial && `Después se ${isOne(placed) ? 'vuelve' : 'vuelven'} a desmontar.`,
    );
  },
  press: (one, facts) =>
    sentences(
      join(
        'Introduzca a presión ',
        parts(one.press, facts),
        placeOf(one.place && facts.part(one.place)),
        one.to && join(' hasta ', grammar.withArticle(facts.prose(one.to))),
        helpedBy(one, facts),
        '.',
      ),
      one.force && join('No use una fuerza superior a ', quantity(facts.quantity(one.force)), '.'),
      ...placingSentences(facts, (one.press ?? []).map(facts.part)),
    ),
  align: (one, facts) =>
    one.to === undefined
      ? join('Alinee las marcas ', ofParts(one.align, facts), helpedBy(one, facts), '.')
      : join(
          'Alinee la marca ',
          ofParts(one.align, facts),
          ' con la marca ',
          ofParts(one.to, facts),
          helpedBy(one, facts),
          '.',
        ),
  mark: (one, facts) =>
    one.across === undefined
      ? join('Marque ', parts(one.mark, facts), helpedBy(one, facts), '.')
      : join(
          'Haga una marca común sobre ',
          things([...(one.mark ?? []), ...one.across].map(facts.part)),
          helpedBy(one, facts),
          '.',
        ),
  adjust: (one, facts) =>
    sentences(
      join(
        'Ajuste ',
        parts(one.adjust, facts),
        helpedBy(one, facts),
        one.until && join(' hasta que ', facts.prose(one.until)),
        '.',
      ),
      one.backOff &&
        backOffSentence(turnInWords(one.backOff.text), grammar.pronoun((one.adjust ?? []).map(facts.part)), facts),
      one.backOff === undefined && facts.turn.kind === 'known' && 'La rosca es a izquierdas.',
    ),
};

function isOne(placed: Parameters<typeof grammar.pronoun>[0]): boolean {
  return !grammar.pronoun(placed).endsWith('s');
}

/** Turns that English writes out. */
const TURNS: Readonly<Record<string, string>> = {
  'half a turn': 'media vuelta',
  'a quarter turn': 'un cuarto de vuelta',
  'a quarter of a turn': 'un cuarto de vuelta',
  'one turn': 'una vuelta',
  'a turn': 'una vuelta',
};

function turnInWords(written: string): string {
  return TURNS[written.trim()] ?? written;
}

/** Back is the way that loosens; it is said where the hand of the thread is the unusual one. */
function backOffSentence(angle: string, pronoun: string, { turn }: SentenceFacts): Piece {
  if (turn.kind !== 'known') return `Después gíre${pronoun} ${angle} hacia atrás.`;
  return join(
    `Después gíre${pronoun} ${angle} hacia atrás, `,
    strong(directionWords(turn.direction)),
    ' (rosca a izquierdas).',
  );
}

function installed(one: InstallInstruction, facts: SentenceFacts): Prose {
  const refs = one.install ?? [];
  const [only] = refs;
  if (only === undefined || (refs.length === 1 && one.count?.value !== undefined)) return newPieces(one, facts);
  return grammar.and(refs.map((ref) => (facts.alwaysRenewed(ref) ? grammar.theNew : grammar.the)(facts.part(ref))));
}

/** `un cojinete nuevo`: with a count, the pieces are not yet told apart. */
function newPieces(one: InstallInstruction, facts: SentenceFacts): Prose {
  const [ref] = one.install ?? [];
  const count = one.count?.value;
  if (ref === undefined || count === undefined) return parts(one.install, facts, count);
  const thing = { ...facts.part(ref), count };
  const isNew = facts.alwaysRenewed(ref);
  if (facts.part(ref).count === count) return isNew ? grammar.theNew(thing) : grammar.the(thing);
  const noun = nounOfThing(thing);
  const one_ = count === 1 && !noun.plural;
  const [name] = (one_ ? grammar.bare(thing) : grammar.the(thing).slice(-1)) as Prose;
  const article = noun.gender === 'f' ? 'una' : 'un';
  const before = one_ ? [article] : [countWord(thing)];
  return join(`${[...before, ...(isNew ? [agreeing('nuevo', noun, !one_)] : [])].join(' ')} `, name);
}

function countWord(thing: Parameters<typeof grammar.the>[0]): string {
  const words = grammar.the(thing)[0]?.text.trim().split(' ') ?? [];
  return words.slice(1).join(' ') || String(thing.count ?? '');
}

function placeOf(place: ReturnType<SentenceFacts['part']> | undefined): Piece {
  return place && join(' en ', grammar.the({ ...place, count: 1 }));
}

function discardSentence(facts: SentenceFacts, removed: number): Piece {
  const { discarded } = facts;
  if (discarded.length === 0) return undefined;
  if (discarded.length < removed) return join('Deseche ', parts(discarded, facts), '.');
  return `Deséche${grammar.pronoun(discarded.map(facts.part))}.`;
}
