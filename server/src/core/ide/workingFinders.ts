import type { FamilyView } from '../analysis/familyView';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import { tightened } from '../analysis/statedTorques';
import type { BuildSet, BuildSpace } from '../builds';
import type { QuantityValue } from '../model/values';
import { withExactUnits } from '../workings/exactUnits';
import { isGauge, measurandsOf } from '../workings/gaugeFit';
import { gaugeWorking } from '../workings/gaugeWorking';
import { limitCases } from '../workings/limitCases';
import { limitWorking, limitWorkingsOf } from '../workings/limitWorking';
import { toolFitWorkings } from '../workings/toolFitWorking';
import { toolsHolding, toolsWith } from '../workings/toolNamed';
import { isTorqueTool, torquesToReach } from '../workings/toolTorque';
import { torqueToolWorking } from '../workings/toolTorqueWorking';
import { type TorqueCase, torqueCasesOfInstruction, torqueCasesOfPart } from '../workings/torqueCases';
import { torqueWorking } from '../workings/torqueWorking';
import type { Working } from '../workings/working';
import type { Place, PlaceOwner } from './place';

/** A working, and the builds that it is for where its function tells them apart. */
export interface FoundWorking {
  readonly working: Working;
  readonly holds: { readonly set: BuildSet; readonly space: BuildSpace } | undefined;
}

type OwnerKind = PlaceOwner['is'];
type OwnerOf<Kind extends OwnerKind> = Extract<PlaceOwner, { is: Kind }>;

interface Finder<Kind extends OwnerKind = OwnerKind> {
  readonly owner: Kind;
  /** The keys at which it is asked; `id` stands for the entry as a whole. */
  readonly keys: readonly string[];
  find(owner: OwnerOf<Kind>, place: Place): readonly FoundWorking[];
}

/** Which calculation is asked for where. A quantity that none of them knows shows its units alone. */
const FINDERS: readonly Finder[] = [
  finder('part', ['torque', 'angle', 'thread', 'property-class', 'bearing-diameter', 'friction', 'prevailing-torque'], {
    find: ({ family, id }, place) => torquesFound(torqueCasesOfPart(family, id), place),
  }),
  finder('limit', ['id', 'accept', 'from'], { find: ({ family, id }, place) => limitsFound(family, id, place) }),
  finder('instruction', ['tighten', 'torque', 'angle', 'passes', 'plus'], {
    find: ({ procedure, view }, place) => torquesFound(torqueCasesOfInstruction(procedure, view), place),
  }),
  finder('instruction', ['measure', 'accept'], {
    find: ({ procedure, view }, place) => measuredFound(procedure, view, place),
  }),
  finder('instruction', ['with', 'hold'], { find: ({ procedure, view }, place) => toolsFound(procedure, view, place) }),
];

/** The calculations that the documents hold for a place. */
export function workingsFound(place: Place): readonly FoundWorking[] {
  const { owner, key } = place;
  const wanted = 'id' in owner && key === owner.id ? 'id' : key;
  return FINDERS.filter((one) => one.owner === owner.is && one.keys.includes(wanted)).flatMap((one) =>
    one.find(owner as never, place),
  );
}

/** Pairs an owner's kind with what is asked of it, so that the finder need not look which kind it got. */
function finder<Kind extends OwnerKind>(
  owner: Kind,
  keys: readonly string[],
  { find }: Pick<Finder<Kind>, 'find'>,
): Finder {
  return { owner, keys, find } as Finder<Kind> as unknown as Finder;
}

/** All torques, or those of the value or the fastener that is pointed at. */
function torquesFound(cases: readonly TorqueCase[], { value, key }: Place): FoundWorking[] {
  const pointed = cases.filter((one) => {
    if (value.is === 'quantity' && key !== 'angle') return isPointedAt(one, value.value);
    return value.is !== 'ref' || key !== 'tighten' || one.joint.id === value.ref.id;
  });
  return pointed.map((one) => found(withExactUnits(torqueWorking(one), one.value), one.where, one.space));
}

function isPointedAt({ value, joint }: TorqueCase, pointed: QuantityValue): boolean {
  const { bearing, friction, prevailing } = joint.facts;
  return [value, bearing?.value, friction?.value, prevailing?.value].includes(pointed);
}

function limitsFound(family: FamilyView, id: string, { value }: Place): FoundWorking[] {
  const cases = limitCases(family, id);
  if (cases.length === 0) return limitWorkingsOf(family, id).map(everywhere);
  const isCase = value.is === 'quantity' && cases.some(({ accept }) => accept === value.value);
  return cases
    .filter(({ accept }) => !isCase || (value.is === 'quantity' && accept === value.value))
    .map((one) => found(withExactUnits(limitWorking(one), one.accept), one.where, one.space));
}

function measuredFound({ family }: ProcedureView, { instruction }: InstructionView, place: Place): FoundWorking[] {
  const id = instruction.verb === 'measure' ? instruction.measure?.id : undefined;
  const isLimit = family?.value.limits?.some((limit) => limit.id.id === id) === true;
  if (family === undefined || id === undefined || !isLimit) return [];
  // What a step accepts by itself has units of its own to show, and the limit beside it.
  return limitsFound(family, id, { ...place, value: { is: 'whole' } });
}

/** A torque tool is held against the torque, a gauge against what it measures, and any other tool against the fastener. */
function toolsFound(procedure: ProcedureView, view: InstructionView, { value, key }: Place): FoundWorking[] {
  const { instruction, where } = view;
  const { tools } = key === 'with' ? toolsWith(procedure, instruction) : toolsHolding(procedure, instruction);
  const { space } = procedure;
  return tools
    .filter(({ ref }) => value.is !== 'ref' || ref === value.ref)
    .flatMap((named): FoundWorking[] => {
      if (isTorqueTool(named.tool)) {
        return tightened(procedure, view).flatMap((fastener) =>
          torquesToReach(procedure, view, fastener).map((torque) =>
            found(torqueToolWorking(named, torque, space, fastener.where), torque.where, space),
          ),
        );
      }
      if (isGauge(named.tool)) {
        return measurandsOf(procedure, view).map((one) =>
          found(gaugeWorking(named, one, space, where), one.where, space),
        );
      }
      if (key !== 'with') return [];
      return tightened(procedure, view).flatMap(({ ref, where: served }) =>
        toolFitWorkings(procedure, ref.id, served).map(everywhere),
      );
    });
}

function found(working: Working, set: BuildSet, space: BuildSpace): FoundWorking {
  return { working, holds: { set, space } };
}

function everywhere(working: Working): FoundWorking {
  return { working, holds: undefined };
}
