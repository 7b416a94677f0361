import type { FamilyView } from '../../analysis/familyView';
import { type HeldValue, heldValues, meetings, whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { BuildSet, BuildSpace } from '../../builds';
import type { ProseFact } from '../../model/facts';
import type { Part } from '../../model/generated/types';
import type { Choice, Entry, Prose, Text } from '../../model/values';
import type { ScalarNode } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { buildsSpokenOf, claimedFasteners } from '../support/claimedFasteners';
import { type HandClaim, handClaims } from '../support/handClaims';
import { type Hand, handInDesignation, otherHand } from '../support/handOfThread';
import { writeScalar } from '../support/mapKey';
import { turningBy } from '../support/turnedParts';

const messages = {
  designation: (name: string, hand: string, thread: string) =>
    `The hand of the ${name} is ${hand}, but the designation ${thread} marks the other one; correct whichever is wrong`,
  mates: (name: string, hand: string, mate: string, other: string) =>
    `The hand of the ${name} is ${hand}, but that of the ${mate} that it is screwed to is ${other}; correct whichever is wrong`,
  words: (said: string, name: string, hand: string) =>
    `"${said}" contradicts the hand of the ${name}, which is ${hand} in the family; correct whichever is wrong`,
};

type Context = RuleContext<typeof messages>;
type HeldHand = HeldValue<Choice<Hand>>;

const MARKED_LEFT =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8-LH, hand: right, torque: 4.6 ± 0.3 N·m }';

export const threadHandContradicted = defineRule({
  id: 'thread-hand-contradicted',
  group: 'threads',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'The hand of a thread is stated twice, and not the same: in its designation, on its mating part, in a name, or in a sentence of a procedure.',
    why: 'One of the two is wrong, and the fitter who follows it breaks the nut or the shaft.',
    wrong: inFamily(MARKED_LEFT),
    right: inFamily(MARKED_LEFT.replace('hand: right', 'hand: left')),
  },
  messages,
  check: {
    part(entry, ctx) {
      const { family } = ctx;
      if (family !== undefined && entry.value.hand !== undefined) new PartCheck(family, entry, ctx).report();
    },
    prose(fact, ctx) {
      if (ctx.procedure?.family !== undefined) reportSentences(ctx.procedure.family, fact, ctx);
    },
  },
});

/** A part of the family, against everything else that the family says of its hand. */
class PartCheck {
  readonly #id: string;
  readonly #part: Part;
  readonly #name: string;
  readonly #space: BuildSpace;
  readonly #served: BuildSet;
  readonly #hands: readonly HeldHand[];

  constructor(
    readonly family: FamilyView,
    entry: Entry<Part>,
    readonly ctx: Context,
  ) {
    this.#id = entry.id.id;
    this.#part = entry.value;
    this.#name = family.nameOf(this.#id);
    this.#space = family.space;
    this.#served = presentBuilds(family, this.#space, this.#id);
    this.#hands = heldValues(this.#part.hand, this.#space, this.#served).held;
  }

