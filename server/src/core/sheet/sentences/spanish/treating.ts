import type { ApplyInstruction, CleanInstruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import { join, type Piece, quantity, sentences } from '../grammar';
import type { SentenceFacts, ToolUse, VerbWriters } from '../language';
import { spanishGrammar as grammar, isPlural } from './grammar';
import { helpedBy, ofParts, parts } from './words';

/** Verbs that do something to a part: clean, coat, heat, wait. */
export const treating: Pick<VerbWriters, 'apply' | 'clean' | 'heat' | 'cool' | 'wait'> = {
  apply: (one, facts) => {
    const amount = one.amount && facts.prose(one.amount);
    const stuff = grammar.and((one.apply ?? []).map((ref) => grammar.bare(facts.consumable(ref))));
    const behind = amount !== undefined && isShare(amount);
    return join(
      'Aplique ',
      amount !== undefined && !behind && join(amount, ' de '),
      stuff,
      target(one, facts),
      helpedBy(one, facts),
      behind && join(': ', amount),
      '.',
    );
  },
  clean: (one, facts) => {
    const way = wayOfCleaning(one, facts);
    const how = way.means === undefined ? [] : [join(way.means)];
    return join(way.verb, ' ', parts(one.clean, facts), way.place, helpedBy(one, facts, how), '.');
  },
  heat: (one, facts) => temperatureSentences('Caliente', one.heat, one, facts),
  cool: (one, facts) => temperatureSentences('Enfríe', one.cool, one, facts),
  wait: (one, facts) => {
    if (one.wait?.word !== 'cure') return join('Espere ', one.wait ? quantity(facts.quantity(one.wait)) : '…', '.');
    const stuff = (one.of ?? []).map(facts.consumable);
    const what = stuff.length === 0 ? 'lo aplicado' : grammar.and(stuff.map(grammar.the));
    const cured = stuff.length > 1 || stuff.some(isPlural) ? ' hayan curado' : ' haya curado';
    const until = join('hasta que ', what, cured);
    if (facts.cure !== undefined) return join('Espere ', quantity(facts.cure), ' ', until, '.');
    return join('Espere ', until, '. El tiempo no se indica aquí: léalo en la hoja de datos.');
  },
};

/** An amount for each place cannot stand before `de`. */
function isShare(amount: Prose): boolean {
  return amount.some(({ text }) =>
    /(?<!\p{L})(?:cada|por|entre|ambos|ambas|todos|todas|sendos|sendas|each|per|every|both)(?!\p{L})/u.test(text),
  );
}

function target({ to, at }: ApplyInstruction, facts: SentenceFacts): Piece {
  if (at !== undefined && to !== undefined) {
    return join(' en ', grammar.withArticle(facts.prose(at)), ' ', ofParts(to, facts));
  }
  if (at !== undefined) return join(' en ', grammar.withArticle(facts.prose(at)));
  return to && join(' en ', parts(to, facts));
}

interface WayOfCleaning {
  readonly verb: string;
  readonly place?: string;
  /** What it is done with, to stand before the tools. */
  readonly means?: string;
}

const WAYS: {
  readonly [By in NonNullable<NonNullable<CleanInstruction['by']>['value']>]: WayOfCleaning & {
    readonly tool?: string;
  };
} = {
  wash: { verb: 'Lave' },
  wipe: { verb: 'Limpie', means: 'un paño', tool: 'wipe' },
  brush: { verb: 'Cepille' },
  blast: { verb: 'Limpie', means: 'chorro abrasivo', tool: 'blast-cabinet' },
  ultrasonic: { verb: 'Limpie', place: ' en el baño de ultrasonidos', tool: 'ultrasonic-bath' },
  'wire-brush': { verb: 'Limpie', means: 'un cepillo de alambre', tool: 'brush' },
  caustic: { verb: 'Limpie', place: ' en una solución cáustica' },
  solvent: { verb: 'Limpie', means: 'un disolvente', tool: 'solvent' },
  steam: { verb: 'Limpie', means: 'vapor' },
  'compressed-air': { verb: 'Limpie', means: 'aire comprimido' },
};

/** The way is not said twice where the tool or the consumable says it. */
function wayOfCleaning(one: CleanInstruction, facts: SentenceFacts): WayOfCleaning {
  const way = one.by?.value === undefined ? undefined : WAYS[one.by.value];
  if (way === undefined) return { verb: 'Limpie' };
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
  const thermometers = uses.filter(reads).map((use) => grammar.the(facts.tool(use)));
  return sentences(
    join(
      `${verb} `,
      parts(refs, facts),
      helpedBy(helped, facts),
      one.until && join(' hasta ', ...reached(facts.quantity(one.until))),
      '.',
    ),
    thermometers.length > 0 && join('Mida la temperatura con ', grammar.and(thermometers), '.'),
  );
}

/** `hasta 35 °C como máximo`: the bound stands behind the value that is reached. */
function reached(words: string): Piece[] {
  const bound = /^(?<bound>como (?:máximo|mínimo)) (?<value>.*)$/su.exec(words)?.groups;
  return bound === undefined ? [quantity(words)] : [quantity(bound.value ?? ''), ` ${bound.bound}`];
}
