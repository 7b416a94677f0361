import type { ApplyInstruction, CleanInstruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import { join, type Piece, plain, quantity, sentences } from '../grammar';
import type { SentenceFacts, ToolUse, VerbWriters } from '../language';
import { germanGrammar as grammar, isPlural, named, phrase, whose, withDefinite } from './grammar';
import { act, helpedBy, parts, places, sentence } from './words';

/** Verbs that do something to a part: clean, coat, heat, wait. */
export const treating: Pick<VerbWriters, 'apply' | 'clean' | 'heat' | 'cool' | 'wait'> = {
  apply: (one, facts) => {
    const amount = one.amount && facts.prose(one.amount);
    const stuff = grammar.and((one.apply ?? []).map((ref) => named(facts.consumable(ref), 'accusative')));
    const behind = amount !== undefined && isShare(amount);
    return sentence(
      amount !== undefined && !behind && join(phrase(amount, 'accusative', 'as written'), ' '),
      stuff,
      helpedBy(one, facts),
      target(one, facts),
      ' auftragen',
      behind && join(': ', amount),
    );
  },
  clean: (one, facts) => {
    const way = wayOfCleaning(one, facts);
    return act(parts(one.clean, facts), join(way.how, helpedBy(one, facts)), ' ', way.verb);
  },
  heat: (one, facts) => temperatureSentences('erwärmen', one.heat, one, facts),
  cool: (one, facts) => temperatureSentences('abkühlen', one.cool, one, facts),
  wait: (one, facts) => {
    if (one.wait?.word !== 'cure') return sentence(one.wait ? quantity(facts.quantity(one.wait)) : '…', ' warten');
    const until = cured((one.of ?? []).map(facts.consumable));
    if (facts.cure !== undefined) return sentence(quantity(facts.cure), ' warten, ', until);
    return sentences(sentence('warten, ', until), 'Die Zeit ist hier nicht angegeben: im Datenblatt nachlesen.');
  },
};

function cured(stuff: ReturnType<SentenceFacts['consumable']>[]): Prose {
  if (stuff.length === 0) return join('bis das Aufgetragene ausgehärtet ist');
  const several = stuff.length > 1 || stuff.some(isPlural);
  const all = grammar.and(stuff.map((thing) => withDefinite(thing, 'nominative')));
  return join('bis ', all, ' ausgehärtet ', several ? 'sind' : 'ist');
}

/** An amount for each place stands behind the sentence. */
function isShare(amount: Prose): boolean {
  return amount.some(({ text }) =>
    /(?<!\p{L})(?:je|jeweils|jede[nrsm]?|pro|beide[nrsm]?|alle[nrsm]?|each|per|both|every|all)(?!\p{L})/u.test(text),
  );
}

function target({ to, at }: ApplyInstruction, facts: SentenceFacts): Piece {
  if (at === undefined) return to && join(' ', places('auf', to, 'accusative', facts));
  const written = facts.prose(at);
  // One article before two nouns would fit the first alone.
  const isOne = !/(?:^|\s)(?:und|oder)\s/u.test(plain(written));
  const place = phrase(written, 'accusative', isOne ? 'definite' : 'as written');
  return join(' auf ', place, to && whose(to.map(facts.part)));
}

interface WayOfCleaning {
  readonly verb: string;
  readonly how?: string;
}

const WAYS: {
  readonly [By in NonNullable<NonNullable<CleanInstruction['by']>['value']>]: WayOfCleaning & {
    readonly tool?: string;
  };
} = {
  wash: { verb: 'waschen' },
  wipe: { verb: 'abwischen' },
  brush: { verb: 'abbürsten' },
  blast: { verb: 'strahlen' },
  ultrasonic: { verb: 'reinigen', how: ' im Ultraschallbad', tool: 'ultrasonic-bath' },
  'wire-brush': { verb: 'reinigen', how: ' mit Drahtbürste', tool: 'brush' },
  caustic: { verb: 'reinigen', how: ' in Lauge' },
  solvent: { verb: 'reinigen', how: ' mit Lösemittel', tool: 'solvent' },
  steam: { verb: 'reinigen', how: ' mit Dampf' },
  'compressed-air': { verb: 'reinigen', how: ' mit Druckluft' },
};

/** The way is not said twice where the tool or the consumable says it. */
function wayOfCleaning(one: CleanInstruction, facts: SentenceFacts): WayOfCleaning {
  const way = one.by?.value === undefined ? undefined : WAYS[one.by.value];
  if (way === undefined) return { verb: 'reinigen' };
  const sorts = [
    ...(one.with ?? []).map((use) => facts.tool(use).sort),
    ...(one.using ?? []).map((ref) => facts.consumable(ref).sort),
  ];
  return way.tool !== undefined && sorts.includes(way.tool) ? { verb: way.verb } : way;
}

function temperatureSentences(
  verb: string,
  refs: Parameters<typeof parts>[0],
  one: {
    readonly with?: readonly ToolUse[];
    readonly using?: readonly Parameters<SentenceFacts['consumable']>[0][];
    readonly until?: Parameters<SentenceFacts['quantity']>[0];
  },
  facts: SentenceFacts,
): Prose {
  const uses = one.with ?? [];
  const reads = (use: ToolUse) => facts.tool(use).sort === 'thermometer';
  const helped = { ...one, with: uses.filter((use) => !reads(use)) };
  const thermometers = uses.filter(reads).map((use) => named(facts.tool(use), 'dative'));
  return sentences(
    act(
      parts(refs, facts),
      helpedBy(helped, facts),
      one.until && join(' auf ', quantity(facts.quantity(one.until))),
      ` ${verb}`,
    ),
    thermometers.length > 0 && join('Temperatur mit ', grammar.and(thermometers), ' messen.'),
  );
}
