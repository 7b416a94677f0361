import type { Concession } from '../model/generated/types';
import type { Finding } from './finding';

/** A concession with the findings that it could let stand, and the one that it does. */
export interface ConcessionMatch {
  readonly concession: Concession;
  readonly all: readonly Finding[];
  /** Undefined where there is none, where there are several to choose from, or where the concession has expired. */
  readonly conceded: Finding | undefined;
}

/** A concession lets exactly one finding stand: that of its rule at its step, about the ids that it names. */
export function matchConcessions(
  concessions: readonly Concession[],
  findings: readonly Finding[],
  today: string,
): ConcessionMatch[] {
  return concessions.map((concession) => {
    const all = findings.filter((finding) => isMeant(concession, finding));
    const inDate = concession.until?.day !== undefined && concession.until.day >= today;
    return { concession, all, conceded: inDate && all.length === 1 ? all[0] : undefined };
  });
}

function isMeant(concession: Concession, finding: Finding): boolean {
  if (concession.rule?.id !== finding.rule || concession.at?.id !== finding.step) return false;
  return (concession.about ?? []).every((id) => finding.about.includes(id.text));
}
