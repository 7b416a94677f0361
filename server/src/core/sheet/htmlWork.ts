import { fateLabel } from './filledLabels';
import { conditionHtml, el, escapeHtml, type Html, type HtmlContext, join, section, table, tickBox } from './htmlText';
import { fillLabel, type Labels } from './labels';
import type {
  Condition,
  FateGroup,
  FateLine,
  LooseEnd,
  LooseNeed,
  SingleSetting,
  StepPlace,
  TemporaryLine,
} from './sheet';

/** What is in place and not tight as a phase ends: for the shift that goes on. */
export function looseEndsHtml(ends: readonly LooseEnd[], phase: number, { labels }: HtmlContext): Html | undefined {
  if (ends.length === 0) return undefined;
  const rows = ends.map((end) => [
    withCondition(escapeHtml(end.what), end.condition, labels),
    needHtml(end.need, labels),
    end.at.length === 0 ? escapeHtml(labels.noLaterStep) : placesHtml(end.at),
  ]);
  const title = fillLabel(labels.looseEnds, { number: phase });
  return el(
    'div',
    { class: 'loose-ends', role: 'group', 'aria-label': title },
    el('p', {}, el('strong', {}, escapeHtml(`${title}. `)), escapeHtml(labels.looseEndsNote)),
    table('loose-list', [labels.fastener, labels.stillNeeds, labels.step], rows),
  );
}

function needHtml(need: LooseNeed, labels: Labels): Html | Html[] {
  if (need.kind === 'seat') return escapeHtml(labels.toBeSeated);
  if (need.kind === 'off') return escapeHtml(labels.comesOffAgain);
  const { setting } = need;
  if (setting.kind !== 'byOutcome') return torqueLine(setting, labels);
  return setting.branches.map((branch) =>
    el('p', {}, escapeHtml(`${branch.condition}: `), ...torqueLine(branch.setting, labels)),
  );
}

function torqueLine(setting: SingleSetting, labels: Labels): Html[] {
  if (setting.kind === 'blank') return [el('strong', {}, escapeHtml(labels.torqueBlank))];
  const { primary, secondary, angle } = setting.value;
  return [
    el('strong', { class: 'quantity' }, escapeHtml(primary)),
    ...(secondary === undefined
      ? []
      : [escapeHtml(' '), el('span', { class: 'quantity' }, escapeHtml(`(${secondary})`))]),
    ...(angle === undefined ? [] : [escapeHtml(`, ${labels.thenTurn} `), el('strong', {}, escapeHtml(angle))]),
  ];
}

/** The boxes of more pieces than this would be miscounted; the number is then written down. */
const MOST_BOXES = 12;

export function temporariesHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.temporaries.length === 0) return undefined;
  const rows = sheet.temporaries.map((line) => [
    withCondition(escapeHtml(line.part), line.condition, labels),
    [el('strong', {}, escapeHtml(String(line.count)))],
    placesHtml(line.in),
    boxesHtml(line, labels),
    line.out.length === 0 ? escapeHtml(labels.noLaterStep) : placesHtml(line.out),
  ]);
  const heads = [labels.part, labels.wentIn, labels.step, labels.cameOut, labels.step];
  return section('temporaries', labels.temporaries, table('temporary-list', heads, rows));
}

function boxesHtml({ part, count }: TemporaryLine, labels: Labels): Html {
  if (count > MOST_BOXES) {
    const of = escapeHtml(fillLabel(labels.cameOutOf, { count }));
    return el('span', { class: 'boxes' }, el('span', { class: 'blank' }), of);
  }
  const boxes = Array.from({ length: count }, (_, index) => tickBox(`${part} ${index + 1}`));
  return el('span', { class: 'boxes' }, ...boxes);
}

export function fatesHtml({ sheet, labels }: HtmlContext): Html | undefined {
  if (sheet.fates.length === 0) return undefined;
  const rows = sheet.fates.map((group) => [
    el('strong', {}, escapeHtml(fateLabel(labels, group.kind))),
    fateHtml(group, labels),
  ]);
  return section('fates', labels.fates, table('fate-list', [labels.fate, labels.part], rows));
}

/** Parts of which there is no more to say stand together in one line. */
function fateHtml({ lines }: FateGroup, labels: Labels): Html[] {
  const plain = lines.filter(isPlain).map((line) => line.part);
  const together = plain.length === 0 ? [] : [el('p', {}, escapeHtml(plain.join(', ')))];
  return [...together, ...lines.filter((line) => !isPlain(line)).map((line) => fateLineHtml(line, labels))];
}

function isPlain({ condition, to, at }: FateLine): boolean {
  return condition === undefined && to === undefined && at.length === 0;
}

function fateLineHtml({ part, condition, to, at }: FateLine, labels: Labels): Html {
  const words = to === undefined ? part : fillLabel(labels.fateTo, { part, to });
  const links = at.map(({ step, stepId }) =>
    el('a', { href: `#step-${stepId}` }, escapeHtml(fillLabel(labels.usedAtOne, { steps: step }))),
  );
  const line = join(
    [escapeHtml(words), ...links].flatMap((piece, place) => (place === 0 ? [piece] : [escapeHtml(' · '), piece])),
  );
  return el('div', {}, el('p', {}, line), conditionHtml(condition, labels));
}

function withCondition(words: Html, condition: Condition | undefined, labels: Labels): Html[] {
  const said = conditionHtml(condition, labels);
  return said === undefined ? [words] : [words, said];
}

function placesHtml(places: readonly StepPlace[]): Html {
  const links = places.map(({ step, stepId }) => el('a', { href: `#step-${stepId}` }, escapeHtml(String(step))));
  return join(links.flatMap((link, at) => (at === 0 ? [link] : [escapeHtml(', '), link])));
}
