import { conditionHtml, el, escapeHtml, type Html, ownMarkup } from './htmlText';
import { fillLabel, type Labels, turnLabel } from './labels';
import type { Turn, TurnLine } from './sheet';
import { turnSymbol } from './symbols';

/**
 * The arrow and the words together: the arrow is seen first, the words settle it. A left-hand thread is what goes wrong,
 * so its word stands in a frame turned to white on black.
 */
export function turnHtml(turn: Turn | undefined, labels: Labels): Html {
  if (turn === undefined) return el('p', { class: 'turn' }, turnWords(turn, labels));
  const symbol = el('span', { class: 'symbol', 'aria-hidden': 'true' }, ownMarkup(turnSymbol(turn.direction)));
  return el('p', { class: 'turn' }, symbol, el('span', {}, ...loudWords(turn, labels)));
}

function loudWords(turn: Turn, labels: Labels): Html[] {
  if (turn.hand === 'right') return [turnWords(turn, labels)];
  const direction = turn.direction === 'clockwise' ? labels.clockwise : labels.counterClockwise;
  return [
    el('strong', { class: 'unbroken' }, escapeHtml(fillLabel(labels.turnOnly, { direction }))),
    escapeHtml(' '),
    el('strong', { class: 'left-hand' }, escapeHtml(labels.leftHandLoud)),
  ];
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

/** Which way to turn at a loosening, and within a torque for each hand that may be found. */
export function turnLinesHtml(lines: readonly TurnLine[] | undefined, labels: Labels): Html | undefined {
  if (lines === undefined) return undefined;
  return el('div', { class: 'turning' }, ...lines.map((line) => turnLineHtml(line, labels)));
}

function turnLineHtml({ fastener, condition, turn }: TurnLine, labels: Labels): Html {
  return el(
    'div',
    { class: 'turn-line' },
    condition === undefined ? undefined : conditionHtml({ kind: 'outcome', text: condition }, labels),
    fastener === undefined ? undefined : el('span', { class: 'turned' }, escapeHtml(fastener)),
    turnHtml(turn, labels),
  );
}
