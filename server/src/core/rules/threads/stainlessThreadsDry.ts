import type { FamilyView } from '../../analysis/familyView';
import { whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { BuildSet } from '../../builds';
import type { Part } from '../../model/generated/types';
import { formatPropertyClass, type PropertyClass } from '../../standards/propertyClasses';
import { pairOf } from '../../syntax/node';
import { type JointMember, jointsOf } from '../../workings/joint';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft } from '../ruleContext';
import { addKey } from '../support/mapKey';

const DRY = `parts:
  long-stud: { name: long stud, kind: stud, sits-on: core, thread: M8×1.25, hand: right, property-class: A4-80 }
  stud-nut: { name: stud nut, kind: nut, sits-on: core, mates-with: long-stud, thread: M8×1.25, hand: right, property-class: A4-80, torque: 20 ± 2 N·m }`;

/** What keeps the flanks apart while they slide. */
const SLIDES: ReadonlySet<string> = new Set(['lubricate', 'threadlock']);

export const stainlessThreadsDry = defineRule({
  id: 'stainless-threads-dry',
  group: 'threads',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A stainless nut is screwed to a stainless bolt, and neither is lubricated before it is fitted.',
    why: 'Austenitic steel galls on itself: the nut seizes while it is tightened, and the torque goes into the threads and not into preload (friction of 0.3 and more, by published nut factors for dry stainless on stainless).',
    wrong: inFamily(DRY),
    right: inFamily(DRY.replace('20 ± 2 N·m }', '20 ± 2 N·m, before-fitting: [lubricate] }')),
  },
  messages: {
    dry: (name: string, ofClass: string, mate: string, ofMate: string) =>
      `The ${name} of ${ofClass} and the ${mate} of ${ofMate} are both stainless and gall when they are tightened dry; state that one of them is lubricated before it is fitted`,
  },
  check: {
    part({ id, value }, ctx) {
      const { family } = ctx;
      if (family === undefined) return;
      for (const { one, mate, where } of dryPairs(family, id.id)) {
        if (one.written === undefined || mate.written === undefined) continue;
        const classes = [formatPropertyClass(one.propertyClass), formatPropertyClass(mate.propertyClass)] as const;
        ctx.report(one.written.node, 'dry', [one.name, classes[0], mate.name, classes[1]], {
          about: [one.id, mate.id],
          ...whereUnless(where, presentBuilds(family, family.space, id.id), family.space),
          related: [{ range: mate.written.node, message: `The class of the ${mate.name} is stated here` }],
          fixes: () => lubricate(value),
        });
      }
    },
  },
});

type Classed = JointMember & { readonly propertyClass: PropertyClass };

interface DryPair {
  readonly one: Classed;
  readonly mate: Classed;
  readonly where: BuildSet;
}

/** Pairs of a nut and what it is screwed to, told at the nut, each once with all builds. */
function dryPairs(family: FamilyView, id: string): DryPair[] {
  const pairs = new Map<string, DryPair>();
  for (const { members, where } of jointsOf(family, family.space, id)) {
    const [one, ...mates] = members;
    if (one === undefined || one.role !== 'nut' || !isStainless(one) || slides(family.part(id))) continue;
    for (const mate of mates) {
      if (!isStainless(mate) || slides(family.part(mate.id))) continue;
      const key = `${mate.id} ${one.written?.node.from} ${mate.written?.node.from}`;
      pairs.set(key, { one, mate, where: pairs.get(key)?.where.or(where) ?? where });
    }
  }
  return [...pairs.values()];
}

function isStainless(member: JointMember): member is Classed {
  return member.propertyClass?.system === 'ISO 3506';
}

function slides(part: Part | undefined): boolean {
  return part?.beforeFitting?.some(({ value }) => SLIDES.has(value ?? '')) === true;
}

/** A list that stands already has to be written by hand, since what is done first is for its writer to say. */
function lubricate({ node, beforeFitting }: Part): FixDraft[] {
  if (beforeFitting !== undefined || node.kind !== 'map') return [];
  const edit = addKey(node, pairOf(node, 'torque') ?? pairOf(node, 'thread'), 'before-fitting', '[lubricate]');
  return edit === undefined ? [] : [{ title: 'Write before-fitting: [lubricate]', edits: [edit] }];
}
