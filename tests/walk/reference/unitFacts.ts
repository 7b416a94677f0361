import type { FamilyView } from '../../../server/src/core/analysis/familyView';
import { conditionOf } from '../../../server/src/core/analysis/familyView';
import type { ProcedureView } from '../../../server/src/core/analysis/procedureView';
import type { Part } from '../../../server/src/core/model/generated/types';
import type { ByBuild, Condition, Ref } from '../../../server/src/core/model/values';
import { holdsIn, type World } from './world';

/** What the family says of one unit: of every set and condition only what holds in the one world is left. */
export class UnitFacts {
  readonly family: FamilyView;
  readonly base: string;
  /** Nothing here changes while the work goes on, so it is found out once. */
  readonly #known = new Map<string, unknown>();

  constructor(
    readonly procedure: ProcedureView,
    readonly world: World,
  ) {
    if (procedure.family === undefined) throw new Error('The family cannot be read');
    this.family = procedure.family;
    this.base = this.family.value.base?.id ?? '';
  }

  get partIds(): string[] {
    return this.#once('parts', () => [...this.family.parts.keys()].filter((id) => this.isMet(id)));
  }

  part(id: string): Part {
    const part = this.family.part(id);
    if (part === undefined) throw new Error(`No part ${id}`);
    return part;
  }

  comesWithUnit(id: string): boolean {
    return this.#once(`comesWithUnit ${id}`, () => holdsIn(this.procedure.presence(id, 'received'), this.world));
  }

  belongsToFinished(id: string): boolean {
    return this.#once(`belongsToFinished ${id}`, () => holdsIn(this.procedure.presence(id, 'finished'), this.world));
  }

  /** Whether the part has anything to do with this unit; instructions say nothing about it elsewhere. */
  isMet(id: string): boolean {
    return this.#once(
      `isMet ${id}`,
      () => this.family.parts.has(id) && (this.comesWithUnit(id) || this.belongsToFinished(id)),
    );
  }

  holds(owner: { readonly when?: Condition; readonly unless?: Condition }): boolean {
    return holdsIn(this.procedure.space.set(conditionOf(owner)), this.world);
  }

  /** The value that a value by build has in this world. */
  value<Value>(byBuild: ByBuild<Value> | undefined): Value | undefined {
    if (byBuild === undefined) return undefined;
    if (byBuild.is === 'one') return byBuild.value;
    const { space } = this.procedure;
    const own = byBuild.cases.find(({ expr }) => expr !== undefined && holdsIn(space.set(expr), this.world));
    return (own ?? byBuild.cases.find(({ otherwise }) => otherwise))?.value;
  }

  /** The parts that a list means: those named and what takes their place, as far as this unit has them. */
  meant(refs: readonly Ref[] | undefined): string[] {
    const named = (refs ?? []).map(({ id }) => id);
    const all = named.flatMap((id) => [id, ...this.substitutesOf(id)]);
    return [...new Set(all)].filter((id) => this.isMet(id));
  }

  substitutesOf(id: string): string[] {
    return this.#once(`substitutesOf ${id}`, () => {
      return [...this.family.parts].flatMap(([other, { value }]) =>
        value.insteadOf?.some((ref) => ref.id === id) ? [other] : [],
      );
    });
  }

  carriersOf(id: string): string[] {
    return this.#once(`carriersOf ${id}`, () => this.meant(this.part(id).sitsOn?.map(({ ref }) => ref)));
  }

  /** The unit has nothing that could carry the part, so it counts as carried. */
  needsNoCarrier(id: string): boolean {
    return this.carriersOf(id).length === 0;
  }

  coversOf(id: string): string[] {
    return this.#once(`coversOf ${id}`, () => this.meant(this.part(id).behind).filter((cover) => cover !== id));
  }

  fastenersOf(id: string): string[] {
    return this.#once(`fastenersOf ${id}`, () => this.meant(this.part(id).fastenedBy));
  }

  /** What a fastener fastens. */
  fastenedBy(fastener: string): string[] {
    return this.#once(`fastenedBy ${fastener}`, () =>
      this.partIds.filter((id) => this.fastenersOf(id).includes(fastener)),
    );
  }

  sealsOf(id: string): string[] {
    return this.#once(`sealsOf ${id}`, () =>
      this.partIds.filter((seal) => this.part(seal).seals?.some((ref) => ref.id === id)),
    );
  }

  /** The adjustments that a part locks. */
  lockedBy(lock: string): string[] {
    return this.#once(`lockedBy ${lock}`, () =>
      this.partIds.filter((id) => this.meant(this.part(id).lockedBy).includes(lock)),
    );
  }

  ridesOn(id: string, carrier: string, seen: readonly string[] = []): boolean {
    if (seen.includes(id)) return false;
    return this.carriersOf(id).some((one) => one === carrier || this.ridesOn(one, carrier, [...seen, id]));
  }

  piecesOf(id: string): number {
    return this.#once(`piecesOf ${id}`, () => {
      const { quantity, sitsOn } = this.part(id);
      const stated = this.value(quantity)?.value;
      if (stated !== undefined) return stated;
      const counts = (sitsOn ?? []).flatMap(({ count }) => count?.value ?? []);
      return counts.length === 0 ? 1 : counts.reduce((sum, count) => sum + count, 0);
    });
  }

  isRingOrClamp(id: string): boolean {
    const kind = this.part(id).kind?.value;
    return kind === 'retaining-ring' || kind === 'clamp';
  }

  freesWhenLoose(fastener: string, id: string): boolean {
    const own = this.part(fastener).freesWhen?.value;
    if (own !== undefined) return own === 'loose';
    return this.part(fastener).kind?.value === 'clamp' || this.part(id).freesWhen?.value === 'loose';
  }

  isToldAsRenewed(id: string): boolean {
    return this.part(id).renew?.value === 'on-condition' && this.world.outcomes.get(id) === 'renewed';
  }

  /** It goes back into the unit that it came with. */
  isUsedAgain(id: string): boolean {
    return this.#once(`isUsedAgain ${id}`, () => {
      const { renew } = this.part(id);
      return (
        this.comesWithUnit(id) && this.belongsToFinished(id) && renew?.value !== 'always' && !this.isToldAsRenewed(id)
      );
    });
  }

  #once<Value>(key: string, find: () => Value): Value {
    if (!this.#known.has(key)) this.#known.set(key, find());
    return this.#known.get(key) as Value;
  }
}
