import { balanceGrades } from '../../standards/balanceGrades';
import { metricSeries } from '../../standards/metricThreads';
import { readPropertyClass } from '../../standards/propertyClasses';
import { isoSteelClasses, stainlessClasses, stainlessSteels } from '../../standards/strengthTables';
import { expansionCoefficients } from '../../standards/thermalExpansionTable';
import { unifiedSizes } from '../../standards/unifiedThreads';
import type { Candidate } from './candidate';

/** What a text under a key of a family or a procedure can be by the standard that it is written after; nothing under others. */
export function standardTexts(key: string): readonly Candidate[] {
  switch (key) {
    case 'grade':
      return balanceGrades.map((grade) => word(`G ${grade}`, 'ISO 21940-11'));
    case 'thread':
      return [...metricThreads(), ...unifiedThreads()];
    case 'property-class':
      return propertyClasses();
    case 'material':
      return expansionCoefficients.map(({ material }) => word(material, 'its expansion is known'));
    default:
      return [];
  }
}

function word(label: string, detail: string): Candidate {
  return { kind: 'word', label, detail };
}

function metricThreads(): Candidate[] {
  return metricSeries.flatMap(({ diameter, coarse, fine }) => [
    ...(coarse === undefined ? [] : [word(`M${diameter}×${coarse}`, 'coarse, ISO 261')]),
    ...fine.map((pitch) => word(`M${diameter}×${pitch}`, 'fine, ISO 261')),
  ]);
}

/** Sizes with a number sign are left out: unquoted, they would be read as a comment. */
function unifiedThreads(): Candidate[] {
  return unifiedSizes
    .filter(({ size }) => !size.includes('#'))
    .flatMap(({ size, threadsPerInch }) =>
      Object.entries(threadsPerInch).flatMap(([series, count]) =>
        count === undefined ? [] : [word(`${size}-${count} ${series}`, 'ASME B1.1')],
      ),
    );
}

function propertyClasses(): Candidate[] {
  const steel = Object.keys(isoSteelClasses).map((name) => word(name, 'steel bolt, ISO 898-1'));
  const stainless = stainlessSteels.flatMap((one) =>
    Object.keys(stainlessClasses).map((name) => word(`${one}-${name}`, 'stainless, ISO 3506')),
  );
  const nuts = ['04', '05', '5', '6', '8', '9', '10', '12'].filter(isNutClass);
  return [...steel, ...nuts.map((name) => word(name, 'steel nut, ISO 898-2')), ...stainless];
}

function isNutClass(name: string): boolean {
  return readPropertyClass(name)?.system === 'ISO 898-2';
}
