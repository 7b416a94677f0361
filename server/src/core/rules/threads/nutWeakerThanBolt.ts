import { whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { BuildSet } from '../../builds';
import {
  formatPropertyClass,
  nutIsStrongEnough,
  type PropertyClass,
  readPropertyClass,
} from '../../standards/propertyClasses';
import { type JointMember, jointsOf } from '../../workings/joint';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft } from '../ruleContext';
import { writeScalar } from '../support/mapKey';

const SOFT_NUT = `parts:
  long-stud: { name: long stud, kind: stud, sits-on: core, thread: M8×1.25, hand: right, property-class: 10.9 }
  stud-nut: { name: stud nut, kind: nut, sits-on: core, mates-with: long-stud, thread: M8×1.25, hand: right, property-class: 8, torque: 20 ± 2 N·m }`;

export const nutWeakerThanBolt = defineRule({
  id: 'nut-weaker-than-bolt',
  group: 'threads',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'The property class of a nut is below the one that the class of its bolt calls for (ISO 898-2).',
    why: 'The thread of the nut strips before the bolt is tight, which cannot be seen from outside.',
    wrong: inFamily(SOFT_NUT),
    right: inFamily(SOFT_NUT.replace('property-class: 8,', 'property-class: 10,')),
  },
  messages: {
    weaker: (nut: string, ofNut: string, bolt: string, ofBolt: string, needed: string) =>
      `The ${nut} of class ${ofNut} is weaker than the ${bolt} of class ${ofBolt} that it is screwed to; a bolt of class ${ofBolt} needs a nut of class ${needed}`,
  },
  check: {
    part({ id }, ctx) {
      const { family } = ctx;
      if (family === undefined) return;
      const { space } = family;
      for (const { nut, bolt, where } of weakNuts(jointsOf(family, space, id.id))) {
        const needed = neededClass(bolt.propertyClass);
        const { written } = nut;
        if (written === undefined || bolt.written === undefined) continue;
        const texts = [
          nut.name,
          formatPropertyClass(nut.propertyClass),
          bolt.name,
          formatPropertyClass(bolt.propertyClass),
        ] as const;
        ctx.report(written.node, 'weaker', [...texts, needed === undefined ? 'that matches' : `${needed} or higher`], {
          about: [nut.id, bolt.id],
          ...whereUnless(where, presentBuilds(family, space, nut.id), space),
          related: [{ range: bolt.written.node, message: `The class of the ${bolt.name} is stated here` }],
          fixes: () => writeClass(written.node, needed),
        });
      }
    },
  },
});

type Classed = JointMember & { readonly propertyClass: PropertyClass };

interface WeakNut {
  readonly nut: Classed;
  readonly bolt: Classed;
  readonly where: BuildSet;
}

/** The pairs of a nut and its bolts that do not match, each once with all its builds; told at the nut. */
function weakNuts(joints: ReturnType<typeof jointsOf>): WeakNut[] {
  const pairs = new Map<string, WeakNut>();
  for (const { members, where } of joints) {
    const [nut, ...mates] = members.filter(isClassed);
    if (nut?.role !== 'nut' || nut !== members[0]) continue;
    for (const bolt of mates) {
      if (bolt.role !== 'bolt' || nutIsStrongEnough(nut.propertyClass, bolt.propertyClass) !== false) continue;
      const key = `${bolt.id} ${nut.written?.node.from} ${bolt.written?.node.from}`;
      pairs.set(key, { nut, bolt, where: pairs.get(key)?.where.or(where) ?? where });
    }
  }
  return [...pairs.values()];
}

function isClassed(member: JointMember): member is Classed {
  return member.propertyClass !== undefined;
}

/** The lowest class of ISO 898-2 that the bolt may be paired with. */
function neededClass(bolt: PropertyClass): string | undefined {
  return ['5', '6', '8', '9', '10', '12'].find((name) => {
    const nut = readPropertyClass(name);
    return nut !== undefined && nutIsStrongEnough(nut, bolt) === true;
  });
}

function writeClass(node: Parameters<typeof writeScalar>[0], needed: string | undefined): FixDraft[] {
  return needed === undefined ? [] : [{ title: `Write ${needed}`, edits: [writeScalar(node, needed)] }];
}
