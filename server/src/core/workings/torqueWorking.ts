import type { FamilyView } from '../analysis/familyView';
import type { InstructionView, ProcedureView } from '../analysis/procedureView';
import { describeBuilds } from '../builds';
import type { CalculationStep } from '../standards/calculation';
import type { FastenerJoint } from './joint';
import { type TorqueCase, torqueCasesOfInstruction, torqueCasesOfPart } from './torqueCases';
import { bandOf, type TorqueJudgement } from './torqueJudgement';
import { torqueRows } from './torqueRows';
import type { Working } from './working';

/** How the torques of a part stand to its joint; one working for each build on which something differs. */
export function torqueWorkingsOfPart(family: FamilyView, id: string): Working[] {
  return torqueCasesOfPart(family, id).map(torqueWorking);
}

/** The same for what an instruction tightens. */
export function torqueWorkingsOfInstruction(procedure: ProcedureView, view: InstructionView): Working[] {
  return torqueCasesOfInstruction(procedure, view).map(torqueWorking);
}

/** How a torque stands to its joint, line by line. */
export function torqueWorking(one: TorqueCase): Working {
  const { joint, where, space, judgement } = one;
  return {
    title: `Torque of the ${joint.name}`,
    builds: describeBuilds(where, space),
    rows: torqueRows(one),
    steps: judgement === undefined ? [] : bandSteps(judgement),
    missing: joint.missing,
    sources: sourcesOf(joint),
  };
}

/** The steps to the high end whole; of those to the other ends only what differs. */
function bandSteps({ band }: TorqueJudgement): CalculationStep[] {
  const told = new Set<string>();
  return [band.high, band.low, band.proof].flatMap(({ steps }) =>
    steps.filter(({ symbol, value }) => {
      const line = `${symbol} ${value}`;
      const isNew = !told.has(line);
      told.add(line);
      return isNew;
    }),
  );
}

function sourcesOf({ joint, members, face, thread }: FastenerJoint): string[] {
  if (joint === undefined || thread === undefined || bandOf(joint) === undefined) return [];
  const designations = thread.system === 'metric' ? 'ISO 965-1, ISO 68-1' : 'ASME B1.1';
  const strengths = members.flatMap(({ strength }) => (strength === undefined ? [] : [strength.standard]));
  const classes = strengths.length === 0 ? ['ISO 898-1 (all classes)'] : strengths;
  const faces = face === undefined ? [] : [face.face.source];
  return [...new Set([designations, ...classes, ...faces, 'VDI 2230 (torque, preload, utilisation)'])];
}
