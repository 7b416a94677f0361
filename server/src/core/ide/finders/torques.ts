import type { QuantityValue } from '../../model/values';
import { withExactUnits } from '../../workings/exactUnits';
import { quantityWorking } from '../../workings/quantityWorking';
import { type TorqueCase, torqueCasesOfInstruction, torqueCasesOfPart } from '../../workings/torqueCases';
import { torqueWorking } from '../../workings/torqueWorking';
import type { Working, WorkingRow } from '../../workings/working';
import type { Place, PlaceValue } from '../place';
import { type Finder, type FoundWorking, finder, foundEverywhere, foundOn } from './finder';

const ofJoint = ['torque', 'angle', 'thread', 'property-class', 'bearing-diameter', 'friction', 'prevailing-torque'];

export const torqueFinders: readonly Finder[] = [
  finder('part', ofJoint, ({ family, id }, place) => torquesFound(torqueCasesOfPart(family, id), place)),
  finder('instruction', ['tighten', 'torque', 'angle', 'passes', 'plus'], ({ procedure, view }, place) =>
    torquesFound(torqueCasesOfInstruction(procedure, view), place),
  ),
];

/** All torques, or those of the value or the fastener that is pointed at. */
function torquesFound(cases: readonly TorqueCase[], { value, key }: Place): FoundWorking[] {
  const pointed = cases.filter((one) => {
    if (value.is === 'quantity' && key !== 'angle') return isOf(one, value.value);
    return value.is !== 'ref' || key !== 'tighten' || one.joint.id === value.ref.id;
  });
  const workings = pointed.map((one) => foundOn(workingOf(one), one.where, one.space));
  return [...earlierPass(cases, value), ...workings];
}

/** A pass on the way to the final torque has units of its own. */
function earlierPass(cases: readonly TorqueCase[], value: PlaceValue): FoundWorking[] {
  const isEarlier =
    value.is === 'quantity' && cases.some((one) => one.passes.includes(value.value) && one.value !== value.value);
  const quantity = isEarlier ? value.value.reading.quantity : undefined;
  const working = quantity && quantityWorking(quantity);
  return working === undefined ? [] : [foundEverywhere(working)];
}

/** What was found of the torque stands right behind the torque: it is what most people look for. */
function workingOf(one: TorqueCase): Working {
  const working = withExactUnits(torqueWorking(one), one.value);
  const isVerdict = ({ label }: WorkingRow) => label === 'the torque is' || label === 'usual band';
  const [stated, ...rest] = working.rows.filter((row) => !isVerdict(row));
  const verdict = working.rows.filter(isVerdict).toReversed();
  return { ...working, rows: [...(stated === undefined ? [] : [stated]), ...verdict, ...rest] };
}

function isOf({ value, joint, passes }: TorqueCase, pointed: QuantityValue): boolean {
  const { bearing, friction, prevailing } = joint.facts;
  return [value, ...passes, bearing?.value, friction?.value, prevailing?.value].includes(pointed);
}
