import type { Shape } from '../model/shape';
import type { QuantityValue } from '../model/values';
import type { Node } from '../syntax/node';
import type { ChangeClass, ChangeKind } from './change';
import { DEMANDING_KEYS, keyClass, WARNING_KEYS } from './keyClasses';
import { meaningOf, type Renamed } from './meaning';
import { quantityChange } from './quantityChange';

/** What a value that became another comes to. */
export interface Judged {
  readonly class: ChangeClass;
  readonly note?: string | undefined;
}

/** Limits: what they allow may become less without harm. */
const LIMIT_KEYS: ReadonlySet<string> = new Set(['accept', 'max-temperature', 'permissible', 'force', 'max-speed']);
/** Keys whose values have an order, from what demands most to what demands least. */
const ORDERS: Readonly<Record<string, readonly string[]>> = {
  renew: ['always', 'on-condition', 'never'],
  optional: ['false', 'true'],
  'frees-when': ['off', 'loose'],
  trial: ['false', 'true'],
  'keep-position': ['true', 'false'],
};
/** Texts that a fitter acts by, so that a number or a "not" in them is more than wording. */
const ACTED_BY: ReadonlySet<string> = new Set(['say', 'check', 'amount', 'orient', 'locate', 'at', 'until', 'hold']);

/** What it comes to that a key came or went. */
export function judgeGone(def: string, key: string, kind: ChangeKind): Judged {
  const base = keyClass(def, key) ?? 'fits';
  const demands = WARNING_KEYS.has(key) || DEMANDING_KEYS.has(key) || LIMIT_KEYS.has(key);
  if (kind === 'removed') return { class: demands ? 'hurt' : base };
  return { class: (demands || key in ORDERS) && base === 'hurt' ? 'fits' : base };
}

/** What it comes to that one scalar became another; undefined where they mean the same. */
export function judgeScalar(
  def: string,
  key: string,
  [before, after]: readonly [Node, Node],
  shape: Shape | undefined,
  renamed: Renamed,
): Judged | undefined {
  if (meansSame(before, after, shape, renamed)) return undefined;
  const base = keyClass(def, key) ?? 'fits';
  const [old, now] = [meaningOf(before, shape), meaningOf(after, shape)];
  const order = ORDERS[key];
  if (order?.includes(old) && order.includes(now))
    return { class: order.indexOf(now) > order.indexOf(old) ? 'hurt' : 'fits' };
  if (key === 'people' && Number(now) > Number(old)) return { class: 'fits' };
  if (key === 'sign') return { class: 'fits' };
  if (isText(shape)) return judgeText(key, base, old, now);
  return { class: base };
}

export function meansSame(before: Node, after: Node, shape: Shape | undefined, renamed: Renamed): boolean {
  const now = meaningOf(after, shape);
  return meaningOf(before, shape) === now || meaningOf(before, shape, renamed) === now;
}

function isText(shape: Shape | undefined): boolean {
  return shape?.as === 'prose' || (shape?.as === 'scalar' && ['prose', 'ref-or-prose'].includes(shape.scalar.is));
}

/** Wording is wording, unless a number in it or what it forbids differs. */
export function judgeText(key: string, base: ChangeClass, before: string, after: string): Judged {
  const acted = WARNING_KEYS.has(key) || ACTED_BY.has(key) || base === 'hurt';
  if (!acted) return { class: base };
  const why = saysOtherwise(before, after);
  if (why !== undefined) return { class: 'hurt', note: why };
  return { class: base === 'fits' ? 'fits' : 'says' };
}

const NEGATIONS = /\b(?:not|never|no|without|nothing|none|nicht|nie|niemals|kein\w*|ohne|nunca|sin|jamás)\b/giu;

function saysOtherwise(before: string, after: string): string | undefined {
  const numbers = (text: string) => (text.match(/\d+(?:[.,]\d+)*/gu) ?? []).join(' ');
  if (numbers(before) !== numbers(after)) return 'a number in it differs';
  const negations = (text: string) => (text.match(NEGATIONS) ?? []).length;
  return negations(before) === negations(after) ? undefined : 'what it forbids differs';
}

/** What it comes to that one quantity became another; undefined where they are written alike. */
export function judgeQuantity(
  def: string,
  key: string,
  before: QuantityValue,
  after: QuantityValue,
): Judged | undefined {
  const change = quantityChange(before, after);
  if (change.is === 'same')
    return before.text.trim() === after.text.trim() ? undefined : { class: 'looks', note: 'written in another way' };
  if (change.is === 'rewritten') return { class: 'says', note: change.note };
  const base = keyClass(def, key) ?? 'fits';
  const narrower = LIMIT_KEYS.has(key) && change.direction === 'narrower';
  return { class: narrower && base === 'hurt' ? 'fits' : base, note: change.note };
}
