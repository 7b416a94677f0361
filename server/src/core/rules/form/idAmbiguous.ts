import { Names } from '../../analysis/names';
import type { Mention } from '../../model/values';
import type { ScalarNode } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { mentionsOf } from '../support/mentions';
import { nounOf } from '../support/nouns';
import { listed } from '../support/phrases';
import { replaceBy } from '../support/valueFixes';

const CHECK = 'checks:\n  cap-nut: { say: The cap nut is tight. }';

const messages = {
  ambiguous: (text: string, nouns: readonly string[], texts: readonly string[]) =>
    `"${text}" may mean ${listed(nouns, 'or')}; write ${listed(texts, 'or')}`,
};

export const idAmbiguous = defineRule({
  id: 'id-ambiguous',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A text names an id that things of two kinds share.',
    why: 'The sheet may print the name of a check where the part was meant, and the fitter takes up the wrong thing.',
    wrong: withFamily(inStep('- say: Look at the <cap-nut> again.'), CHECK),
    right: withFamily(inStep('- say: Look at the <part/cap-nut> again.'), CHECK),
  },
  messages,
  check: {
    prose({ prose }, ctx) {
      for (const { mention, scalar } of mentionsOf(prose)) report(mention, scalar, ctx);
    },
  },
});

function report(mention: Mention, scalar: ScalarNode, ctx: RuleContext<typeof messages>): void {
  const found = Names.of(ctx.snapshot, ctx.document).lookUpMention(mention);
  if (found.is !== 'ambiguous') return;
  const range = sourceRange(scalar, mention.from, mention.to);
  const nouns = found.things.map(({ kind }) => `a ${nounOf(kind)}`);
  const texts = found.things.map(({ kind, id }) => `<${kind}/${id}>`);
  ctx.report(range, 'ambiguous', [scalar.text.slice(mention.from, mention.to), nouns, texts], {
    about: [mention.id],
    fixes: () => texts.map((text) => replaceBy(range, text)),
  });
}
