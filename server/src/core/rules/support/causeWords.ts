import type { ProcedureView } from '../../analysis/procedureView';
import type { Cause, Failure } from '../../walk/failure';
import { nameOf } from './walkFailure';

type Words = (about: string, other: string) => string;

/** Why an instruction cannot be carried out, as a clause behind a colon. Those that cannot be met in a loop are left out. */
const WORDS: Readonly<Partial<Record<Cause, Words>>> = {
  'not-fitted': (about) => `the ${about} is off by then`,
  'still-fastened': (about, other) => `the ${about} is still held by the ${other}`,
  covered: (about, other) => `the ${about} is still behind the ${other}`,
  unreachable: (about, other) => `the ${about} is out of reach behind the ${other}`,
  'fitted-already': (about) => `the ${about} is in place by then`,
  'in-the-way': (about, other) => `the ${other} is in the way of the ${about}`,
  'carrier-missing': (_, other) => `the ${other} is not there`,
  'nothing-held': (_, other) => `the ${other} is not in place`,
  'still-in-unit': (about) => `the ${about} is still in the unit`,
  'used-again': (about) => `the ${about} would be tightened a second time`,
  'seal-used-again': (about) => `the ${about} would be used a second time`,
  'not-cleaned': (about) => `the ${about} is not cleaned`,
  'not-lubricated': (about) => `the ${about} is not lubricated`,
  'not-threadlocked': (about) => `the ${about} has no threadlocker`,
};

/** What a loop fails with the second time round, in words. */
export function causeWords(procedure: ProcedureView | undefined, { cause, about, other }: Failure): string {
  const name = nameOf(procedure, about);
  return WORDS[cause]?.(name, nameOf(procedure, other)) ?? `the ${name} is not as it must be`;
}
