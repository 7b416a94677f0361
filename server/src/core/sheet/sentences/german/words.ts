import type { Ref } from '../../../model/values';
import type { Prose } from '../../sheet';
import { capitalised, join, type Piece, plain, strong, type Thing } from '../grammar';
import type { SentenceFacts, ToolUse } from '../language';
import { behind, germanGrammar as grammar, named, phrase } from './grammar';
import type { GrammaticalCase } from './nouns';

/** Tools that work is done in rather than with. */
const WORKED_IN = new Set(['oven', 'wash-tank', 'ultrasonic-bath', 'blast-cabinet', 'holding-fixture']);
const WORKED_ON = new Set(['hot-plate', 'balance-machine']);

interface Helped {
  readonly with?: readonly ToolUse[];
  readonly using?: readonly Ref[];
}

/** A sentence: its first letter is a capital, and it ends with a full stop. */
export function sentence(...pieces: readonly Piece[]): Prose {
  return join(capitalised(join(...pieces)), '.');
}

/** What is done to something, with what, and the verb last; `mit` is not said twice in a row. */
export function act(object: Prose, help: Prose, ...rest: readonly Piece[]): Prose {
  const doubled = /\smit\s/u.test(plain(object)) && /^ mit\s/u.test(plain(help));
  return doubled ? sentence(...trimmed(help), ' ', object, ...rest) : sentence(object, help, ...rest);
}

/** Without the space that joins it to a sentence. */
export function trimmed([first, ...rest]: Prose): Prose {
  return first === undefined ? [] : [{ ...first, text: first.text.trimStart() }, ...rest];
}

/** The parts in the accusative, as one phrase; a mark where the instruction names none. */
export function parts(refs: readonly Ref[] | undefined, facts: SentenceFacts, count?: number): Prose {
  return things((refs ?? []).map(facts.part), count);
}

/** `count` says how many pieces of the one thing are meant where that is not all. */
export function things(all: readonly Thing[], count?: number): Prose {
  const [only] = all;
  if (only === undefined) return join('…');
  if (count !== undefined && all.length === 1 && only.count !== count) return grammar.someOf(count, only);
  return grammar.and(all.map((thing) => named(thing, 'accusative')));
}

/** Each with the preposition and its article: `am Lagergehäuse und an der Welle`. */
export function places(
  preposition: string,
  refs: readonly Ref[] | undefined,
  of: GrammaticalCase,
  facts: SentenceFacts,
): Prose {
  if (refs === undefined || refs.length === 0) return join(`${preposition} …`);
  return grammar.and(refs.map((ref) => behind(preposition, facts.part(ref), of)));
}

/** ` im Prüfofen mit Nylonbürste und Entfetter`: where it is done first, then with what. */
export function helpedBy({ with: uses = [], using = [] }: Helped, facts: SentenceFacts): Prose {
  const tools = uses.filter(({ tool }) => tool !== undefined).map(facts.tool);
  const inPlace = tools.filter(({ sort }) => WORKED_IN.has(sort ?? ''));
  const onPlace = tools.filter(({ sort }) => WORKED_ON.has(sort ?? ''));
  const rest = tools.filter((tool) => !inPlace.includes(tool) && !onPlace.includes(tool));
  const means = [...rest, ...using.map(facts.consumable)].map((thing) => named(thing, 'dative'));
  return join(
    led(inPlace.map((thing) => behind('in', thing, 'dative'))),
    led(onPlace.map((thing) => behind('auf', thing, 'dative'))),
    means.length > 0 && join(' mit ', grammar.and(means)),
  );
}

function led(items: readonly Prose[]): Piece {
  return items.length === 0 ? undefined : join(' ', grammar.and(items));
}

/** The direction of turn as its own sentence; the hand is said where it is the unusual one. */
export function turnSentence(facts: SentenceFacts): Piece {
  const { turn } = facts;
  if (turn.kind === 'open') return join('In der Richtung drehen, die im zutreffenden Feld steht.');
  if (turn.kind === 'unknown') return undefined;
  return join(strong(directionWords(turn.direction)), ' drehen', turn.hand === 'left' ? ' (Linksgewinde).' : '.');
}

/** At the start of its sentence. */
export function directionWords(direction: 'clockwise' | 'counter-clockwise'): string {
  return direction === 'clockwise' ? 'Im Uhrzeigersinn' : 'Gegen den Uhrzeigersinn';
}

export function holdSentence(facts: SentenceFacts): Piece {
  return facts.hold && holdWords(facts.hold);
}

/** `Turbinensechskant mit 12-mm-Einsatz gegenhalten.` */
export function holdWords(hold: NonNullable<SentenceFacts['hold']>): Prose {
  const tools = hold.with.map((thing) => named(thing, 'dative'));
  return sentence(
    phrase(hold.at, 'accusative', 'bare'),
    tools.length > 0 && join(' mit ', grammar.and(tools)),
    ' gegenhalten',
  );
}

/** How a part faces and what it locates on. */
export function placingSentences({ orient, locate }: SentenceFacts): Piece[] {
  return [
    orient && join('Einbaulage: ', orient, '.'),
    locate && join('Lage bestimmt durch: ', phrase(locate, 'nominative', 'bare'), '.'),
  ];
}
