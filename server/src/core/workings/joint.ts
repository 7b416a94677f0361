import type { FamilyView } from '../analysis/familyView';
import { type HeldValue, heldValues } from '../analysis/heldValues';
import type { BuildSet, BuildSpace } from '../builds';
import type { QuantityValue, Text } from '../model/values';
import { boundsOf } from '../quantity';
import { type BearingFace, faceForThread, hexagonFace } from '../standards/bearingFaces';
import {
  formatPropertyClass,
  type PropertyClass,
  readPropertyClass,
  type Strength,
  strengthOf,
} from '../standards/propertyClasses';
import { readThreadDesignation, type ThreadDesignation } from '../standards/threadDesignation';
import type { FrictionStatement, Joint, JointPart } from '../standards/torqueBand';
import { type JointFacts, jointFacts, type Stated } from './jointFacts';
import { missingFacts } from './jointMissing';

/** A threaded part of a joint. */
export interface JointMember {
  readonly id: string;
  readonly name: string;
  readonly role: 'bolt' | 'nut';
  /** The class as written; undefined where none is stated. */
  readonly written: Text | undefined;
  /** Undefined where no class is stated, or where no table has what is written. */
  readonly propertyClass: PropertyClass | undefined;
  /** Undefined where the tables have no strength of the class for this size. */
  readonly strength: Strength | undefined;
}

/** The face on which a fastener turns, and whether it is stated or taken from a standard or from practice. */
export interface JointFace {
  readonly face: BearingFace;
  readonly from: 'family' | 'assumed';
}

/** The joint of a fastener as the family states it, on builds on which all of it is the same. */
export interface FastenerJoint {
  readonly id: string;
  readonly name: string;
  readonly where: BuildSet;
  readonly facts: JointFacts;
  /** Undefined where no thread is stated, or none that can be read. */
  readonly thread: ThreadDesignation | undefined;
  readonly face: JointFace | undefined;
  /** The fastener itself first. */
  readonly members: readonly JointMember[];
  readonly friction: FrictionStatement;
  /** Plugs, fittings and sensors without a class hold a seal, and are rightly tightened far below what a thread takes. */
  readonly use: 'sealing' | 'preloaded';
  readonly prevailing: Stated<QuantityValue> | undefined;
  /** The hands by build, as stated, else as the designation marks them; a torque is the same for both. */
  readonly hands: readonly HeldValue<'left' | 'right'>[];
  /** Facts that are not stated or cannot be read, as "the property class of the compressor nut". */
  readonly missing: readonly string[];
  /** What the formulas take; undefined where the thread is not known. */
  readonly joint: Joint | undefined;
}

const remembered = new WeakMap<BuildSpace, Map<string, readonly FastenerJoint[]>>();

/**
 * The joint of a fastener by build: the pieces do not overlap, and together hold for all builds that have the fastener. Nothing
 * in it is filled in: what the family does not state is undefined and named in `missing`. Remembered with the space.
 */
export function jointsOf(family: FamilyView, space: BuildSpace, id: string): readonly FastenerJoint[] {
  const known = remembered.get(space) ?? new Map<string, readonly FastenerJoint[]>();
  remembered.set(space, known);
  const joints = known.get(id) ?? jointFacts(family, space, id).map((facts) => jointOf(family, space, facts, id));
  known.set(id, joints);
  return joints;
}

function jointOf(family: FamilyView, space: BuildSpace, facts: JointFacts, id: string): FastenerJoint {
  const text = facts.thread?.value.text;
  const thread = text === undefined ? undefined : readThreadDesignation(text).designation;
  const face = thread && faceOf(thread, facts);
  const members = [id, ...facts.mates].flatMap((one) => memberOf(family, one, id, facts, thread));
  const friction = frictionOf(facts);
  return {
    id,
    name: family.nameOf(id),
    where: facts.where,
    facts,
    thread,
    face,
    members,
    friction,
    use: isSealing(family.part(id)?.kind?.value, facts) ? 'sealing' : 'preloaded',
    prevailing: facts.prevailing,
    hands: handsOf(family, space, id, facts, thread),
    missing: missingFacts(family, id, facts, members, thread),
    joint: thread && face && { thread, face: face.face, parts: partsOf(members), friction },
  };
}

