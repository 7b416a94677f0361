import type { ProcedureView, StepView } from '../../analysis/procedureView';
import { type JudgePart, RANKS, type Rank } from './rank';
import { judgeHandling } from './rankingHandling';
import { judgeInstall, judgeSeat } from './rankingPutOn';
import { unitBefore } from './rankingState';
import { judgeLoosen, judgeRemove, judgeTighten } from './rankingTakeOff';

/** Keys that hold a part, beside those under which the object of a verb stands. */
const OTHER_KEYS: ReadonlySet<string> = new Set(['to', 'across', 'replace']);

/**
 * Which parts make sense as what an instruction names, by how the unit stands right before it. `at` is its place among the
 * instructions of the step; it may be half typed. `key` is the key behind which the part stands: the verb itself, `to`,
 * `across` or `replace`. Empty where another key holds no part, or the family cannot be read.
 */
export function partRanking(
  procedure: ProcedureView,
  step: StepView,
  at: number,
  verb: string,
  key: string,
): ReadonlyMap<string, Rank> {
  const judge = judgeOf(verb, key);
  const unit = judge === undefined ? undefined : unitBefore(procedure, step, at);
  const ranks = new Map<string, Rank>();
  if (judge === undefined || unit === undefined) return ranks;
  for (const id of unit.unit.ids) {
    const isMet = !unit.meant(id).isEmpty;
    ranks.set(id, isMet ? judge(unit, id) : { rank: RANKS.elsewhere, why: 'not on the builds of this step' });
  }
  return ranks;
}

const OF_VERBS: Readonly<Record<string, JudgePart>> = {
  loosen: judgeLoosen,
  remove: judgeRemove,
  tighten: judgeTighten,
  install: judgeInstall,
  press: judgeInstall,
  seat: judgeSeat,
};

function judgeOf(verb: string, key: string): JudgePart | undefined {
  if (key !== verb && !OTHER_KEYS.has(key)) return undefined;
  if (key === 'replace') return judgeHandling('replace');
  return (key === verb ? OF_VERBS[verb] : undefined) ?? judgeHandling(key === verb ? verb : `${verb} ${key}`);
}
