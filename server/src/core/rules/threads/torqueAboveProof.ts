import { usualFriction, weakestPart } from '../../standards/torqueBand';
import { torqueReaching } from '../../standards/torqueTension';
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
  slip: (written: string, does: string, thread: string, name: string, units: string) =>
    `The torque ${written} would ${does} the ${thread} thread of the ${name}; in ${units} it would be right`,
  above: (written: string, does: string, thread: string, name: string, ofClass: string, proof: string) =>
    `The torque ${written} would ${does} the ${thread} thread of the ${name}: with ${ofClass} the proof load is reached at ${proof}, even dry; correct the torque, the thread or the class`,
};

const IN_NEWTON_METRES =
  'parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, property-class: 8, torque: 40 ± 3 N·m }';

export const torqueAboveProof = defineRule({
  id: 'torque-above-proof',
  group: 'threads',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A torque stretches the weakest part of the joint beyond its proof load, even where dry threads take most of the torque.',
    why: 'The thread yields or breaks while the wrench has not clicked yet.',
    wrong: inFamily(IN_NEWTON_METRES),
    right: inFamily(IN_NEWTON_METRES.replace('N·m', 'lbf·in')),
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
  if (family === undefined || place !== 'above-proof') return;
  const { written, thread, name, units, unit, ofClass } = wordsOf(found);
  const range = torqueRange(found);
  const details = detailsOf(found, family, ctx.procedure === undefined);
  const does = wouldBreak(found) ? 'burst' : 'overstretch';
  if (units !== '') ctx.report(range, 'slip', [written, does, thread, name, units], details);
  else if (unit !== undefined) {
    ctx.report(range, 'above', [written, does, thread, name, ofClass, roughBoth(band.proof.torque, unit)], details);
  }
}

/** Whether the torque reaches the breaking load of the weakest part even with dry threads; without a class nobody can tell. */
function wouldBreak({ joint: { joint }, judgement }: ImplausibleTorque): boolean {
  const weakest = joint && weakestPart(joint);
  if (joint === undefined || weakest === undefined) return false;
  const { thread, face, friction } = joint;
  const stated = friction.kind === 'stated' ? friction : { thread: usualFriction.dry, face: usualFriction.dry };
  const tightening = { thread, face, threadFriction: stated.thread, faceFriction: stated.face };
  return judgement.torque > torqueReaching('tensile', weakest.strength, tightening).value;
}
