import type { BuildSet } from '../../../builds';
import type { Failure } from '../../../walk/failure';
import { UnitModel } from '../../../walk/unitModel';
import type { EntryLines } from './block';
import type { Candidate } from './candidate';
import { insert, moveInstruction, moveStep } from './edits';
import { partFirst, takeOutPart } from './partLists';
import type { Place, Scene } from './scene';
import { does, fits, isAlone, theEnd, treatedFirst, wideFrom } from './touching';

/** What holds or covers a part is taken off before it, and what holds or covers that. */
export function blockedFixes(scene: Scene): Candidate[] {
  const { about, other, showing } = scene;
  return [...partFirst(scene, showing, other, about), ...takeOffFirst(scene, about, other)];
}

export function stillInUnitFixes(scene: Scene): Candidate[] {
  return takeOffFirst(scene, undefined, scene.about);
}

export function unreachableFixes(scene: Scene): Candidate[] {
  const { showing, cause, about, other } = scene;
  if (showing === undefined) return [];
  const { verb } = showing.view.instruction;
  const title = `Move "${verb}: ${about}" before ${scene.the(other)} goes on`;
  const moved = cause !== undefined && isAlone(showing) ? moveInstruction(scene, title, showing, 'before', cause) : [];
  const step = cause === undefined ? [] : moveStep(scene, showing, 'before', cause);
  return [...moved, ...step, ...takeOffFirst(scene, about, other)];
}

/** A removal is missing: where the part was freed, or before it is made ready to be fitted. If none fits, it was in place all along. */
export function fittedAlreadyFixes(scene: Scene): Candidate[] {
  const { about, showing, relations, family, failure } = scene;
  const holders = [about, ...relations.fasteners(about), ...relations.behind(about), ...relations.carriers(about)];
  const freed = scene.last((one) => holders.some((id) => does(one, ['remove', 'loosen'], id)), showing?.index);
  const where = failure.where;
  const taking: TakingOff = {
    parts: [about],
    for: undefined,
    beside: wideFrom(scene, freed),
    side: 'behind',
    where,
    place: '',
  };
  const ready = treatedFirst(scene, about);
  const taken = family.part(about)?.renew?.value === 'always' ? [] : takeOutPart(scene);
  return [
    ...takenOff(scene, taking),
    ...takenOff(scene, { ...taking, beside: ready, side: 'before' }),
    ...[...takenOff(scene, { ...taking, beside: showing, side: 'before' }), ...taken].map((one) => ({
      ...one,
      atLast: true,
    })),
  ];
}

/** What is no part of the finished unit comes out before something closes it off, or when the work is over. */
export function leftInFixes(scene: Scene): Candidate[] {
  const { about, cause, relations } = scene;
  const covers = relations.behind(about);
  const closing = scene.first((one) => covers.some((cover) => fits(one, cover)), cause?.index);
  const title = `Take ${scene.the(about)} out`;
  const entry = [[`remove: ${about}`]];
  return [
    ...insert(scene, `${title} before it is closed off`, 'before', closing, entry, 'failing'),
    ...insert(scene, `${title} at the end`, 'behind', theEnd(scene), entry, 'failing'),
  ];
}

export function receiveFixes(scene: Scene): Candidate[] {
  const { other, about, showing } = scene;
  const title = `Take ${scene.the(other)} in again before ${other === about ? 'it' : scene.the(about)} is fitted`;
  return insert(scene, title, 'before', showing, [[`receive: ${other}`]], 'failing');
}

/** What is to come off, before which instruction and for which builds. */
interface TakingOff {
  /** In the order in which they come off. */
  readonly parts: readonly string[];
  /** What they are in the way of; undefined where they are to come off themselves. */
  readonly for: string | undefined;
  readonly beside: Place | undefined;
  readonly side: 'before' | 'behind';
  readonly where: BuildSet;
  /** What the title says of the place. */
  readonly place: string;
}

/** Before the instruction that shows the failure; what fails later for the same reason on other builds is mended with it. */
export function takeOffFirst(scene: Scene, blocked: string | undefined, part: string): Candidate[] {
  const { cause, other, where } = scene.failure;
  const alike = scene.failures.filter((one) => blocked !== undefined && one.cause === cause && one.other === other);
  const first = scene.placeOf(alike[0]?.at);
  const all = scene.procedure.space.union(alike.map((one) => one.where));
  const here: TakingOff = {
    parts: [part],
    for: blocked,
    beside: scene.showing,
    side: 'before',
    where,
    place: ' before this',
  };
  return [
    ...(alike.length < 2 ? [] : takenOff(scene, { ...here, beside: first, where: all })),
    ...takenOff(scene, here),
  ];
}

/** Takes parts off; where the first is held or covered itself, what holds or covers it comes off before. */
function takenOff(scene: Scene, taking: TakingOff): Candidate[] {
  const { parts, beside, side, where, place } = taking;
  const entries = parts.map((part, i): EntryLines => [`${verbFor(scene, part, parts[i + 1] ?? taking.for)}: ${part}`]);
  const [first = ''] = parts;
  const verb = entries.length === 1 && entries[0]?.[0]?.startsWith('loosen') === true ? 'Loosen' : 'Take off';
  const title = `${verb} ${parts.map((part) => scene.the(part)).join(', then ')}${place}`;
  return insert(scene, title, side, beside, entries, 'failing', where).map((one) => ({
    ...one,
    further: (added: readonly Failure[]): Candidate | undefined => {
      const held = added.find(({ cause, about }) => HOLDS.has(cause) && about === first)?.other;
      if (held === undefined || parts.includes(held)) return undefined;
      return takenOff(scene, { ...taking, parts: [held, ...parts] })[0];
    },
  }));
}

const HOLDS: ReadonlySet<string> = new Set(['still-fastened', 'covered']);

function verbFor({ procedure, family, relations }: Scene, part: string, held: string | undefined): string {
  if (held === undefined || !relations.fasteners(held).includes(part)) return 'remove';
  return new UnitModel(procedure, family).freesLoose(part, held) ? 'loosen' : 'remove';
}
