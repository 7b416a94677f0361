import type { Ref } from '../../../model/values';
import type { Prose } from '../../sheet';
import { join, type Piece, strong, type Thing } from '../grammar';
import type { HoldFacts, SentenceFacts, ToolUse } from '../language';
import { spanishGrammar as grammar } from './grammar';

/** Tools that work is done in or on rather than with. */
const WORKED_IN = new Set([
  'oven',
  'wash-tank',
  'ultrasonic-bath',
  'blast-cabinet',
  'holding-fixture',
  'hot-plate',
  'balance-machine',
]);

interface Helped {
  readonly with?: readonly ToolUse[];
  readonly using?: readonly Ref[];
}

/** The parts with their articles, as one phrase; a mark where the instruction names none. */
export function parts(refs: readonly Ref[] | undefined, facts: SentenceFacts, count?: number): Prose {
  return things((refs ?? []).map(facts.part), count);
}

/** Things with their articles; `count` says how many pieces of the one thing are meant where that is not all. */
export function things(all: readonly Thing[], count?: number): Prose {
  const [only] = all;
  if (only === undefined) return join('…');
  if (count !== undefined && all.length === 1 && only.count !== count) return pieces(only, count);
  return grammar.and(all.map(grammar.the));
}

/** Whose it is, with the preposition before each: `de la tapa y del eje`. */
export function ofParts(refs: readonly Ref[] | undefined, facts: SentenceFacts): Prose {
  const all = (refs ?? []).map((ref) => join('de ', grammar.the(facts.part(ref))));
  return all.length === 0 ? join('de …') : grammar.and(all);
}

function pieces(thing: Thing, count: number): Prose {
  if (thing.count !== undefined && thing.count > count) return grammar.someOf(count, thing);
  return grammar.the({ ...thing, count });
}

/** ` en el horno de banco con el cepillo y desengrasante`: the way first, then the tools, then what is used up. */
export function helpedBy(
  { with: uses = [], using = [] }: Helped,
  facts: SentenceFacts,
  how: readonly Prose[] = [],
): Prose {
  const tools = uses.filter(({ tool }) => tool !== undefined).map(facts.tool);
  const places = tools.filter(({ sort }) => WORKED_IN.has(sort ?? ''));
  const rest = tools.filter(({ sort }) => !WORKED_IN.has(sort ?? ''));
  const means = [...how, ...rest.map(grammar.the), ...using.map((ref) => grammar.bare(facts.consumable(ref)))];
  return join(preposition(' en ', places.map(grammar.the)), preposition(' con ', means));
}

function preposition(word: string, items: readonly Prose[]): Piece {
  return items.length === 0 ? undefined : join(word, grammar.and(items));
}

/** The direction of turn as its own sentence; the hand is said where it is the unusual one. */
export function turnSentence(facts: SentenceFacts): Piece {
  if (facts.turn.kind === 'open') return join('Gire en el sentido que indica la casilla que corresponda.');
  if (facts.turn.kind === 'unknown') return undefined;
  const hand = facts.turn.hand === 'left' ? ' (rosca a izquierdas).' : '.';
  return join('Gire ', strong(directionWords(facts.turn.direction)), hand);
}

export function directionWords(direction: 'clockwise' | 'counter-clockwise'): string {
  return direction === 'clockwise' ? 'en sentido horario' : 'en sentido antihorario';
}

export function holdSentence({ hold }: { readonly hold: HoldFacts | undefined }): Prose {
  if (hold === undefined) return [];
  const tools = hold.with.length === 0 ? undefined : join(' con ', grammar.and(hold.with.map(grammar.the)));
  return join('Sujete ', grammar.withArticle(hold.at), tools, '.');
}

/** How a part faces and what it locates on. */
export function placingSentences(facts: SentenceFacts, placed: readonly Thing[]): Piece[] {
  const { orient, locate } = facts;
  return [
    orient && orientSentence(orient),
    locate && join(`Posicióne${grammar.pronoun(placed)} con `, grammar.withArticle(locate), '.'),
  ];
}

/** A clause follows `Compruebe que`; a phrase without a verb stands behind a colon. */
function orientSentence(orient: Prose): Prose {
  const start = orient[0]?.text ?? '';
  const saysWhat = orient.some(({ text }) =>
    /(?<!\p{L})(?:mira|miran|apunta|apuntan|es|son|está|están|queda|quedan|da|dan|va|van|señala|señalan|coincide|coinciden|toca|tocan|asienta|asientan)(?!\p{L})/u.test(
      text,
    ),
  );
  if (!saysWhat || /^\p{Lu}/u.test(start)) return join('Posición: ', orient, '.');
  return join('Compruebe que ', grammar.withArticle(orient), '.');
}

/** A writer's text after a colon or within a list: in lower case, unless it starts with an acronym or a symbol. */
export function withinSentence(written: Prose): Prose {
  const [first, ...rest] = written;
  if (first === undefined || first.lang !== undefined) return written;
  const start = first.text.replace(/^(?:[AEOUYÁÉÍÓÚ](?=\s)|\p{Lu}(?=\p{Ll}+(?:[^\p{L}\d]|$)))/u, (letter) =>
    letter.toLowerCase(),
  );
  return [{ ...first, text: start }, ...rest];
}
