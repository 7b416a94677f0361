import type { FamilyView } from '../../analysis/familyView';
import { type HeldValue, heldValues, meetings, whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { BuildSet, BuildSpace } from '../../builds';
import type { Text } from '../../model/values';
import { readThreadDesignation, type ThreadDesignation, threadDifferences } from '../../standards/threadDesignation';
import { threadWorking } from '../../workings/threadWorking';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { writeScalar } from '../support/mapKey';
import { listed } from '../support/phrases';

const messages = {
  size: (thread: string, name: string, other: string, mate: string, what: string) =>
    `The thread ${thread} of the ${name} cannot be screwed to the ${other} of the ${mate}: they differ in ${what}; correct whichever is wrong`,
  hand: (thread: string, name: string, hand: string, mate: string, other: string) =>
    `The thread ${thread} of the ${name} is ${hand}-hand, and that of the ${mate} that it is screwed to is ${other}-hand; correct whichever is wrong`,
};

type Context = RuleContext<typeof messages>;
type Hand = 'left' | 'right';

const FINE_ON_COARSE = `parts:
  spindle: { name: spindle, kind: shaft, sits-on: core, thread: M5×0.5 }
  cap-nut: { name: cap nut, kind: nut, sits-on: core, mates-with: spindle, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m }`;

export const threadsDiffer = defineRule({
  id: 'threads-differ',
  group: 'threads',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A part and the part that it is screwed to have threads of different diameter, pitch or hand on some build.',
    why: 'The nut does not go on, or goes on for two turns and strips.',
    wrong: inFamily(FINE_ON_COARSE),
    right: inFamily(FINE_ON_COARSE.replace('M5×0.5', 'M5×0.8')),
  },
  messages,
  check: {
    part({ id, value }, ctx) {
      const { family } = ctx;
      if (family === undefined) return;
      for (const { id: mate } of value.matesWith ?? []) {
        // Where both name each other, one of them tells it.
        const mutual = family.part(mate)?.matesWith?.some((ref) => ref.id === id.id) === true;
        if (mate !== id.id && !(mutual && mate < id.id)) compare(family, id.id, mate, ctx);
      }
    },
  },
});

/** A thread that can be read without a doubt, and what the family states of its hand. */
interface Side {
  readonly id: string;
  readonly name: string;
  readonly threads: readonly HeldValue<ReadThread>[];
  readonly served: BuildSet;
}

interface ReadThread {
  readonly text: Text;
  readonly designation: ThreadDesignation;
}

function sideOf(family: FamilyView, space: BuildSpace, id: string): Side {
  const served = presentBuilds(family, space, id);
  const { held } = heldValues(family.part(id)?.thread, space, served);
  const threads = held.flatMap(({ value, where }) => {
    const { designation, problems } = readThreadDesignation(value.text);
    return designation === undefined || problems.length > 0 ? [] : [{ value: { text: value, designation }, where }];
  });
  return { id, name: family.nameOf(id), threads, served };
}

function compare(family: FamilyView, id: string, mateId: string, ctx: Context): void {
  const { space } = family;
  const [part, mate] = [sideOf(family, space, id), sideOf(family, space, mateId)];
  for (const { first, second, where } of meetings(part.threads, mate.threads)) {
    const what = threadDifferences(first.designation, second.designation).filter((one) => one !== 'hand');
    if (what.length > 0) {
      const system = first.designation.system === second.designation.system ? [] : ['system'];
      const texts = [textOf(first), part.name, textOf(second), mate.name, listed([...system, ...what])] as const;
      ctx.report(first.text.node, 'size', [...texts], details(part, mate, second, first, where, space));
      continue;
    }
    const hands = handsOf(family, space, [part, first], [mate, second], where);
    if (hands === undefined || hands[0] === hands[1]) continue;
    ctx.report(first.text.node, 'hand', [textOf(first), part.name, hands[0], mate.name, hands[1]], {
      ...details(part, mate, second, first, where, space),
    });
  }
}

function details(part: Side, mate: Side, second: ReadThread, first: ReadThread, where: BuildSet, space: BuildSpace) {
  return {
    about: [part.id, mate.id],
    working: () => [
      threadWorking(`Threads of the ${part.name} and the ${mate.name}`, [
        { name: part.name, designation: first.designation },
        { name: mate.name, designation: second.designation },
      ]),
    ],
    ...whereUnless(where, part.served.and(mate.served), space),
    related: [{ range: second.text.node, message: `The thread of the ${mate.name} is ${textOf(second)} here` }],
    fixes: (): FixDraft[] => [
      write(first.text, textOf(second), `, as the ${mate.name} has`),
      write(second.text, textOf(first), ` at the ${mate.name}, as the ${part.name} has`),
    ],
  };
}

function textOf({ text }: ReadThread): string {
  return text.text.trim();
}

function write({ node }: Text, text: string, because: string): FixDraft {
  return { title: `Write ${text}${because}`, edits: [writeScalar(node, text)] };
}

/**
 * The two hands, as stated or else as marked; undefined where they are told elsewhere or not known. Families mostly state the
 * hand beside the designation and leave the mark out, so a missing mark means right-hand only beside a marked designation.
 */
function handsOf(
  family: FamilyView,
  space: BuildSpace,
  [part, first]: readonly [Side, ReadThread],
  [mate, second]: readonly [Side, ReadThread],
  where: BuildSet,
): readonly [Hand, Hand] | undefined {
  const [own, other] = [statedHands(family, space, part.id, where), statedHands(family, space, mate.id, where)];
  // Two stated hands that differ are a contradiction of their own.
  if (own.length > 0 && other.length > 0) return undefined;
  const hands = [handOf(own, first, isMarked(second)), handOf(other, second, isMarked(first))] as const;
  return hands[0] === undefined || hands[1] === undefined ? undefined : [hands[0], hands[1]];
}

function handOf(stated: readonly Hand[], thread: ReadThread, otherIsMarked: boolean): Hand | undefined {
  const [hand, ...more] = new Set(stated);
  if (hand !== undefined) return more.length === 0 ? hand : undefined;
  return isMarked(thread) || otherIsMarked ? thread.designation.hand : undefined;
}

function isMarked({ designation }: ReadThread): boolean {
  return designation.parts.some(({ kind }) => kind === 'hand');
}

function statedHands(family: FamilyView, space: BuildSpace, id: string, where: BuildSet): Hand[] {
  return heldValues(family.part(id)?.hand, space, where).held.flatMap(({ value }) => value.value ?? []);
}
