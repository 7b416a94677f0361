import type { Cause, Deed } from './failure';

/** What a failure rests on: that a part is in a state that it came into at some time. Failures with one premise have one cause. */
export interface Premise {
  readonly of: 'about' | 'other';
  readonly is: string;
  /** What brings a part into the state. */
  readonly since: readonly Deed[];
}

const inPlace = (of: Premise['of']): Premise => ({ of, is: 'in place', since: ['fitted'] });
const off = (of: Premise['of']): Premise => ({ of, is: 'off', since: ['removed'] });
const loose = (of: Premise['of']): Premise => ({ of, is: 'loose', since: ['fitted', 'loosened'] });
const unknown = (of: Premise['of']): Premise => ({ of, is: 'not known', since: [] });

/** The premises that different causes share; a cause without one is told for itself. */
export const PREMISES: Readonly<Partial<Record<Cause, Premise>>> = {
  'still-fastened': inPlace('other'),
  covered: inPlace('other'),
  unreachable: inPlace('other'),
  'in-the-way': inPlace('other'),
  'fitted-already': inPlace('about'),
  'still-in-unit': inPlace('about'),
  'left-in': inPlace('about'),
  'not-fitted': off('about'),
  'nothing-held': off('other'),
  'carrier-missing': off('other'),
  'left-off': off('about'),
  'spun-loose': loose('other'),
  'left-loose': loose('about'),
  'hand-unknown': unknown('other'),
  'undecided-yet': unknown('about'),
  'hot-while-tightened': { of: 'other', is: 'hot', since: ['heated'] },
  'seal-used-again': { of: 'about', is: 'spent', since: ['fitted'] },
};
