import { type CalculationStep, step } from '../standards/calculation';
import { formatDesignation, type ThreadDesignation } from '../standards/threadDesignation';
import { minorDiameter, pitchDiameter, stressArea } from '../standards/threadGeometry';
import { roughNumber } from './torqueUnits';
import type { Working } from './working';

export interface NamedThread {
  /** The part that has it. */
  readonly name: string;
  readonly designation: ThreadDesignation;
}

/** What the designations of one or two threads come to, side by side: diameters, pitch and hand. Lengths in mm. */
export function threadWorking(title: string, threads: readonly NamedThread[]): Working {
  const rows = threads.map(({ name, designation }) => ({ label: name, text: sizeWords(designation) }));
  const steps = threads.length === 1 ? threads.flatMap(({ designation }) => geometry(designation)) : [];
  const sources = new Set(
    threads.map(({ designation: { system } }) => (system === 'metric' ? 'ISO 261, ISO 965-1' : 'ASME B1.1')),
  );
  return { title, builds: '', rows, steps, missing: [], sources: [...sources] };
}

function sizeWords(designation: ThreadDesignation): string {
  const { diameter, pitch, system, hand } = designation;
  const count = system === 'unified' ? `, ${roughNumber(25.4 / pitch)} threads to the inch` : '';
  const sizes = [
    `d = ${roughNumber(diameter)} mm`,
    `P = ${roughNumber(pitch)} mm${count}`,
    `d2 = ${roughNumber(pitchDiameter(designation))} mm`,
    `d3 = ${roughNumber(minorDiameter(designation))} mm`,
  ];
  return `${formatDesignation(designation)}: ${sizes.join(', ')}, ${hand}-hand`;
}

function geometry(designation: ThreadDesignation): readonly CalculationStep[] {
  return [
    step('d', 'nominal diameter', 'given', designation.diameter, 'mm'),
    step('P', 'pitch', 'given', designation.pitch, 'mm'),
    step('A_s', 'stress area', 'π/4·(d − 0.9382·P)²', stressArea(designation), 'mm²'),
  ];
}
