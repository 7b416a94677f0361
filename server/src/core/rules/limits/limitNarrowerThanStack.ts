import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { type StackWords, stackDetails, stacksOf, stackWords } from '../support/stackFindings';

const family = (accept: string): string =>
  `dimensions:
  bore: 8.024..8.030 mm
  journal: 7.988..7.996 mm
limits:
  clearance: { name: journal clearance, accept: ${accept}, from: [+bore, -journal] }`;

export const limitNarrowerThanStack = defineRule({
  id: 'limit-narrower-than-stack',
  group: 'limits',
  since: '0.1.0',
  // A limit may rightly be narrower than the worst case, since it is measured: what fails is exchanged. Where the root
  // sum square reaches outside, parts that are right fail often enough that somebody has to have meant it.
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A limit that is met by parts in the middle of their tolerances, while the root sum square of its dimensions reaches outside of what is accepted. A limit that only the worst case exceeds is left alone, since it is measured at the bench.',
    why: 'Unit after unit fails the measurement with parts that are all to drawing, and the fitter looks for a fault that is not there.',
    wrong: inFamily(family('0.032..0.040 mm')),
    right: inFamily(family('0.028..0.042 mm')),
  },
  messages: {
    narrow: ({ name, accepted, worst, statistical }: StackWords) =>
      `The ${name} comes to ${statistical} from its dimensions by root sum square (worst case ${worst}), and only ${accepted} is accepted; parts that are to drawing will fail, so say how they are matched, or widen the limit`,
  },
  check: {
    family(view, ctx) {
      for (const one of stacksOf(view)) {
        const words = one.verdict === 'statistical' ? stackWords(one) : undefined;
        if (words !== undefined) ctx.report(one.accept.node, 'narrow', [words], stackDetails(one));
      }
    },
  },
});
