import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { FamilyView } from '../../server/src/core/analysis/familyView';
import { checkDocument } from '../../server/src/core/rules/checkDocument';
import { THREAD_RULES } from '../../server/src/core/rules/threads';
import { type TorqueCase, torqueCasesOfPart } from '../../server/src/core/workings/torqueCases';
import { TODAY } from '../support/checkText';
import { openFiles } from '../support/memoryFiles';
import { type PlausibleJoint, torqueUnit } from './plausibleJoints';

const FOLDER = resolve('sample-procedures/families');

/** The families among the samples, by name. */
export async function sampleFamilies(): Promise<ReadonlyMap<string, FamilyView>> {
  const names = readdirSync(FOLDER).filter((name) => name.endsWith('.family.yaml'));
  const views = await Promise.all(
    names.map(async (name) => [name, await familyOf(readFileSync(`${FOLDER}/${name}`, 'utf8'))] as const),
  );
  return new Map(views);
}

/** A family read from a text. */
export async function familyOf(text: string): Promise<FamilyView> {
  const { document } = await openFiles({ 'a.family.yaml': text }, 'a.family.yaml');
  const view = FamilyView.of(document);
  if (view === undefined) throw new Error('no family');
  return view;
}

/** Every torque of a family with each joint that it is for. */
export function casesOf(family: FamilyView): TorqueCase[] {
  return [...family.parts.keys()].flatMap((id) => torqueCasesOfPart(family, id));
}

/** The same for the experiment with slips; those that seal or are turned on by an angle are only looked at from above. */
export function asPlausible({ value, joint }: TorqueCase): PlausibleJoint[] {
  const { quantity } = value.reading;
  if (joint.joint === undefined || quantity?.form !== 'single') return [];
  return [{ joint: joint.joint, written: quantity.number.text, unit: quantity.unit }];
}

/** A family in which one torque is written in a wrong unit, its number as it was. */
export interface WrittenSlip {
  readonly text: string;
  readonly part: string;
  readonly written: string;
  readonly meant: string;
}

/** Each torque of a family in the units that change it eight times or more; what stands in brackets behind it is left out. */
export function slipsIn(family: FamilyView): WrittenSlip[] {
  const { document } = family;
  return casesOf(family).flatMap(({ value, joint }) => {
    const { quantity } = value.reading;
    if (quantity === undefined) return [];
    const span = document.spanOf(value.node);
    return ['N·m', 'lbf·in', 'lbf·ft', 'kgf·cm'].map(torqueUnit).flatMap((unit): WrittenSlip[] => {
      const factor = unit.factor / quantity.unit.factor;
      if (factor < 8 && factor > 1 / 8) return [];
      const written = value.text.slice(0, quantity.unitSpan.start) + unit.symbol;
      const text = document.text.slice(0, span.start) + written + document.text.slice(span.end);
      return [{ text, part: joint.id, written: unit.symbol, meant: quantity.unit.symbol }];
    });
  });
}

/** The titles of the fixes that the rules on threads offer for the torque of a part. */
export async function toldIn(text: string, part: string): Promise<readonly string[]> {
  const { workspace, document } = await openFiles({ 'a.family.yaml': text }, 'a.family.yaml');
  const { findings } = checkDocument(workspace.snapshot, document, { today: TODAY, rules: THREAD_RULES });
  return findings
    .filter(({ about }) => about.includes(part))
    .flatMap((finding) => finding.fixes().map(({ title }) => title));
}
