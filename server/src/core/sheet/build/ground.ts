import { followPath } from '../../analysis/links';
import type { ProcedureView, StepView } from '../../analysis/procedureView';
import { areSame } from '../../analysis/sameParts';
import type { Entry } from '../../model/values';
import type { SyntaxDocument } from '../../syntax/readDocument';
import type { PickedSet, SheetOptions } from './buildContext';
import type { BuiltStep } from './stepMemory';

/**
 * Everything beside a step's own text that its words may depend on, but for what other steps say: the build, the head of
 * the procedure, what it links to, language and settings. Two sheets with the same of all that have one and the same
 * ground, and what was built on it is kept with it.
 */
export class Ground {
  readonly steps = new WeakMap<StepView, BuiltStep>();
  #last: object | undefined;

  constructor(readonly rests: readonly unknown[]) {}

  /**
   * What stands around the steps is made anew each time: here with the objects of the last sheet wherever they say the
   * same, so that whoever prints it can tell by the object alone that nothing has changed.
   */
  kept<Around extends object>(around: Around): Around {
    const kept = sameOf(this.#last, around) as Around;
    this.#last = kept;
    return kept;
  }
}

/** Few sheets are looked at at a time; each is found again after a key as long as it is among the last. */
const MOST = 12;
const recent: Ground[] = [];

export function groundOf(procedure: ProcedureView, picked: PickedSet, options: SheetOptions): Ground {
  const rests = restsOf(procedure, picked, options);
  // What reads a picture somewhere else may have another answer each time.
  if (options.readFigure !== undefined) return new Ground(rests);
  const at = recent.findIndex((one) => areSame(one.rests, rests));
  const ground = recent[at] ?? new Ground(rests);
  if (at >= 0) recent.splice(at, 1);
  recent.unshift(ground);
  recent.length = Math.min(recent.length, MOST);
  return ground;
}

function restsOf(procedure: ProcedureView, { set }: PickedSet, options: SheetOptions): unknown[] {
  const { document, family, value } = procedure;
  return [
    document.uri,
    procedure.space,
    set,
    family,
    procedure.tools,
    procedure.consumables,
    options.settings,
    options.language,
    options.torqueBands,
    ...writtenIn(value.readings),
    'figures',
    ...writtenIn(value.figures),
    ...picturesOf(procedure, document, value.figures),
    ...(family === undefined ? [] : picturesOf(procedure, family.document, family.value.figures)),
  ];
}

/** A list is read anew with whatever holds it, what stands in it only where it has changed. */
function writtenIn(entries: readonly Entry<unknown>[] | undefined): unknown[] {
  return (entries ?? []).flatMap(({ id, value }) => [id.id, value]);
}

/** A drawing is a file of its own, and may change while nothing else does. */
function picturesOf(
  { snapshot }: ProcedureView,
  owner: SyntaxDocument,
  figures: ProcedureView['value']['figures'],
): unknown[] {
  return (figures ?? []).map(({ value: { file } }) => {
    const target = file === undefined ? undefined : followPath(snapshot, owner.uri, file);
    return target?.is === 'file' ? target.text : target?.is;
  });
}

/**
 * The first of two values of plain JSON where they are equal, else the second, with as much of the first put into it as is
 * equal. The second must be nobody else's.
 */
function sameOf(old: unknown, next: unknown): unknown {
  if (old === next) return old;
  if (Array.isArray(old) && Array.isArray(next)) return sameList(old, next);
  if (!isObject(old) || !isObject(next) || Array.isArray(old) || Array.isArray(next)) return next;
  const keys = Object.keys(next);
  let isSame = keys.length === Object.keys(old).length;
  for (const key of keys) {
    const kept = sameOf(old[key], next[key]);
    if (kept !== next[key]) next[key] = kept;
    if (kept !== old[key]) isSame = false;
  }
  return isSame ? old : next;
}

function sameList(old: readonly unknown[], next: unknown[]): unknown {
  let isSame = old.length === next.length;
  for (let at = 0; at < next.length; at += 1) {
    const kept = sameOf(old[at], next[at]);
    if (kept !== next[at]) next[at] = kept;
    if (kept !== old[at]) isSame = false;
  }
  return isSame ? old : next;
}

function isObject(value: unknown): value is Record<string, unknown> {
  return typeof value === 'object' && value !== null;
}
