import type { FamilyView } from '../../analysis/familyView';
import { heldValues, whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { ProcedureView, StepView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Part } from '../../model/generated/types';
import type { Ref } from '../../model/values';
import { pairOf } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { keysFor } from '../support/buildKeys';
import { type Hand, otherHand } from '../support/handOfThread';
import { likelyHand } from '../support/likelyHand';
import { addKeys } from '../support/mapKey';
import { turnedParts } from '../support/turnedParts';

const ONE_VARIANT =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: { k1-a: right }, torque: 4.6 ± 0.3 N·m }';

const messages = {
  missing: (name: string) =>
    `The family does not state the hand of the ${name} that is turned here; state left or right for every build`,
};

export const threadHandMissing = defineRule({
  id: 'thread-hand-missing',
  group: 'threads',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A fastener is turned on a build or an outcome for which the family does not say whether its thread is left-hand or right-hand.',
    why: 'A left-hand nut that is loosened the usual way is tightened until it breaks off.',
    wrong: withFamily(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'), ONE_VARIANT),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
  },
  messages,
  check: {
    step(step, ctx) {
      const { procedure } = ctx;
      if (procedure?.family === undefined) return;
      for (const turn of turnsWithoutHand(procedure, procedure.family, step))
        report(procedure, procedure.family, turn, ctx);
    },
  },
});

/** A fastener that is turned where its hand is not stated. */
interface Turn {
  readonly ref: Ref;
  readonly part: Part;
  readonly served: BuildSet;
  readonly silent: BuildSet;
}

/** Within a step a fastener is reported once for each build, at the first instruction that turns it. */
function turnsWithoutHand(procedure: ProcedureView, family: FamilyView, step: StepView): Turn[] {
  const turns: Turn[] = [];
  for (const view of step.instructions) {
    for (const { ref, part } of turnedParts(view.instruction, family)) {
      const served = view.where.and(presentBuilds(family, procedure.space, ref.id));
      const told = turns.filter((one) => one.ref.id === ref.id).map((one) => one.silent);
      const silent = heldValues(part.hand, procedure.space, served).absent.minus(procedure.space.union(told));
      if (!silent.isEmpty) turns.push({ ref, part, served, silent });
    }
  }
  return turns;
}

function report(procedure: ProcedureView, family: FamilyView, turn: Turn, ctx: RuleContext<typeof messages>): void {
  const { ref, part, served, silent } = turn;
  const name = family.nameOf(ref.id);
  const declared = family.parts.get(ref.id)?.id.node ?? part.node;
  const stated = part.hand === undefined ? `The ${name} is declared here` : `The hand of the ${name} is stated here`;
  ctx.report(ref.range, 'missing', [name], {
    about: [ref.id],
    ...whereUnless(silent, served, procedure.space),
    related: [{ range: part.hand?.node ?? declared, document: family.document, message: stated }],
    fixes: () => fixes(procedure, family, turn),
  });
}

/** States a hand in the family: first the one that the designation or the mating parts state already. */
function fixes(procedure: ProcedureView, family: FamilyView, { ref, part, silent }: Turn): FixDraft[] {
  const { space } = procedure;
  const likely = likelyHand(family, ref.id, part, space, silent);
  const present = presentBuilds(family, space, ref.id);
  const keys = part.hand === undefined ? [] : keysFor(family, space, silent, present);
  const hands: readonly Hand[] = likely === undefined ? ['right', 'left'] : [likely.hand, otherHand(likely.hand)];
  return hands.flatMap((hand) => {
    const because = hand === likely?.hand ? `, as ${likely.as} states` : '';
    return stateHand(family, part, keys, hand, because);
  });
}

function stateHand(family: FamilyView, part: Part, keys: readonly string[], hand: Hand, because: string): FixDraft[] {
  const { document } = family;
  const cases = part.hand?.node;
  const map = part.hand === undefined ? part.node : cases;
  if (map?.kind !== 'map') return [];
  const behind =
    part.hand === undefined ? (pairOf(map, 'thread') ?? pairOf(map, 'kind') ?? pairOf(map, 'name')) : undefined;
  const edit = addKeys(
    map,
    behind,
    (keys.length === 0 ? ['hand'] : keys).map((key) => [key, hand] as const),
  );
  if (edit === undefined) return [];
  const what = keys.length === 0 ? `hand: ${hand}` : `${keys.map((one) => `${one}: ${hand}`).join(', ')} under hand`;
  const span = document.spanOf(edit.range);
  return [{ title: `Write ${what} in the family${because}`, edits: [{ document, span, text: edit.text }] }];
}
