import { UNIT_SHAPES } from '../../model/generated/shapes';
import { isVerb } from '../../model/instructionDef';
import type { Keys, Shape } from '../../model/shape';
import type { DocumentKind } from '../../syntax/documentKind';
import type { CursorContext, PathStep } from './context';

/** What belongs at a place by the definitions of its document. */
export interface PlaceShape {
  readonly shape: Shape;
  /** The definition that says so, and the keys behind which the place stands in it. */
  readonly def: string;
  readonly path: readonly string[];
}

/** Follows the steps to a place through the definitions; undefined where they say nothing of it. */
export function shapeAt(kind: DocumentKind, { steps, wants, keys }: CursorContext): PlaceShape | undefined {
  let place: PlaceShape | undefined = unitPlace(kind);
  for (const step of steps) {
    if (place === undefined) return undefined;
    place = opened(stepInto(place, step));
  }
  if (place?.shape.as !== 'instruction' || wants !== 'key') return place;
  return instructionPlace(keys());
}

/** The keys of the map at a place, where the definitions name them. */
export function keysOf(place: PlaceShape): Keys | undefined {
  return place.shape.as === 'object' ? place.shape.keys : undefined;
}

/** The definition of an instruction is that of the verb among its keys. */
export function instructionPlace(keys: readonly string[]): PlaceShape | undefined {
  const verb = keys.find(isVerb);
  return unitPlace(verb === undefined ? 'procedure/sentence' : `procedure/verb-${verb}`);
}

function unitPlace(def: string): PlaceShape | undefined {
  const unit = UNIT_SHAPES[def];
  return unit === undefined ? undefined : { shape: unit.shape, def, path: [] };
}

function opened(place: PlaceShape | undefined): PlaceShape | undefined {
  return place?.shape.as === 'unit' ? unitPlace(place.shape.def) : place;
}

function stepInto(place: PlaceShape, step: PathStep): PlaceShape | undefined {
  if (step.is === 'key' && place.shape.as === 'instruction') {
    const instruction = instructionPlace([step.name, ...step.others()]);
    return instruction === undefined ? undefined : stepInto(instruction, step);
  }
  const shape = step.is === 'key' ? behindKey(place.shape, step.name) : inEntry(place.shape);
  if (shape === undefined) return undefined;
  return step.is === 'key' ? { ...place, shape, path: [...place.path, step.name] } : { ...place, shape };
}

function behindKey(shape: Shape, name: string): Shape | undefined {
  switch (shape.as) {
    case 'object':
      return Object.hasOwn(shape.keys, name) ? shape.keys[name]?.shape : undefined;
    case 'entries':
      return shape.values;
    case 'by-build':
      return { as: 'scalar', scalar: shape.scalar, many: false };
    case 'counted':
      return { as: 'scalar', scalar: { is: 'count' }, many: false };
    case 'condition':
      return ['all', 'any', 'none'].includes(name) ? shape : undefined;
    case 'prose':
      return PROSE_KEYS.includes(name) ? { as: 'scalar', scalar: { is: 'prose' }, many: false } : undefined;
    case 'scalar':
      return shape.scalar.is === 'ref-or-prose' && PROSE_KEYS.includes(name)
        ? { as: 'scalar', scalar: { is: 'prose' }, many: false }
        : undefined;
    default:
      return undefined;
  }
}

/** A text for people may be a map of the text and its translations. */
export const PROSE_KEYS: readonly string[] = ['text', 'en', 'de', 'es'];

function inEntry(shape: Shape): Shape | undefined {
  switch (shape.as) {
    case 'list':
      return shape.items;
    case 'scalar':
    case 'prose':
      return shape.many ? { ...shape, many: false } : undefined;
    case 'object':
      return shape.many ? { ...shape, many: false } : undefined;
    case 'counted':
      return { as: 'scalar', scalar: { is: 'ref', kind: shape.kind }, many: false };
    case 'condition':
      return shape;
    default:
      return undefined;
  }
}
