import type { Ref } from '../../../model/values';
import type { Prose } from '../../sheet';
import { join, type Piece, strong, type Thing } from '../grammar';
import type { SentenceFacts, ToolUse } from '../language';
import { englishGrammar as grammar } from './grammar';

/** Tools that work is done in rather than with. */
const WORKED_IN = new Set(['oven', 'wash-tank', 'ultrasonic-bath', 'blast-cabinet', 'holding-fixture']);
const WORKED_ON = new Set(['hot-plate', 'balance-machine']);

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

function pieces(thing: Thing, count: number): Prose {
  if (thing.count !== undefined && thing.count > count) return grammar.someOf(count, thing);
  return grammar.the({ ...thing, count });
}

/** ` in the bench oven with the brush and degreaser`: the tools first, then what is used up. */
export function helpedBy({ with: uses = [], using = [] }: Helped, facts: SentenceFacts): Prose {
  const tools = uses.filter(({ tool }) => tool !== undefined).map(facts.tool);
  const place = (sorts: ReadonlySet<string>) => tools.filter(({ sort }) => sorts.has(sort ?? ''));
  const rest = tools.filter(({ sort }) => !WORKED_IN.has(sort ?? '') && !WORKED_ON.has(sort ?? ''));
  const means = [...rest.map(grammar.the), ...using.map((ref) => grammar.bare(facts.consumable(ref)))];
  return join(
    preposition(' in ', place(WORKED_IN).map(grammar.the)),
    preposition(' on ', place(WORKED_ON).map(grammar.the)),
    preposition(' with ', means),
  );
}

function preposition(word: string, items: readonly Prose[]): Piece {
  return items.length === 0 ? undefined : join(word, grammar.and(items));
}

/** The direction of turn as its own sentence; the hand is said where it is the unusual one. */
export function turnSentence(facts: SentenceFacts): Piece {
  if (facts.turn.kind === 'open') return join('Turn in the direction of the box that applies.');
  if (facts.turn.kind === 'unknown') return undefined;
  const hand = facts.turn.hand === 'left' ? ' (left-hand thread).' : '.';
  return join('Turn ', strong(facts.turn.direction), hand);
}

export function holdSentence(facts: SentenceFacts): Piece {
  const { hold } = facts;
  if (hold === undefined) return undefined;
  const tools = hold.with.length === 0 ? undefined : join(' with ', grammar.and(hold.with.map(grammar.the)));
  return join('Hold ', grammar.withArticle(hold.at), tools, '.');
}

/** How a part faces and what it locates on. */
export function placingSentences(facts: SentenceFacts, placed: readonly Thing[]): Piece[] {
  const { orient, locate } = facts;
  return [
    orient && orientSentence(orient),
    locate && join(`Locate ${grammar.pronoun(placed)} by `, grammar.withArticle(locate), '.'),
  ];
}

function orientSentence(orient: Prose): Prose {
  const start = orient[0]?.text ?? '';
  const saysWhat = orient.some(({ text }) =>
    /\b(?:faces?|points?|is|are|lies?|shows?|sits?|stands?|goes|go)\b/u.test(text),
  );
  if (!saysWhat || /^[A-Z]/u.test(start)) return join('Position: ', orient, '.');
  return join('Make sure that ', grammar.withArticle(orient), '.');
}
