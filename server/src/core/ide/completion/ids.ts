import type { NamedThing } from '../../analysis/declarations';
import { documentValue } from '../../analysis/documentUnit';
import type { RefKind, ScalarShape } from '../../model/shape';
import { RULES } from '../../rules/registry';
import type { Candidate } from './candidate';
import { rankedParts, rankedTools } from './ranks';
import { type CompletionScene, typedIn } from './scene';

/** The ids that a place takes, less those that its list has already. */
export function idCandidates(scene: CompletionScene, shape: ScalarShape & { is: 'ref' }): Candidate[] {
  const listed = new Set(othersInList(scene));
  const words = (shape.words ?? []).map((word): Candidate => ({ kind: 'word', label: word }));
  return [...words, ...thingsFor(scene, shape)].filter(({ label }) => !listed.has(label));
}

function thingsFor(scene: CompletionScene, shape: ScalarShape & { is: 'ref' }): Candidate[] {
  switch (shape.kind) {
    case 'rule':
      return ruleCandidates();
    case 'part':
      return ranked(things(scene, 'part'), rankedParts(scene));
    case 'tool':
      return shape.listing ? things(scene, 'tool') : ranked(things(scene, 'tool', true), rankedTools(scene));
    case 'consumable':
      return shape.listing ? things(scene, 'consumable') : listedFirst(scene, things(scene, 'consumable'));
    case 'step':
      return stepCandidates(scene);
    default:
      return things(scene, shape.kind);
  }
}

/** Everything of a kind, in the order in which it is declared. */
export function things({ names }: CompletionScene, kind: RefKind, lists = false): Candidate[] {
  return [...names.all(kind).values()].map((thing) => thingCandidate(thing, lists));
}

export function thingCandidate({ kind, id, name }: NamedThing, lists = false): Candidate {
  const about = { is: 'thing', kind, id, ...(lists ? { lists } : {}) } as const;
  return { kind, label: id, detail: name === id ? undefined : name, about };
}

export function ruleCandidates(): Candidate[] {
  return RULES.map(({ id, severity }) => ({ kind: 'rule', label: id, detail: severity, about: { is: 'rule', id } }));
}

/** What the list around the cursor holds already. */
export function othersInList({ context }: CompletionScene): readonly string[] {
  const step = context.steps.at(-1);
  return step?.is === 'entry' ? step.others() : [];
}

function ranked(candidates: Candidate[], ranks: ReturnType<typeof rankedParts>): Candidate[] {
  return candidates.map((one) => {
    const rank = ranks.get(one.label);
    return rank === undefined ? one : { ...one, rank: rank.rank, why: rank.why };
  });
}

/** What is laid out comes before what lies in the stores. */
function listedFirst({ document }: CompletionScene, candidates: Candidate[]): Candidate[] {
  const laidOut = new Set(documentValue(document, 'procedure')?.consumables?.map(({ id }) => id));
  return candidates.map((one) => ({ ...one, rank: laidOut.has(one.label) ? 0 : 1 }));
}

/** One goes back to an earlier step, most likely one not far back; a concession may be about any. */
function stepCandidates(scene: CompletionScene): Candidate[] {
  const { context, document } = scene;
  const own = context.steps.findIndex((step) => step.is === 'key' && step.name === 'steps');
  if (own < 0) return things(scene, 'step');
  const all = [...scene.names.all('step').values()];
  const before = all.filter(({ declared }) => document.spanOf(declared.node).start < context.offset).length;
  return all.map((thing, i) => ({ ...thingCandidate(thing), rank: i < before ? before - i : all.length + i }));
}

/** Ids behind a sign; where none is typed, each with both. */
export function signedCandidates(scene: CompletionScene, shape: ScalarShape & { is: 'signed' }): Candidate[] {
  const listed = new Set(othersInList(scene).map((one) => one.replace(/^[+\-−]\s*/, '')));
  const all = things(scene, shape.kind).filter(({ label }) => !listed.has(label));
  const typed = typedIn(scene.context);
  const sign = /^[+\-−]/.exec(typed)?.[0];
  const signs = sign === undefined ? ['+', '-'] : [sign];
  return signs.flatMap((one) => all.map((thing) => ({ ...thing, label: `${one}${thing.label}` })));
}
