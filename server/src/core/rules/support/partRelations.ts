import type { Part } from '../../model/generated/types';
import type { Ref } from '../../model/values';

/** A key by which a part names other parts of the same unit. */
export interface PartRelation {
  readonly key: string;
  /** What the part is said to do by it, in the infinitive. */
  readonly say: string;
  readonly refs: (part: Part) => readonly Ref[];
}

/** The keys whose parts must be in the unit together to mean anything. */
export const PART_RELATIONS: readonly PartRelation[] = [
  { key: 'sits-on', say: 'sit on', refs: (part) => (part.sitsOn ?? []).map(({ ref }) => ref) },
  { key: 'fastened-by', say: 'be fastened by', refs: (part) => part.fastenedBy ?? [] },
  { key: 'behind', say: 'be behind', refs: (part) => part.behind ?? [] },
  { key: 'seals', say: 'seal', refs: (part) => part.seals ?? [] },
  { key: 'mates-with', say: 'be screwed to', refs: (part) => part.matesWith ?? [] },
  { key: 'locked-by', say: 'be locked by', refs: (part) => part.lockedBy ?? [] },
  { key: 'comes-with', say: 'come with', refs: (part) => part.comesWith ?? [] },
];
