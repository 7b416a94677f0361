import type { ProcedureView } from '../../analysis/procedureView';
import { type Overheated, overheated } from '../../workings/fitHeatLimits';
import { ambient } from '../../workings/fitNeeds';
import { temperatureText, unitOfTemperature } from '../../workings/fitTemperature';
import type { Working } from '../../workings/working';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import type { RuleContext } from '../ruleContext';
import { walkedWhere } from '../support/walkedWhere';

const FAMILY = 'parts:\n  wheel: { name: wheel, sits-on: core, before-fitting: [heat], max-temperature: 150 °C }';

interface Words {
  /** The part that is heated. */
  readonly hot: string;
  /** What does not stand it, and where that is. */
  readonly other: string;
  readonly reaches: string;
  readonly stands: string;
}

const messages = {
  itself: ({ hot, reaches, stands }: Words) =>
    `The ${hot} is heated to ${reaches}, and stands ${stands} at most; lower the temperature`,
  near: ({ hot, other, reaches, stands }: Words) =>
    `The ${hot} is heated to ${reaches} with ${other}, which stands ${stands} at most; heat it without, or lower the temperature`,
  open: ({ hot, other, stands }: Words) =>
    `How hot the ${hot} may get is not stated, and ${other} stands ${stands} at most; write a range or a tolerance`,
};

export const heatTooHigh = defineRule({
  id: 'heat-too-high',
  group: 'limits',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part is heated above the highest temperature that it, a seal or another part in place on it, or a consumable that was put on it stands; or no highest temperature is named for one that has such a limit.',
    why: 'An aluminium wheel loses its strength and bursts at speed; seals harden, and threadlocker lets go. None of it can be seen.',
    wrong: withFamily(inStep('- heat: wheel\n  until: 180 ± 10 °C'), FAMILY),
    right: withFamily(inStep('- heat: wheel\n  until: 110 ± 10 °C'), FAMILY),
  },
  messages,
  check: {
    procedure(procedure, ctx) {
      for (const one of overheated(procedure)) report(procedure, one, ctx.at(one.source.step));
    },
  },
});

function report(procedure: ProcedureView, one: Overheated, ctx: RuleContext<typeof messages>): void {
  const { source, warmed, stated, document, at } = one;
  const words = wordsOf(procedure, one);
  const own = warmed.is === 'part' && warmed.id === source.part;
  const related = at === undefined ? [] : [{ range: at.range, message: 'They come together here' }];
  ctx.report(source.until.node, one.reaches === undefined ? 'open' : own ? 'itself' : 'near', [words], {
    about: own ? [source.part] : [source.part, warmed.id],
    ...walkedWhere(procedure, one.where, source.served),
    related: [...related, { range: stated.node, document, message: `${words.stands} is stated here` }],
    working: () => [workingOf(words, one)],
  });
}

function wordsOf(procedure: ProcedureView, { source, warmed, reaches, stated }: Overheated): Words {
  const name = (id: string): string => procedure.family?.nameOf(id) ?? id;
  const unit = unitOfTemperature(source.until.reading.quantity);
  const consumable = procedure.consumables.get(warmed.id)?.entry.value.name?.text ?? warmed.id;
  const other = warmed.is === 'part' ? `the ${name(warmed.id)}` : `the ${consumable} on the ${name(warmed.on)}`;
  const reached = reaches === undefined ? source.until.text.trim() : temperatureText(reaches, unit, 'up');
  return { hot: name(source.part), other, reaches: reached, stands: stated.text.trim() };
}

function workingOf({ hot, other, stands, reaches }: Words, { source }: Overheated): Working {
  return {
    title: `Heat of the ${hot}`,
    builds: '',
    rows: [
      { label: `the ${hot} is heated to`, text: source.until.text.trim() },
      { label: 'as hot as', text: reaches },
      { label: `${other} stands at most`, text: stands },
      { label: 'assumed', text: `what is in place on a heated part gets as hot as it, from ${ambient} °C` },
    ],
    steps: [],
    missing: [],
    sources: [],
  };
}
