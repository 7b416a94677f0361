import { conditionHtml, el, escapeHtml, type Html, type HtmlContext, ownMarkup } from './htmlText';
import { fillLabel, type Labels, turnLabel } from './labels';
import type { SingleSetting, TorqueCallout, TorqueValue, Turn } from './sheet';
import { turnSymbol } from './symbols';

/** The call-out of one tightening: what a fitter must see from arm's length. */
export function torqueHtml(torque: TorqueCallout, context: HtmlContext): Html {
  const { labels } = context;
  return el(
    'div',
    { class: 'torque', role: 'group', 'aria-label': `${labels.torque}: ${torque.fastener}` },
    el('p', { class: 'fastener' }, escapeHtml(torque.fastener)),
    ...settingHtml(torque, labels),
    torque.hold === undefined ? undefined : el('p', { class: 'hold' }, el('strong', {}, escapeHtml(torque.hold))),
    torque.inOrder === undefined ? undefined : el('p', {}, escapeHtml(torque.inOrder)),
    torque.tools.length === 0
      ? undefined
      : el('p', { class: 'with' }, escapeHtml(`${labels.toolsUsed}: ${torque.tools.join(', ')}`)),
  );
}

function settingHtml({ setting }: TorqueCallout, labels: Labels): Html[] {
  if (setting.kind !== 'byOutcome') return [singleHtml(setting, labels)];
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
  if (setting.kind === 'one') return valueHtml(setting.value, labels);
  const blank = el('p', { class: 'value' }, el('span', { class: 'blank long' }));
  const ask = el('p', {}, el('strong', {}, escapeHtml(labels.torqueBlank)));
  return el('div', { class: 'setting' }, el('div', { class: 'values' }, blank, ask), turnHtml(setting.turn, labels));
}

function valueHtml(value: TorqueValue, labels: Labels): Html {
  const passes = value.passes.map((pass, index) =>
    passHtml(fillLabel(labels.pass, { number: index + 1 }), pass.primary, pass.secondary),
  );
  const name = passes.length === 0 ? undefined : el('span', { class: 'pass-name' }, escapeHtml(labels.finalPass));
  const angle =
    value.angle === undefined
      ? undefined
      : el('strong', { class: 'angle' }, escapeHtml(`${labels.thenTurn} ${value.angle}`));
  const final = el(
    'p',
    { class: 'value' },
    name,
    el('strong', {}, escapeHtml(value.primary)),
    secondHtml(value.secondary),
    angle,
  );
  return el(
    'div',
    { class: 'setting' },
    el('div', { class: 'values' }, ...passes, final),
    turnHtml(value.turn, labels),
  );
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

/** The arrow and the words together: the arrow is seen first, the words settle it. */
function turnHtml(turn: Turn | undefined, labels: Labels): Html {
  if (turn === undefined) return el('p', { class: 'turn' }, turnWords(turn, labels));
  return el(
    'p',
    { class: 'turn' },
    el('span', { class: 'symbol', 'aria-hidden': 'true' }, ownMarkup(turnSymbol(turn.direction))),
    turnWords(turn, labels),
  );
}

/** Which way to turn in words alone, for a table. */
export function turnWords(turn: Turn | undefined, labels: Labels): Html {
  if (turn === undefined) return el('strong', {}, escapeHtml(labels.handUnknown));
  return el('strong', {}, ...unbrokenParts(turnLabel(labels, turn.direction, turn.hand)));
}

// The line may break before the bracket only, never at the hyphen of a direction or a hand.
function unbrokenParts(label: string): Html[] {
  return label.split(/ (?=\()/u).flatMap((part, index) => {
    const span = el('span', { class: 'unbroken' }, escapeHtml(part));
    return index === 0 ? [span] : [escapeHtml(' '), span];
  });
}
