import type { FamilyView } from '../../analysis/familyView';
import { whereUnless } from '../../analysis/heldValues';
import { presentBuilds } from '../../analysis/presentBuilds';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { tightened, torquesOfInstruction, torquesOfPart } from '../../analysis/statedTorques';
import type { BuildSet, BuildSpace } from '../../builds';
import type { QuantityValue } from '../../model/values';
import { convert, formatQuantity, type QuantityProblem, type Unit } from '../../quantity';
import type { FastenerJoint } from '../../workings/joint';
import { type TorqueCase, torqueCasesOf, torqueCasesOfPart } from '../../workings/torqueCases';
import type { TorqueJudgement } from '../../workings/torqueJudgement';
import { torqueWorking } from '../../workings/torqueWorking';
import type { FixDraft, ReportDetails } from '../ruleContext';
import { listed } from './phrases';
import { quantityRange } from './quantityRange';

/** A torque that its joint makes implausible, on all builds on which the same is to be said of it. */
export interface ImplausibleTorque {
  readonly value: QuantityValue;
  readonly joint: FastenerJoint;
  readonly judgement: TorqueJudgement;
  readonly cases: readonly TorqueCase[];
  readonly where: BuildSet;
  readonly served: BuildSet;
  readonly space: BuildSpace;
}

/** The implausible torques that a family states for a part. */
export function implausibleOfPart(family: FamilyView, id: string): ImplausibleTorque[] {
  const { space } = family;
  return grouped(torqueCasesOfPart(family, id), presentBuilds(family, space, id), space);
}

/**
 * The implausible torques of an instruction, where the family states none: one that the family states as well is told
 * there, and one that differs from the family's is told as such.
 */
export function implausibleOfInstruction(procedure: ProcedureView, view: InstructionView): ImplausibleTorque[] {
  const { family, space } = procedure;
  const { instruction } = view;
  if (family === undefined || instruction.verb !== 'tighten') return [];
  return tightened(procedure, view).flatMap(({ ref, part, where }) => {
    const alone = torquesOfPart(part, space, where).absent;
    if (alone.isEmpty) return [];
    const stated = torquesOfInstruction(instruction, space, alone);
    return grouped(torqueCasesOf(family, space, ref.id, stated), where, space);
  });
}

function grouped(cases: readonly TorqueCase[], served: BuildSet, space: BuildSpace): ImplausibleTorque[] {
  const groups = new Map<string, ImplausibleTorque>();
  for (const one of cases) {
    const { value, joint, judgement, where } = one;
    if (judgement?.implausible !== true || !isCertain(value)) continue;
    const { place, rightIn, band } = judgement;
    const said = [joint.facts.thread?.value.text, place, band.high.forClass, ...rightIn.map(({ symbol }) => symbol)];
    const key = `${value.node.from} ${said.join(' ')}`;
    const known = groups.get(key);
    const all = { cases: [...(known?.cases ?? []), one], where: known?.where.or(where) ?? where };
    groups.set(key, { value, joint, judgement, served, space, ...all });
  }
  return [...groups.values()];
}

/** Slips after which nobody can tell which torque is meant have findings of their own. */
const doubtful: ReadonlySet<QuantityProblem['kind']> = new Set<QuantityProblem['kind']>([
  'duals-disagree',
  'decimal-comma',
  'units-mixed',
  'range-reversed',
  'trailing-text',
]);

function isCertain({ reading }: QuantityValue): boolean {
  return !reading.problems.some(({ kind }) => doubtful.has(kind));
}

/** The words that all messages are made of. */
export function wordsOf({ value, joint, judgement }: ImplausibleTorque) {
  return {
    written: value.text.trim(),
    thread: joint.facts.thread?.value.text.trim() ?? '',
    name: joint.name,
    ofClass: classWords(joint, judgement),
    units: unitWords(judgement.rightIn),
    unit: value.reading.quantity?.unit,
  };
}

/** The class that limits the torque, and whose it is where that is not the fastener itself. */
function classWords({ members, id }: FastenerJoint, { band: { governedBy, high } }: TorqueJudgement): string {
  if (governedBy === 'unknown') return `any class up to ${high.forClass}`;
  const member = members.find(({ propertyClass }) => propertyClass === governedBy.propertyClass);
  const whose = member === undefined || member.id === id ? '' : ` of the ${member.name}`;
  return `class ${high.forClass}${whose}`;
}

/** Kilogram-force centimetres lie so near pound inches that both always fit; the rarer one is offered, but not spoken of. */
function unitWords(units: readonly Unit[]): string {
  const usual = units.filter(({ symbol }) => symbol !== 'kgf·cm');
  return listed(
    (usual.length > 0 ? usual : units).map(({ symbol }) => symbol),
    'or',
  );
}

export function detailsOf(found: ImplausibleTorque, family: FamilyView, inFamily: boolean): ReportDetails {
  const { joint, cases, where, served, space } = found;
  const thread = joint.facts.thread?.value;
  const place = thread && { range: thread.node, message: `The thread is ${thread.text.trim()} here` };
  return {
    about: [joint.id],
    ...whereUnless(where, served, space),
    related: place === undefined ? [] : [inFamily ? place : { ...place, document: family.document }],
    fixes: () => unitFixes(found),
    working: () => cases.map(torqueWorking),
  };
}

/** The place of the torque, without what stands in brackets behind it. */
export function torqueRange({ value }: ImplausibleTorque) {
  const { quantity } = value.reading;
  return quantity === undefined ? value.node : quantityRange(value, quantity.span);
}

/** Writes the unit in which the number would be right; a value in brackets is the slip once more, so it is converted anew. */
function unitFixes({ value, judgement }: ImplausibleTorque): FixDraft[] {
  const { quantity } = value.reading;
  if (quantity === undefined) return [];
  return judgement.rightIn.map((unit): FixDraft => {
    const title = `Write ${unit.symbol}`;
    if (quantity.dual === null) {
      return { title, edits: [{ range: quantityRange(value, quantity.unitSpan), text: unit.symbol }] };
    }
    const meant = { ...quantity, unit };
    const dual = convert(meant, quantity.dual.unit === unit ? quantity.unit : quantity.dual.unit);
    return { title, edits: [{ range: value.node, text: formatQuantity({ ...meant, dual }, { dual: true }) }] };
  });
}
