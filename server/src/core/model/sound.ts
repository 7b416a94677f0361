import type { ListNode, MapNode, Node, ScalarNode } from '../syntax/node';
import { SOUND_BY_NAME, SOUND_UNITS } from './generated/soundUnits';
import { isDay } from './readValues';
import { isId } from './structureProblems';

/** What a value looks like where nothing is wrong with its shape: what it must hold if it is a text, a list, a map. */
export interface Sound {
  /** Nothing is asked here: a unit of its own is looked at by itself. */
  readonly any?: true;
  /** What refers to itself stands in the table of names. */
  readonly named?: string;
  readonly text?: ScalarMark;
  readonly list?: { readonly of: Sound; readonly least?: number; readonly most?: number };
  readonly map?: SoundMap;
}

export interface SoundMap {
  readonly keys: Readonly<Record<string, Sound>>;
  readonly required: readonly string[];
  /** What stands under keys of the writer's own; none may be there where it is left out. */
  readonly others?: Sound;
  readonly least?: number;
  /** The keys are ids that are declared here. */
  readonly ids?: true;
}

/** What a text must be: nothing here is asked of most. */
export interface ScalarMark {
  readonly among?: readonly string[];
  readonly pattern?: string;
  readonly is?: 'id' | 'day';
}

/**
 * Whether nothing at all is wrong with the shape of a unit. Nearly every unit is sound, and to see that takes one look at
 * its nodes: no plain value is made, no validator runs, no list of problems is kept. Where it says no, something may be
 * wrong, and the validators say what.
 */
export function isSoundUnit(node: Node, def: string): boolean {
  const sound = SOUND_UNITS[def];
  return sound !== undefined && isSound(node, sound);
}

function isSound(node: Node, sound: Sound): boolean {
  if (sound.any === true) return true;
  if (sound.named !== undefined) return isSound(node, SOUND_BY_NAME[sound.named] ?? NOTHING);
  switch (node.kind) {
    case 'scalar':
      return sound.text !== undefined && isSoundText(node, sound.text);
    case 'list':
      return sound.list !== undefined && isSoundList(node, sound.list);
    case 'map':
      return sound.map !== undefined && isSoundMap(node, sound.map);
  }
}

const NOTHING: Sound = {};

function isSoundText({ text }: ScalarNode, { among, pattern, is }: ScalarMark): boolean {
  if (among !== undefined && !among.includes(text)) return false;
  if (pattern !== undefined && !patternOf(pattern).test(text)) return false;
  return is === undefined || (is === 'id' ? isId(text) : isDay(text));
}

const patterns = new Map<string, RegExp>();

function patternOf(source: string): RegExp {
  const known = patterns.get(source) ?? new RegExp(source, 'u');
  patterns.set(source, known);
  return known;
}

function isSoundList({ items }: ListNode, { of, least = 0, most = items.length }: NonNullable<Sound['list']>): boolean {
  if (items.length < least || items.length > most) return false;
  for (const item of items) if (!isSound(item, of)) return false;
  return true;
}

function isSoundMap({ pairs }: MapNode, { keys, required, others, least = 0, ids }: SoundMap): boolean {
  if (pairs.length < least || !hasAll(pairs, required) || hasTwice(pairs)) return false;
  for (const { key, value } of pairs) {
    const sound = Object.hasOwn(keys, key.text) ? keys[key.text] : others;
    if (sound === undefined || value === undefined || (ids === true && !isId(key.text))) return false;
    if (!isSound(value, sound)) return false;
  }
  return true;
}

function hasAll(pairs: MapNode['pairs'], required: readonly string[]): boolean {
  for (const one of required) if (!pairs.some(({ key }) => key.text === one)) return false;
  return true;
}

/** Most maps have a handful of keys, which are compared faster than a set of them is made. */
function hasTwice(pairs: MapNode['pairs']): boolean {
  if (pairs.length > 12) return new Set(pairs.map(({ key }) => key.text)).size < pairs.length;
  for (let i = 1; i < pairs.length; i++) {
    for (let j = 0; j < i; j++) if (pairs[i]?.key.text === pairs[j]?.key.text) return true;
  }
  return false;
}
