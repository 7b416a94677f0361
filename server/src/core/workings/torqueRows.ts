import { describeBuilds } from '../builds';
import { boundsOf, formatQuantity, type Statement } from '../quantity';
import { formatPropertyClass, type Strength } from '../standards/propertyClasses';
import { advanceOf } from '../standards/threadGeometry';
import { usualFriction, weakestPart } from '../standards/torqueBand';
import { type Tightening, utilisationAt } from '../standards/torqueTension';
import { type FastenerJoint, memberWords } from './joint';
import type { TorqueCase } from './torqueCases';
import type { TorqueJudgement } from './torqueJudgement';
import { roughBoth, roughNumber, roughTorque, tradeUnits } from './torqueUnits';
import type { WorkingRow } from './working';

/** What a torque comes to, row by row: as it is written and in every unit of the trade, for which joint, against which band. */
export function torqueRows(one: TorqueCase): WorkingRow[] {
  const { value, joint, judgement } = one;
  const { quantity } = value.reading;
  return [
    { label: 'stated', text: value.text.trim() },
    ...howRows(one),
    ...(quantity?.dimension === 'torque' ? [{ label: 'in other units', text: inOtherUnits(quantity) }] : []),
    ...jointRows(one),
    ...(judgement === undefined || quantity === undefined ? [] : bandRows(judgement, quantity, joint)),
  ];
}

/** How the torque is reached, and what follows it. */
function howRows({ passes, angle, joint: { thread } }: TorqueCase): WorkingRow[] {
  const rows: WorkingRow[] = [];
  if (passes.length > 0) rows.push({ label: 'in passes', text: passes.map(({ text }) => text.trim()).join(', then ') });
  if (angle === undefined) return rows;
  const degrees = boundsOf(angle).nominal;
  const moved =
    thread === undefined
      ? ''
      : `, which moves the thread on by ${roughNumber(advanceOf(thread, degrees))} mm (P·angle/360°)`;
  return [...rows, { label: 'then turned by', text: `${formatQuantity(angle)}${moved}` }];
}

function inOtherUnits(quantity: Statement): string {
  const { nominal } = boundsOf(quantity);
  const others = tradeUnits.filter((unit) => unit !== quantity.unit);
  return others.map((unit) => roughTorque(nominal, unit)).join(', ');
}

function jointRows(one: TorqueCase): WorkingRow[] {
  const { thread, facts, members, face, friction, prevailing } = one.joint;
  const { usual, stated } = frictionTexts(friction);
  const rows: (WorkingRow | undefined)[] = [
    thread && facts.thread && { label: 'thread', text: `${facts.thread.value.text.trim()}${handWords(one)}` },
    { label: 'parts', text: members.map(memberWords).join('; ') },
    { label: 'friction', text: stated ?? usual },
    face && {
      label: 'bearing face',
      text: `Ø${roughNumber(face.face.inner)} to Ø${roughNumber(face.face.outer)} mm, ${face.from === 'assumed' ? 'assumed from ' : ''}${face.face.source}`,
    },
    prevailing && { label: 'prevailing torque', text: `${prevailing.value.text.trim()}, to be added` },
  ];
  return rows.filter((row) => row !== undefined);
}

/** ", left-hand", or ", right-hand on W1S; left-hand on W1R" where it differs on these builds. */
function handWords({ joint: { hands }, where, space }: TorqueCase): string {
  const here = hands.map(({ value, where: on }) => ({ value, on: on.and(where) })).filter(({ on }) => !on.isEmpty);
  const [first] = here;
  if (first === undefined) return '';
  if (here.every(({ value }) => value === first.value)) return `, ${first.value}-hand`;
  const sides = (['right', 'left'] as const).map((hand) => {
    const on = space.union(here.filter(({ value }) => value === hand).map((part) => part.on));
    return `${hand}-hand on ${describeBuilds(on, space)}`;
  });
  return `, ${sides.join('; ')}`;
}

function frictionTexts(friction: FastenerJoint['friction']): { usual: string; stated: string | undefined } {
  const { lubricated, asDelivered, dry } = usualFriction;
  return {
    usual: `not stated; assumed ${lubricated} lubricated, ${asDelivered} as delivered, ${dry} dry`,
    stated: friction.kind === 'stated' ? `${friction.thread} as stated, in the thread and under the face` : undefined,
  };
}

function bandRows(judgement: TorqueJudgement, { unit }: Statement, joint: FastenerJoint): WorkingRow[] {
  const { band } = judgement;
  const governing =
    band.governedBy === 'unknown'
      ? `not known, so from class ${band.low.forClass} to class ${band.high.forClass}`
      : `${band.governedBy.role} of class ${formatPropertyClass(band.governedBy.propertyClass)}`;
  return [
    { label: 'weakest part', text: governing },
    {
      label: 'usual band',
      text: `${roughBoth(band.low.torque, unit)} to ${roughBoth(band.high.torque, unit)}`,
    },
    { label: 'proof load reached at', text: `${roughBoth(band.proof.torque, unit)}: ${band.proof.reason}` },
    { label: 'the torque is', text: placeWords(judgement) },
    ...utilisationRows(judgement, joint),
  ];
}

function placeWords({ place, band, rightIn }: TorqueJudgement): string {
  const units = rightIn.map(({ symbol }) => symbol).join(' or ');
  const slip = units === '' ? '' : `; the number would be right in ${units}`;
  switch (place) {
    case 'within':
      return `within the band${slip}`;
    case 'below':
      return `below the band: ${band.low.reason}${slip === '' ? '; right for a thin shaft, a soft housing or a seal' : slip}`;
    case 'above':
      return `above the band: ${band.high.reason}${slip}`;
    case 'above-proof':
      return `above what the joint stands: ${band.proof.reason}${slip}`;
  }
}

/** How far the weakest part is used, from the highest usual friction to the lowest; nothing where no class is known. */
function utilisationRows({ torque }: TorqueJudgement, { joint }: FastenerJoint): WorkingRow[] {
  const weakest = joint && weakestPart(joint);
  if (joint === undefined || weakest === undefined) return [];
  const { friction } = joint;
  const [slippery, rough] =
    friction.kind === 'stated' ? [friction, friction] : [usualFriction.lubricated, usualFriction.asDelivered].map(both);
  if (slippery === undefined || rough === undefined) return [];
  const [most, least] = [slippery, rough].map(({ thread, face }) =>
    used(torque, weakest.strength, {
      thread: joint.thread,
      face: joint.face,
      threadFriction: thread,
      faceFriction: face,
    }),
  );
  if (most === undefined || least === undefined) return [];
  return [
    { label: 'preload', text: `${range(least.preload / 1000, most.preload / 1000)} kN` },
    { label: 'yield stress used', text: `${range(100 * least.ofYield, 100 * most.ofYield)} %` },
    { label: 'proof load used', text: `${range(100 * least.ofProofLoad, 100 * most.ofProofLoad)} %` },
  ];
}

function both(coefficient: number): { readonly thread: number; readonly face: number } {
  return { thread: coefficient, face: coefficient };
}

function used(torque: number, strength: Strength, tightening: Tightening) {
  const { ofYield, ofProofLoad, steps } = utilisationAt(torque, strength, tightening);
  return { ofYield, ofProofLoad, preload: steps.find(({ symbol }) => symbol === 'F')?.value ?? 0 };
}

function range(low: number, high: number): string {
  const [from, to] = [roughNumber(low), roughNumber(high)];
  return from === to ? from : `${from} to ${to}`;
}
