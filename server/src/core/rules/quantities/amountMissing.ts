import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { sentencesOf } from '../support/sentences';
import { isHalfTyped } from '../support/unsettled';

/** Kinds of which too little does not hold or seal, and too much gets where it must not. */
const COUNTS: ReadonlySet<string | undefined> = new Set([
  'threadlocker',
  'sealant',
  'grease',
  'anti-seize',
  'assembly-paste',
]);

/** Words by which a writer says how much. */
const AMOUNT =
  /\d|[½¼¾]|\b(?:one|two|three|drops?|beads?|films?|coats?|thin(?:ly)?|smear|sparingly|lightly|peas?|turns?|full|half|all around)\b/i;

export const amountMissing = defineRule({
  id: 'amount-missing',
  group: 'quantities',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'Threadlocker, sealant, grease or paste is applied without a word about how much.',
    why: 'Too little threadlocker lets the nut go; too much sealant ends up in the oil hole of the bearing.',
    wrong: inStep('- apply: threadlocker\n  to: cap-nut'),
    right: inStep('- apply: threadlocker\n  to: cap-nut\n  amount: 1 drop'),
  },
  messages: {
    missing: (name: string) =>
      `Nothing says how much ${name} is applied; write an amount such as "1 drop" or "a thin film"`,
  },
  check: {
    instruction({ instruction }, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || instruction.verb !== 'apply' || instruction.amount !== undefined) return;
      if (sentencesOf(instruction).some(({ prose, warns }) => !warns && AMOUNT.test(prose.text))) return;
      for (const ref of instruction.apply ?? []) {
        const consumable = procedure.consumables.get(ref.id)?.entry.value;
        if (!COUNTS.has(consumable?.kind?.value) || isHalfTyped(instruction)) continue;
        ctx.report(ref.range, 'missing', [consumable?.name?.text ?? ref.id], { about: [ref.id] });
      }
    },
  },
});
