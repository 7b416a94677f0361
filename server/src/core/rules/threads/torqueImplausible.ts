import { roughBoth } from '../../workings/torqueUnits';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import {
  detailsOf,
  type ImplausibleTorque,
  implausibleOfInstruction,
  implausibleOfPart,
  torqueRange,
  wordsOf,
} from '../support/implausibleTorques';

const messages = {
  lowSlip: (written: string, thread: string, name: string, units: string) =>
    `The torque ${written} hardly tightens the ${thread} thread of the ${name}; in ${units} it would be right`,
  highSlip: (written: string, thread: string, name: string, units: string) =>
    `The torque ${written} is more than the ${thread} thread of the ${name} is usually given; in ${units} it would be right`,
  high: (written: string, thread: string, name: string, ofClass: string, most: string) =>
    `The torque ${written} is more than any table gives for the ${thread} thread of the ${name}: about ${most} at most for ${ofClass}; correct the torque, the thread or the class`,
};

const IN_POUND_INCHES =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, property-class: 8, torque: 4.6 lbf·in }';

export const torqueImplausible = defineRule({
  id: 'torque-implausible',
  group: 'threads',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A torque lies outside the band that thread, property class and friction allow for the weakest part of the joint, or is so low that only another unit explains it.',
    why: 'The number is right and the unit is not, more often than not; the fastener is left loose, or stretched.',
    wrong: inFamily(IN_POUND_INCHES),
    right: inFamily(IN_POUND_INCHES.replace('lbf·in', 'N·m')),
  },
  messages,
  check: {
    part({ id }, ctx) {
      const { family } = ctx;
      if (family === undefined) return;
      for (const found of implausibleOfPart(family, id.id)) report(found, ctx);
    },
    instruction(view, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined) return;
      for (const found of implausibleOfInstruction(procedure, view)) report(found, ctx);
    },
  },
});

function report(found: ImplausibleTorque, ctx: RuleContext<typeof messages>): void {
  const { family } = ctx;
  const { place, band } = found.judgement;
  if (family === undefined || place === 'above-proof') return;
  const { written, thread, name, units, unit, ofClass } = wordsOf(found);
  const range = torqueRange(found);
  const details = detailsOf(found, family, ctx.procedure === undefined);
  if (units !== '') {
    const isLow = unit !== undefined && found.judgement.rightIn.every(({ factor }) => factor > unit.factor);
    ctx.report(range, isLow ? 'lowSlip' : 'highSlip', [written, thread, name, units], details);
  } else if (unit !== undefined) {
    ctx.report(range, 'high', [written, thread, name, ofClass, roughBoth(band.high.torque, unit)], details);
  }
}
