import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import { walkOf } from '../../walk/walkProcedure';
import type { ReportDetails } from '../ruleContext';

/** The builds and ways of a finding that comes from the walk; left out where it holds for all that its place serves. */
export function walkedWhere(procedure: ProcedureView, set: BuildSet, served: BuildSet): Pick<ReportDetails, 'where'> {
  if (served.isWithin(set)) return {};
  return { where: { set, space: procedure.space, forks: (index) => walkOf(procedure)?.forks[index] } };
}
