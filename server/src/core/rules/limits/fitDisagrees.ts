import type { FamilyView } from '../../analysis/familyView';
import { whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { Part } from '../../model/generated/types';
import { type FitContradiction, fitContradictions, unreadableClass } from '../../workings/fitContradictions';
import { usualMethod } from '../../workings/fitNeeds';
import { fitWorking } from '../../workings/fitWorking';
import { lengthRangeText } from '../../workings/limitText';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { RuleContext } from '../ruleContext';

const family = (interference: string): string =>
  `parts:
  hub: { name: hub, sits-on: core, fit: { with: core, bore: hub-bore, shaft: core-nose, interference: ${interference} } }
dimensions:
  hub-bore: 20.000..20.010 mm
  core-nose: 20.020..20.030 mm`;

const messages = {
  interference: (name: string, stated: string, from: string) =>
    `The fit of the ${name} states ${stated} of interference, and its bore and shaft give ${from}; mend the one that is wrong`,
  class: (name: string, written: string, of: string, allowed: string, dimension: string) =>
    `The fit of the ${name} is ${written}, which allows a ${of} of ${allowed}, and ${dimension}; mend the class or the dimension`,
  sizes: (name: string, bore: string, shaft: string) =>
    `The bore of ${bore} and the shaft of ${shaft} of the ${name} are not of one size; name the right dimensions, or mend a slip of the digits or the unit`,
  unreadable: (name: string, written: string) =>
    `The class ${written} of the ${name} is no fit that can be read; write the size and both classes, as 25 H7/p6`,
};

export const fitDisagrees = defineRule({
  id: 'fit-disagrees',
  group: 'limits',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A fit whose stated interference or class (ISO 286-1) its dimensions contradict, or whose bore and shaft are not of one size.',
    why: 'The temperature for fitting is worked out from one of them, and the part is made to the other: it seizes half-way, or turns on the shaft.',
    wrong: inFamily(family('0.030..0.050 mm')),
    right: inFamily(family('0.010..0.030 mm')),
  },
  messages,
  check: {
    part({ id, value }, ctx) {
      const { family: view } = ctx;
      if (view === undefined || value.fit === undefined) return;
      const written = value.fit.class;
      if (written !== undefined && unreadableClass(written.text)) {
        ctx.report(written.node, 'unreadable', [view.nameOf(id.id), written.text], { about: [id.id] });
      }
      for (const one of fitContradictions(view, id.id)) report(view, id.id, value, one, ctx);
    },
  },
});

function report(
  view: FamilyView,
  id: string,
  part: Part,
  one: FitContradiction,
  ctx: RuleContext<typeof messages>,
): void {
  const { fit, where } = one;
  const name = view.nameOf(id);
  const details = {
    about: [id],
    ...whereUnless(where, presentBuilds(view, view.space, id), view.space),
    related: relatedOf(one),
    working: () => [fitWorking(view, fit, usualMethod(id, part))],
  };
  switch (one.is) {
    case 'interference': {
      const { leastClearance, greatestClearance } = fit.fit;
      const given = lengthRangeText(-greatestClearance, -leastClearance, fit.unit);
      ctx.report(one.stated.node, 'interference', [name, one.stated.text.trim(), given], details);
      return;
    }
    case 'class': {
      const [smallest, largest] = one.allowed;
      const allowed = lengthRangeText(smallest, largest, fit.unit);
      const dimension = `the ${one.of} is ${fit[one.of].text}`;
      ctx.report(one.stated.node, 'class', [name, one.stated.text, one.of, allowed, dimension], details);
      return;
    }
    case 'sizes':
      ctx.report(part.fit?.node ?? part.node, 'sizes', [name, fit.bore.text, fit.shaft.text], details);
  }
}

function relatedOf({ fit: { bore, shaft } }: FitContradiction) {
  return [
    ...(bore.value === undefined ? [] : [{ range: bore.value.node, message: `The bore is ${bore.text}` }]),
    ...(shaft.value === undefined ? [] : [{ range: shaft.value.node, message: `The shaft is ${shaft.text}` }]),
  ];
}
