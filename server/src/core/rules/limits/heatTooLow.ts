import type { FamilyView } from '../../analysis/familyView';
import { heldValues } from '../../analysis/heldValues';
import type { ProcedureView } from '../../analysis/procedureView';
import { boundsOf } from '../../quantity';
import { type FittingJudgement, fittingJudgements, judgementWorking } from '../../workings/fitJudgement';
import { ambient } from '../../workings/fitNeeds';
import { temperatureText, unitOfTemperature } from '../../workings/fitTemperature';
import { lengthText } from '../../workings/limitText';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { walkedWhere } from '../support/walkedWhere';

const FAMILY = `parts:
  hub: { name: hub, kind: wheel, sits-on: core, before-fitting: [heat], expansion: 22.9, fit: { with: core, bore: hub-bore, shaft: core-nose, clearance: 0.005 mm } }
dimensions:
  hub-bore: 20.000..20.010 mm
  core-nose: 20.020..20.030 mm`;

const step = (temperature: string): string =>
  `- remove: hub\n- clean: hub\n- heat: hub\n  until: ${temperature}\n- install: hub`;

interface Words {
  readonly part: string;
  readonly reached: string;
  readonly needed: string;
  readonly tight: string;
  readonly clearance: string;
}

const messages = {
  heat: (words: Words) => `${hotNeed(words)}; heat it further`,
  above: (words: Words, limit: string) =>
    `${hotNeed(words)}; that is above its highest temperature of ${limit}, so cool the other part as well, or press it`,
  cool: ({ part, reached, needed, tight, clearance }: Words) =>
    `The ${part} is as warm as ${reached} when it is fitted, and needs ${needed} to go together: ${tight} of interference and ${clearance}, from ${ambient} °C; cool it further`,
};

function hotNeed({ part, reached, needed, tight, clearance }: Words): string {
  return `The ${part} is as cool as ${reached} when it is fitted, and needs ${needed} to go together: ${tight} of interference and ${clearance}, from ${ambient} °C`;
}

export const heatTooLow = defineRule({
  id: 'heat-too-low',
  group: 'limits',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part is fitted hot or cold, and the temperature is not enough for the tightest case of its fit and the clearance that is wanted. The surroundings are taken to be at 20 °C.',
    why: 'The part stops half-way, seizes on the shaft as it evens out, and has to be cut off.',
    wrong: withFamily(inStep(step('70 ± 5 °C')), FAMILY),
    right: withFamily(inStep(step('105 ± 5 °C')), FAMILY),
  },
  messages,
  check: {
    procedure(procedure, ctx) {
      const { family } = procedure;
      if (family === undefined) return;
      for (const one of fittingJudgements(procedure)) {
        if (!one.enough) report(procedure, family, one, ctx.at(one.source.step));
      }
    },
  },
});

function report(
  procedure: ProcedureView,
  family: FamilyView,
  one: FittingJudgement,
  ctx: RuleContext<typeof messages>,
): void {
  const { source, where, fit, fitted } = one;
  const words = wordsOf(family, one);
  if (words === undefined) return;
  const details = {
    about: [
      source.part,
      ...[fit.part, fit.other].flatMap((id) => (id === undefined || id === source.part ? [] : [id])),
    ],
    ...walkedWhere(procedure, where, source.served),
    related: [{ range: fitted.range, message: `The ${family.nameOf(fitted.id)} is fitted here` }],
    working: () => [judgementWorking(family, one)],
  };
  const limit = limitBelow(procedure, family, one);
  if (source.is === 'cold') ctx.report(source.until.node, 'cool', [words], details);
  else if (limit === undefined) ctx.report(source.until.node, 'heat', [words], details);
  else ctx.report(source.until.node, 'above', [words, limit], details);
}

function wordsOf(family: FamilyView, { source, need, reached, fit }: FittingJudgement): Words | undefined {
  if (!need.known) return undefined;
  const unit = unitOfTemperature(source.until.reading.quantity);
  const { interference, temperature } = need.needed;
  return {
    part: family.nameOf(source.part),
    reached: temperatureText(reached, unit, source.is === 'hot' ? 'down' : 'up'),
    needed: temperatureText(temperature, unit, source.is === 'hot' ? 'up' : 'down'),
    tight: `up to ${lengthText(Math.max(0, interference), fit.unit)}`,
    clearance: fit.clearance > 0 ? `${lengthText(fit.clearance, fit.unit)} of clearance` : 'no clearance at all',
  };
}

/** What the heated part stands, where that is less than what the fit needs. */
function limitBelow(
  { space }: ProcedureView,
  family: FamilyView,
  { source, need, where }: FittingJudgement,
): string | undefined {
  if (!need.known) return undefined;
  const { held } = heldValues(family.part(source.part)?.maxTemperature, space, where);
  return held.flatMap(({ value }) => {
    const { quantity } = value.reading;
    const below = quantity?.dimension === 'temperature' && boundsOf(quantity).nominal < need.needed.temperature;
    return below ? [value.text.trim()] : [];
  })[0];
}
