import type { Candidate } from './candidate';
import { insert } from './edits';
import { renewal } from './fitting';
import { passFixes } from './passes';
import type { Place, Scene } from './scene';
import { listed } from './stores';
import { tightening } from './tightening';
import { does, fits, later, names, wideFrom } from './touching';

/** A fastener that is used once is renewed before it is tightened again. */
export function usedAgainFixes(scene: Scene): Candidate[] {
  return renewed(scene);
}

/** The seal is renewed before its joint is closed. */
export function sealFixes(scene: Scene): Candidate[] {
  return renewed(scene);
}

function renewed(scene: Scene): Candidate[] {
  const entries = renewal(scene, scene.about);
  if (entries === undefined) return [];
  return insert(scene, `Renew ${scene.the(scene.about)}`, 'before', scene.showing, entries, 'failing');
}

export function coolFixes(scene: Scene): Candidate[] {
  const { showing, other } = scene;
  return insert(scene, `Let ${scene.the(other)} cool first`, 'before', showing, [[`cool: ${other}`]], 'failing');
}

/** What is left loose is tightened once it was fitted or loosened last, what it holds is there, and what it locks is set. */
export function looseFixes(scene: Scene): Candidate[] {
  const { about, cause, family } = scene;
  const place = wideFrom(scene, later(cause, readyFor(scene, about)));
  if (family.part(about)?.torque === undefined && family.part(about)?.angle === undefined)
    return insert(scene, `Seat ${scene.the(about)}`, 'behind', place, [[`seat: ${about}`]], 'failing');
  return [...passFixes(scene), ...tightenedBehind(scene, about, place), ...besideCause(scene, about, place)];
}

/** Where the builds are only those of the instruction that led to it, the new one stands behind that. */
function besideCause(scene: Scene, fastener: string, place: Place | undefined): Candidate[] {
  return place === scene.cause ? [] : tightenedBehind(scene, fastener, scene.cause);
}

/** What locks an adjustment is tightened behind it. */
export function lockFixes(scene: Scene): Candidate[] {
  const { cause, about, relations } = scene;
  const locks = relations.ids.filter((id) => relations.lockedBy(id).includes(about));
  const [lock] = locks;
  return lock === undefined || locks.length > 1 ? [] : tightenedBehind(scene, lock, cause);
}

export function spunLooseFixes(scene: Scene): Candidate[] {
  const { other, showing, cause } = scene;
  const entry = tightening(scene, other);
  if (entry === undefined) return [];
  const title = `Tighten ${scene.the(other)} before the group is spun`;
  return [
    ...insert(scene, title, 'behind', cause, [entry], 'failing'),
    ...insert(scene, title, 'before', showing, [entry], 'failing'),
  ];
}

/** The threadlocker of the fastener cures before its group is spun. */
export function cureFixes(scene: Scene): Candidate[] {
  const { other, showing } = scene;
  const lockers = listed(scene, ['threadlocker']);
  const used = scene.last((one) => one.view.instruction.verb === 'apply' && names(one, other), showing?.index);
  const own = used?.view.instruction.verb === 'apply' ? (used.view.instruction.apply ?? []).map(({ id }) => id) : [];
  const [locker] = lockers.length > 1 ? lockers.filter((id) => own.includes(id)) : lockers;
  const entry = ['wait: cure', ...(locker === undefined ? [] : [`of: ${locker}`])];
  return insert(scene, `Let the threadlocker of ${scene.the(other)} cure first`, 'before', showing, [entry]);
}

function tightenedBehind(scene: Scene, fastener: string, place: Place | undefined): Candidate[] {
  const entry = tightening(scene, fastener);
  return entry === undefined
    ? []
    : insert(scene, `Tighten ${scene.the(fastener)}`, 'behind', place, [entry], 'failing');
}

/** The last instruction after which a fastener can be tightened. */
function readyFor(scene: Scene, fastener: string): Place | undefined {
  const { relations } = scene;
  const held = relations.heldBy(fastener);
  const set = relations.lockedBy(fastener);
  return scene.last((one) => held.some((part) => fits(one, part)) || set.some((part) => does(one, ['adjust'], part)));
}
