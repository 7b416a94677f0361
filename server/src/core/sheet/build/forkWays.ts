import { objectIds } from '../../analysis/instructions';
import type { ProcedureView } from '../../analysis/procedureView';
import type { Instruction } from '../../model/generated/types';
import { walkOf } from '../../walk/walkProcedure';
import type { Thing } from '../sentences/grammar';
import type { Way } from '../sentences/language';
import type { Names } from './names';

/** What the ways of the walk are called in the language of the sheet, by the number of their fork. */
export function forkWays(procedure: ProcedureView, names: Names): (fork: number, isTaken: boolean) => Way | undefined {
  return (fork, isTaken) => {
    const of = walkOf(procedure)?.forks[fork]?.of;
    if (of === undefined) return undefined;
    if (of.is === 'optional') {
      return { is: 'optional', title: names.written(of.step.title) ?? of.step.step?.id ?? '', done: !isTaken };
    }
    const said = checkSaid(of.instruction, procedure, names);
    if (said !== undefined) return { is: 'check', said, holds: !isTaken };
    return { is: 'result', what: resultOf(of.instruction, procedure, names), right: !isTaken };
  };
}

/** What a check wants to be true, without its full stop. */
function checkSaid(one: Instruction, { family }: ProcedureView, names: Names): string | undefined {
  if (one.verb !== 'check' || one.check === undefined) return undefined;
  const { check } = one;
  if (check.is === 'prose') return unclosed(names.written(check.prose));
  const known = family?.value.checks?.find((entry) => entry.id.id === check.ref.id);
  return unclosed(names.written(known?.value.say));
}

function unclosed(sentence: string | undefined): string | undefined {
  return sentence?.trim().replace(/\.$/u, '');
}

function resultOf(one: Instruction, procedure: ProcedureView, names: Names): Thing | undefined {
  const [id] = objectIds(one);
  if (id === undefined) return undefined;
  if (procedure.family?.part(id) !== undefined) return names.part(id, procedure.space.everything);
  const value = names.value(id);
  return value.name === id ? undefined : value;
}
