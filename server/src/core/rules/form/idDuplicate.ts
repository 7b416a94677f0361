import { declarationsIn } from '../../analysis/declarations';
import { defineRule } from '../defineRule';
import { EXAMPLE_HEAD } from '../exampleDocuments';
import { inProcedure } from '../examples';
import { nounOf } from '../support/nouns';
import { isDoubled } from '../support/tornText';

const twoSteps = (second: string): string => `phases:
  - phase: Assemble
    steps:
      - step: fit-cover
        title: Fit the cover
        do: [{ install: cover }]
      - step: ${second}
        title: Fit the seal
        do: [{ install: cover-seal }]
`;

export const idDuplicate = defineRule({
  id: 'id-duplicate',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'Two things of one kind have the same id in one document.',
    why: 'Whoever is sent back to that step, or looks up that part, is sent to the first of the two; the other one is not seen.',
    wrong: inProcedure(twoSteps('fit-cover'), EXAMPLE_HEAD + twoSteps('fit-cover')),
    right: inProcedure(twoSteps('fit-seal'), EXAMPLE_HEAD + twoSteps('fit-seal')),
  },
  messages: {
    twice: (noun: string, id: string) => `There is a ${noun} "${id}" already; give this one an id of its own`,
  },
  check: {
    unit(unit, ctx) {
      if (unit.def !== ctx.document.kind || isDoubled(ctx.document)) return;
      for (const { first, again } of declarationsIn(ctx.document).repeated) {
        ctx.report(again.node, 'twice', [nounOf(again.kind), again.id], {
          about: [again.id],
          related: [{ range: first.node, message: `The first ${nounOf(first.kind)} "${first.id}"` }],
        });
      }
    },
  },
});
