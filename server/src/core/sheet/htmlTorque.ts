import { gridHtml } from './htmlGrid';
import { conditionHtml, el, escapeHtml, type Html, type HtmlContext } from './htmlText';
import { turnHtml, turnLinesHtml } from './htmlTurns';
import { fillLabel, type Labels } from './labels';
import type { SingleSetting, TorqueCallout, TorqueValue } from './sheet';

/** The call-out of one tightening: what a fitter must see from arm's length. */
export function torqueHtml(torque: TorqueCallout, context: HtmlContext): Html {
  const { labels } = context;
  return el(
    'div',
    { class: 'torque', role: 'group', 'aria-label': `${labels.torque}: ${torque.fastener}` },
    el('p', { class: 'fastener' }, escapeHtml(torque.fastener)),
    ...settingHtml(torque, labels),
    torque.grid && gridHtml(torque.grid, context),
    // The boxes stand in the order already.
    torque.inOrder === undefined || torque.grid?.bands[0]?.kind === 'ordered'
      ? undefined
      : el('p', {}, el('strong', {}, escapeHtml(torque.inOrder))),
    torque.hold === undefined ? undefined : el('p', { class: 'hold' }, el('strong', {}, escapeHtml(torque.hold))),
    torque.tools.length === 0
      ? undefined
      : el('p', { class: 'with' }, escapeHtml(`${labels.toolsUsed}: ${torque.tools.join(', ')}`)),
  );
}

function settingHtml({ setting, found }: TorqueCallout, labels: Labels): (Html | undefined)[] {
  if (setting.kind !== 'byOutcome') return [singleHtml(setting, labels)];
  const [first] = setting.branches;
  if (found !== undefined && first !== undefined)
    return [el('div', { class: 'setting' }, valuesHtml(first.setting, labels)), turnLinesHtml(found, labels)];
  return setting.branches.map((branch) =>
    el(
      'div',
      { class: 'branch' },
      conditionHtml({ kind: 'outcome', text: branch.condition }, labels),
      singleHtml(branch.setting, labels),
    ),
  );
}

function singleHtml(setting: SingleSetting, labels: Labels): Html {
  const turn = setting.kind === 'one' ? setting.value.turn : setting.turn;
  return el('div', { class: 'setting' }, valuesHtml(setting, labels), turnHtml(turn, labels));
}

function valuesHtml(setting: SingleSetting, labels: Labels): Html {
  if (setting.kind === 'one') return el('div', { class: 'values' }, ...valueHtml(setting.value, labels));
  const blank = el('p', { class: 'value' }, el('span', { class: 'blank long' }));
  return el('div', { class: 'values' }, blank, el('p', {}, el('strong', {}, escapeHtml(labels.torqueBlank))));
}

/** The passes one below the other, as they are done. */
function valueHtml(value: TorqueValue, labels: Labels): Html[] {
  const passes = value.passes.map((pass, index) =>
    passHtml(fillLabel(labels.pass, { number: index + 1 }), pass.primary, pass.secondary),
  );
  const name = passes.length === 0 ? undefined : el('span', { class: 'pass-name' }, escapeHtml(labels.finalPass));
  const angle =
    value.angle === undefined
      ? undefined
      : el('strong', { class: 'angle' }, escapeHtml(`${labels.thenTurn} ${value.angle}`));
  const primary = el('strong', {}, escapeHtml(value.primary));
  return [...passes, el('p', { class: 'value' }, name, primary, secondHtml(value.secondary), angle)];
}

function passHtml(name: string, primary: string, secondary: string | undefined): Html {
  return el(
    'p',
    { class: 'pass' },
    el('span', { class: 'pass-name' }, escapeHtml(name)),
    el('strong', {}, escapeHtml(primary)),
    secondHtml(secondary),
  );
}

function secondHtml(secondary: string | undefined): Html | undefined {
  return secondary === undefined ? undefined : el('span', { class: 'secondary' }, escapeHtml(`(${secondary})`));
}
