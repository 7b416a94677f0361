import type { LimitCase } from '../../workings/limitCases';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft } from '../ruleContext';
import { type StackWords, stackDetails, stacksOf, stackWords } from '../support/stackFindings';

const DIMENSIONS = `dimensions:
  bore: 8.024..8.030 mm
  journal: 7.988..7.996 mm
limits:
`;

export const limitDisagreesWithStack = defineRule({
  id: 'limit-disagrees-with-stack',
  group: 'limits',
  since: '0.1.0',
  // Nothing that is made to its drawing can pass, or the limit is that of something else: not to go to the bench.
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A limit that parts in the middle of all their tolerances do not meet: the sum of its dimensions lies outside of what is accepted. Worst case and root sum square are shown.',
    why: 'Good parts are rejected, or bad ones passed, since the limit and the drawing cannot both be right. Often two signs are swapped, or one dimension has a slip.',
    wrong: inFamily(
      `${DIMENSIONS}  play: { name: play of the journal, accept: 0.05..0.09 mm, from: [+bore, -journal] }\n  clearance: { name: journal clearance, accept: 0.028..0.042 mm, from: [-bore, +journal] }`,
    ),
    right: inFamily(
      `${DIMENSIONS}  clearance: { name: journal clearance, accept: 0.028..0.042 mm, from: [+bore, -journal] }`,
    ),
  },
  messages: {
    outside: ({ name, accepted, middle, worst, statistical }: StackWords) =>
      `The ${name} comes to ${middle} from its dimensions (worst case ${worst}, root sum square ${statistical}), and ${accepted} is accepted; mend the limit or the dimension that is wrong`,
    reversed: ({ name, accepted, middle }: StackWords) =>
      `The ${name} comes to ${middle} from its dimensions, and ${accepted} is accepted; the signs are the other way round`,
  },
  check: {
    family(family, ctx) {
      for (const one of stacksOf(family)) {
        const words = one.verdict === 'middle' ? stackWords(one) : undefined;
        if (words === undefined) continue;
        const fixes = (): FixDraft[] => (one.reversed ? [turned(one)] : []);
        ctx.report(one.accept.node, one.reversed ? 'reversed' : 'outside', [words], stackDetails(one, fixes));
      }
    },
  },
});

/** The other sign before every dimension; a dimension without one counts as added. */
function turned({ limit }: LimitCase): FixDraft {
  const edits = (limit.from ?? []).map(({ node, sign, term }) => {
    const named = 'id' in term ? term.range : { ...node, from: node.to - term.text.length };
    return { range: { item: node.item, from: node.from, to: named.from }, text: sign > 0 ? '-' : '+' };
  });
  return { title: 'Turn the signs round', edits };
}