  report(): void {
    this.#designation();
    for (const mate of this.#part.matesWith ?? []) this.#mate(mate.id);
    this.#words(this.#part.name, this.#hands);
    for (const also of this.#part.also ?? []) this.#words(also, this.#hands);
    // A remark on a part whose hand differs speaks of one build or the other, and only a reader can tell.
    if (new Set(this.#hands.map(({ value }) => value.value)).size === 1) this.#words(this.#part.note, this.#hands);
  }

  #designation(): void {
    const threads = heldValues(this.#part.thread, this.#space, this.#served).held;
    for (const { first, second, where } of meetings(this.#hands, threads)) {
      const marked = handInDesignation(second.text);
      if (first.value === undefined || marked === undefined || marked === first.value) continue;
      this.ctx.report(first.node, 'designation', [this.#name, first.value, second.text], {
        about: [this.#id],
        ...whereUnless(where, this.#served, this.#space),
        related: [{ range: second.node, message: `The thread is designated ${second.text} here` }],
        fixes: () => [writeHand(first, marked), ...unmark(second)],
      });
    }
  }

  #mate(id: string): void {
    const mate = this.family.part(id);
    const mutual = mate?.matesWith?.some((ref) => ref.id === this.#id) === true;
    if (mate === undefined || (mutual && id < this.#id)) return;
    const others = heldValues(mate.hand, this.#space, presentBuilds(this.family, this.#space, id)).held;
    for (const { first, second, where } of meetings(this.#hands, others)) {
      if (first.value === undefined || second.value === undefined || first.value === second.value) continue;
      const name = this.family.nameOf(id);
      this.ctx.report(first.node, 'mates', [this.#name, first.value, name, second.value], {
        about: [this.#id, id],
        ...whereUnless(where, this.#served, this.#space),
        related: [{ range: second.node, message: `The hand of the ${name} is ${second.value} here` }],
        fixes: () => [writeHand(first, otherHand(first.value ?? 'right'))],
      });
    }
  }

  #words(said: Prose | Text | undefined, hands: readonly HeldHand[]): void {
    if (said === undefined) return;
    const [claim] = handClaims(said.text, undefined);
    if (claim === undefined) return;
    reportClaim(this.ctx, this.family, this.#id, claim, textOf(said), hands, this.#served, this.#space);
  }
}

function reportSentences(family: FamilyView, { key, prose }: ProseFact, ctx: Context): void {
  const { procedure, step, instruction } = ctx;
  if (procedure === undefined || key === 'note') return;
  const claims = handClaims(prose.text, turningBy(instruction?.instruction));
  if (claims.length === 0) return;
  const told = new Set<string>();
  for (const claim of claims) {
    const place = instruction?.where ?? step?.where ?? procedure.space.everything;
    const sentence = prose.text.slice(claim.sentence.start, claim.sentence.end);
    const where = buildsSpokenOf(procedure, sentence, place);
    for (const id of claimedFasteners(family, prose, claim, { procedure, step, instruction })) {
      if (told.has(id)) continue;
      const served = where.and(presentBuilds(family, procedure.space, id));
      const { held } = heldValues(family.part(id)?.hand, procedure.space, served);
      if (reportClaim(ctx, family, id, claim, prose.scalar, held, served, procedure.space)) told.add(id);
    }
  }
}

/** Reports words that do not hold on some of the builds that they speak of; says whether there were such builds. */
function reportClaim(
  ctx: Context,
  family: FamilyView,
  id: string,
  claim: HandClaim,
  scalar: ScalarNode,
  hands: readonly HeldHand[],
  served: BuildSet,
  space: BuildSpace,
): boolean {
  const hand = otherHand(claim.hand);
  const wrong = hands.filter(({ value }) => value.value === hand);
  const [first] = wrong;
  if (first === undefined) return false;
  const range = sourceRange(scalar, claim.start, claim.end);
  const name = family.nameOf(id);
  const where = space.union(wrong.map((one) => one.where));
  ctx.report(range, 'words', [scalar.text.slice(claim.start, claim.end), name, hand], {
    about: [id],
    ...whereUnless(where, served, space),
    related: [
      { range: first.value.node, document: family.document, message: `The hand of the ${name} is ${hand} here` },
    ],
    fixes: () =>
      // Words that are right on other builds would only be wrong there instead.
      claim.turnedRound === undefined || !where.equals(served)
        ? []
        : [{ title: `Write ${claim.turnedRound}`, edits: [{ range, text: claim.turnedRound }] }],
  });
  return true;
}

function textOf(said: Prose | Text): ScalarNode {
  return 'scalar' in said ? said.scalar : said.node;
}

function writeHand({ node }: Choice<Hand>, hand: Hand): FixDraft {
  return { title: `Write ${hand}`, edits: [writeScalar(node, hand)] };
}

/** Takes the mark out of the designation, with what joins it on. */
function unmark({ node, text }: Text): FixDraft[] {
  const mark = /[\s-]*\b(?:LH|RH)\b/i.exec(text);
  if (mark === null || mark.index === 0) return [];
  const range = sourceRange(node, mark.index, mark.index + mark[0].length);
  return [{ title: `Take ${mark[0].trim()} out of the designation`, edits: [{ range, text: '' }] }];
}
