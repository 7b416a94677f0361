import type { DesignationProblem } from './threadDesignation';

/** What is wrong with a designation, in words that can stand in a message: no full stop, the wanted form beside the fault. */
export function designationProblemWords(problem: DesignationProblem): string {
  switch (problem.kind) {
    case 'empty':
      return 'A thread is missing; write for example M5×0.8 or 1/4-28 UNF';
    case 'not-a-thread':
      return 'This is no thread designation; write for example M5×0.8 or 1/4-28 UNF';
    case 'other-system':
      return `A thread of another kind (${problem.name}); only metric (ISO 965-1) and unified (ASME B1.1) ones are read`;
    case 'diameter-missing':
      return 'The nominal diameter is missing behind M; write for example M5×0.8';
    case 'pitch-missing':
      return 'The pitch is missing; write for example M5×0.8 or 1/4-28 UNF';
    case 'pitch-unknown':
      return 'No standard pitch is known for this size, so write the pitch out';
    case 'pitch-too-coarse':
      return `The pitch is too coarse for this diameter${standardOnes(problem.standard)}`;
    case 'series-contradicts-pitch':
      return `${problem.series} of this size has ${problem.threadsPerInch} threads per inch`;
    case 'class-unread':
      return `${problem.written} is no tolerance class; write for example 6g, 6H, 2A or 2B`;
    case 'trailing-text':
      return `${problem.written} is not part of a thread designation`;
  }
}

function standardOnes(pitches: readonly number[]): string {
  return pitches.length === 0 ? '' : `; standard pitches are ${pitches.join(', ')} mm`;
}
