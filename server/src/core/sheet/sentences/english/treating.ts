import type { ApplyInstruction, CleanInstruction } from '../../../model/generated/types';
import type { Prose } from '../../sheet';
import { join, type Piece, quantity, sentences } from '../grammar';
import type { SentenceFacts, ToolUse, VerbWriters } from '../language';
import { englishGrammar as grammar } from './grammar';
import { helpedBy, parts } from './words';

/** Verbs that do something to a part: clean, coat, heat, wait. */
export const treating: Pick<VerbWriters, 'apply' | 'clean' | 'heat' | 'cool' | 'wait'> = {
  apply: (one, facts) => {
    const amount = one.amount && facts.prose(one.amount);
    const stuff = grammar.and((one.apply ?? []).map((ref) => grammar.bare(facts.consumable(ref))));
    const behind = amount !== undefined && isShare(amount);
    return join(
      'Apply ',
      amount !== undefined && !behind && join(amount, ' of '),
      stuff,
      target(one, facts),
      helpedBy(one, facts),
      behind && join(': ', amount),
      '.',
    );
  },
  clean: (one, facts) => {
    const way = wayOfCleaning(one, facts);
    return join(way.verb, ' ', parts(one.clean, facts), way.how, helpedBy(one, facts), '.');
  },
  heat: (one, facts) => temperatureSentences('Heat', one.heat, one, facts),
  cool: (one, facts) => temperatureSentences('Cool', one.cool, one, facts),
  wait: (one, facts) => {
    if (one.wait?.word !== 'cure') return join('Wait ', one.wait ? quantity(facts.quantity(one.wait)) : '…', '.');
    const stuff = (one.of ?? []).map((ref) => grammar.the(facts.consumable(ref)));
    const what = stuff.length === 0 ? 'what was applied' : grammar.and(stuff);
    const until = join('until ', what, stuff.length > 1 ? ' have cured' : ' has cured');
    if (facts.cure !== undefined) return join('Wait ', quantity(facts.cure), ' ', until, '.');
    return join('Wait ', until, '. The time is not stated here: read it on the data sheet.');
  },
};

/** An amount for each place cannot stand before `of`. */
function isShare(amount: Prose): boolean {
  return amount.some(({ text }) => /\b(?:each|per|across|both|every|all)\b/u.test(text));
}

function target({ to, at }: ApplyInstruction, facts: SentenceFacts): Piece {
  if (at !== undefined && to !== undefined) {
    return join(' to ', grammar.withArticle(facts.prose(at)), ' of ', parts(to, facts));
  }
  if (at !== undefined) return join(' to ', grammar.withArticle(facts.prose(at)));
  return to && join(' to ', parts(to, facts));
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
  wash: { verb: 'Wash' },
  wipe: { verb: 'Wipe' },
  brush: { verb: 'Brush' },
  blast: { verb: 'Blast' },
  ultrasonic: { verb: 'Clean', how: ' in the ultrasonic bath', tool: 'ultrasonic-bath' },
  'wire-brush': { verb: 'Clean', how: ' with a wire brush', tool: 'brush' },
  caustic: { verb: 'Clean', how: ' in a caustic solution' },
  solvent: { verb: 'Clean', how: ' with a solvent', tool: 'solvent' },
  steam: { verb: 'Clean', how: ' with steam' },
  'compressed-air': { verb: 'Clean', how: ' with compressed air' },
};

/** The way is not said twice where the tool or the consumable says it. */
function wayOfCleaning(one: CleanInstruction, facts: SentenceFacts): WayOfCleaning {
  const way = one.by?.value === undefined ? undefined : WAYS[one.by.value];
  if (way === undefined) return { verb: 'Clean' };
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
      one.until && join(' to ', quantity(facts.quantity(one.until))),
      '.',
    ),
    thermometers.length > 0 && join('Measure the temperature with ', grammar.and(thermometers), '.'),
  );
}