const sealingKinds: ReadonlySet<string> = new Set(['plug', 'fitting', 'sensor', 'pipe']);

function isSealing(kind: string | undefined, { classes }: JointFacts): boolean {
  return classes.size === 0 && kind !== undefined && sealingKinds.has(kind);
}

/** A designation without a mark leaves the hand to the key, since most families state it there alone. */
function handsOf(
  family: FamilyView,
  space: BuildSpace,
  id: string,
  { where }: JointFacts,
  thread: ThreadDesignation | undefined,
): readonly HeldValue<'left' | 'right'>[] {
  const { held, absent } = heldValues(family.part(id)?.hand, space, where);
  const stated = held.flatMap((one) => (one.value.value === undefined ? [] : [{ ...one, value: one.value.value }]));
  const isMarked = thread?.parts.some(({ kind }) => kind === 'hand') === true;
  return thread === undefined || !isMarked || absent.isEmpty
    ? stated
    : [...stated, { value: thread.hand, where: absent }];
}

const threadedKinds: ReadonlySet<string> = new Set(['nut', 'bolt', 'screw', 'stud', 'shaft', 'rod']);

/** What is screwed to the fastener counts where it is a threaded part by its kind or has a class; a tapped housing has none. */
function memberOf(
  family: FamilyView,
  id: string,
  fastener: string,
  { classes }: JointFacts,
  thread: ThreadDesignation | undefined,
): JointMember[] {
  const kind = family.part(id)?.kind?.value;
  const written = classes.get(id);
  if (id !== fastener && written === undefined && !threadedKinds.has(kind ?? '')) return [];
  const propertyClass = written && readPropertyClass(written.text);
  const strength = propertyClass && thread && strengthOf(propertyClass, thread.diameter);
  return [{ id, name: family.nameOf(id), role: roleOf(kind, propertyClass), written, propertyClass, strength }];
}

/** A clamp marked with a nut's class is tightened by its nut. */
function roleOf(kind: string | undefined, propertyClass: PropertyClass | undefined): 'bolt' | 'nut' {
  if (kind === 'nut') return 'nut';
  const isFastener = kind !== undefined && threadedKinds.has(kind);
  return !isFastener && propertyClass?.system === 'ISO 898-2' ? 'nut' : 'bolt';
}

function partsOf(members: readonly JointMember[]): JointPart[] {
  return members.flatMap(({ role, propertyClass }) => (propertyClass === undefined ? [] : [{ role, propertyClass }]));
}

function faceOf(thread: ThreadDesignation, { bearing }: JointFacts): JointFace {
  const assumed = faceForThread(thread);
  const quantity = bearing?.value.reading.quantity;
  if (quantity?.dimension !== 'length') return { face: assumed, from: 'assumed' };
  const outer = boundsOf(quantity).nominal;
  const hole = (thread.system === 'metric' ? hexagonFace(thread.diameter)?.inner : undefined) ?? thread.diameter;
  // A face within its own hole is a slip that other rules speak of; nothing is reckoned with it.
  if (!(outer > thread.diameter)) return { face: assumed, from: 'assumed' };
  const source = 'bearing-diameter of the family';
  return { face: { outer, inner: Math.min(hole, outer), source }, from: 'family' };
}

/** Stated in per cent, for thread and face alike. */
function frictionOf({ friction }: JointFacts): FrictionStatement {
  const quantity = friction?.value.reading.quantity;
  if (quantity?.dimension !== 'ratio') return { kind: 'unknown' };
  const coefficient = boundsOf(quantity).nominal / 100;
  return coefficient > 0 ? { kind: 'stated', thread: coefficient, face: coefficient } : { kind: 'unknown' };
}

/** A member in words: "compressor nut: internal thread of class 10". */
export function memberWords({ role, propertyClass, written, name }: JointMember): string {
  const thread = `${name}: ${role === 'nut' ? 'internal' : 'external'} thread`;
  if (propertyClass !== undefined) return `${thread} of class ${formatPropertyClass(propertyClass)}`;
  return written === undefined ? `${thread}, class not stated` : `${thread} of ${written.text.trim()}`;
}
