import type { Part } from '../../model/generated/types';
import { type Text, valuesOf } from '../../model/values';
import {
  formatPropertyClass,
  nutIsStrongEnough,
  type PropertyClass,
  readPropertyClass,
} from '../../standards/propertyClasses';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { writeScalar } from '../support/mapKey';

const BOLT_CLASS =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, property-class: 8.8, torque: 4.6 ± 0.3 N·m }';

export const propertyClassWrong = defineRule({
  id: 'property-class-wrong',
  group: 'threads',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A property class is written as no standard writes it, or a nut has the class of a bolt or a bolt that of a nut (ISO 898-1, ISO 898-2).',
    why: 'What is ordered by it is another fastener, or none, and the torque is judged by the wrong strength.',
    wrong: inFamily(BOLT_CLASS),
    right: inFamily(BOLT_CLASS.replace('8.8', '8')),
  },
  messages: {
    spelling: (written: string, name: string, meant: string) =>
      `The property class ${written} of the ${name} is not written as on the fastener; write ${meant} if that is meant`,
    boltOnNut: (written: string, name: string) =>
      `The ${name} is a nut, and ${written} is a class of bolts; a nut is marked with one number`,
    nutOnBolt: (written: string, name: string) =>
      `The ${name} is no nut, and ${written} is a class of nuts; a bolt is marked with two numbers and a point between them`,
  },
  check: {
    part({ id, value }, ctx) {
      const name = value.name?.text ?? id.id;
      for (const text of valuesOf(value.propertyClass)) {
        const told = judge(text, value);
        if (told === undefined) continue;
        const details = {
          about: [id.id],
          fixes: () => told.meant.map((one) => ({ title: `Write ${one}`, edits: [writeScalar(text.node, one)] })),
        };
        const written = text.text.trim();
        if (told.key === 'spelling') ctx.report(text.node, 'spelling', [written, name, told.meant[0] ?? ''], details);
        else ctx.report(text.node, told.key, [written, name], details);
      }
    },
  },
});

interface Told {
  readonly key: 'spelling' | 'boltOnNut' | 'nutOnBolt';
  readonly meant: readonly string[];
}

const boltKinds: ReadonlySet<string> = new Set(['bolt', 'screw', 'stud']);

function judge({ text }: Text, { kind }: Part): Told | undefined {
  const written = text.trim();
  const known = readPropertyClass(written);
  if (known === undefined) {
    // What resembles no class may be a material, which only its maker can judge.
    const meant = respelled(written);
    return meant === undefined ? undefined : { key: 'spelling', meant: [meant] };
  }
  if (kind?.value === 'nut' && known.system === 'ISO 898-1') return { key: 'boltOnNut', meant: nutsFor(known) };
  if (boltKinds.has(kind?.value ?? '') && known.system === 'ISO 898-2') {
    return { key: 'nutOnBolt', meant: boltsFor(known) };
  }
  return undefined;
}

/** A class with a decimal comma, a word before it or its point lost: `8,8`, `class 10.9`, `88`, `A270`. */
function respelled(written: string): string | undefined {
  const bare = written.replace(/^(?:property\s+)?(?:class|cl\.?|grade|ISO 898-[12])\s*/i, '').replace(/[,/\s]+/g, '.');
  const pointed = /^(?:[45689]|1[02])[689]$/.test(bare) ? `${bare.slice(0, -1)}.${bare.slice(-1)}` : bare;
  const found = [bare, pointed].map(readPropertyClass).find((one) => one !== undefined);
  const meant = found && formatPropertyClass(found);
  return meant === written ? undefined : meant;
}

const nutClasses = ['5', '6', '8', '9', '10', '12'];
const boltClasses = ['5.8', '6.8', '8.8', '9.8', '10.9', '12.9'];

/** The lowest nut class for a bolt. */
function nutsFor(bolt: PropertyClass): string[] {
  const first = nutClasses.find((name) => pairs(name, bolt));
  return first === undefined ? [] : [first];
}

/** The strongest bolt class for a nut. */
function boltsFor(nut: PropertyClass): string[] {
  const place = nutClasses.indexOf(formatPropertyClass(nut));
  return boltClasses.slice(place, place + 1).filter(() => place >= 0);
}

function pairs(nutName: string, bolt: PropertyClass): boolean {
  const nut = readPropertyClass(nutName);
  return nut !== undefined && nutIsStrongEnough(nut, bolt) === true;
}
