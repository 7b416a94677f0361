import { namedRefs } from '../../../analysis/instructions';
import type { EntryLines } from './block';
import type { Candidate } from './candidate';
import { insert } from './edits';
import type { Place, Scene } from './scene';
import { does, fits, later, names } from './touching';

/** A part that must come back in its position is marked before it comes off; where nothing aligns it, that goes with it. */
export function markFixes(scene: Scene): Candidate[] {
  const { about, showing } = scene;
  if (showing?.view.instruction.verb === 'align') return markForAlign(scene, showing);
  const mate = mateOf(scene);
  if (showing?.view.instruction.verb !== 'remove' || mate === undefined) return [];
  // Both must still be in place.
  const off = scene.last((one) => does(one, ['remove'], mate), showing.index) ?? showing;
  const marked = markedBefore(scene, about, mate, off);
  const fitted = scene.last((one) => fits(one, about));
  const aligned = scene.first((one) => one.view.instruction.verb === 'align' && names(one, about));
  if (fitted === undefined || fitted.index < showing.index || aligned !== undefined) return marked;
  return marked.flatMap((one) => {
    const title = `${one.title}, and align it when it is back`;
    return alignedBehind(scene, title, fitted, mate).map((two) => ({ title, edits: [...one.edits, ...two.edits] }));
  });
}

/** What is aligned by a mark gets it before it comes off. */
function markForAlign(scene: Scene, { index, view: { instruction } }: Place): Candidate[] {
  const { about } = scene;
  const others = [...new Set(namedRefs(instruction).map(({ id }) => id))].filter((id) => id !== about);
  const [other] = others;
  const off = scene.last((one) => does(one, ['remove'], about), index);
  return other === undefined || others.length > 1 || off === undefined ? [] : markedBefore(scene, about, other, off);
}

function markedBefore(scene: Scene, part: string, other: string, off: Place): Candidate[] {
  const title = `Mark ${scene.the(part)} and ${scene.the(other)} before it comes off`;
  return insert(scene, title, 'before', off, [[`mark: ${part}`, `across: ${other}`]], 'neighbour');
}

/** A part that was marked is aligned to what it was marked across to, once both are back. */
export function alignFixes(scene: Scene): Candidate[] {
  const { about, cause } = scene;
  const marked = scene.places.filter(({ view }) => view.instruction.verb === 'mark').filter((one) => names(one, about));
  const partners = new Set(marked.flatMap((one) => namedRefs(one.view.instruction).map(({ id }) => id)));
  partners.delete(about);
  return [...partners].flatMap((partner) => {
    const back = later(
      cause,
      scene.last((one) => fits(one, partner)),
    );
    const title = `Align ${scene.the(about)} to ${scene.the(partner)}`;
    return back === undefined ? [] : alignedBehind(scene, title, back, partner);
  });
}

function alignedBehind(scene: Scene, title: string, fitted: Place, partner: string): Candidate[] {
  const part = scene.about;
  const entry: EntryLines = [`align: ${part}`, `to: ${partner}`];
  const renewable = [part, partner].filter((id) => scene.family.part(id)?.renew?.value === 'on-condition');
  // What is renewed bears no mark.
  const unless = renewable.map((id) => `${id}=renewed`);
  const used =
    unless.length === 0 ? [] : [[...entry, `unless: ${unless.length === 1 ? unless[0] : `[${unless.join(', ')}]`}`]];
  const conditioned = 'unless' in fitted.view.instruction && fitted.view.instruction.unless !== undefined ? [] : used;
  return [entry, ...conditioned].flatMap((one) => insert(scene, title, 'behind', fitted, [one]));
}

/** The other member of the group that keeps its position; where there are several, the one that carries the part. */
function mateOf({ relations, family, about, procedure, failure }: Scene): string | undefined {
  const keeping = (family.value.balanceGroups ?? []).filter(({ value }) => value.keepPosition?.value === true);
  const groups = relations.groupsOf(about).filter((group) => keeping.some(({ id }) => id.id === group));
  const members = new Set(groups.flatMap((group) => relations.membersOf(group)));
  members.delete(about);
  const mates = [...members].filter((id) => {
    const kept = procedure.presence(id, 'received').and(procedure.presence(id, 'finished'));
    return kept.overlaps(failure.where);
  });
  const carriers = mates.filter((id) => relations.ridesOn(about, id));
  return mates.length === 1 ? mates[0] : carriers.length === 1 ? carriers[0] : undefined;
}
