import type { Cause } from '../../../walk/failure';
import type { Candidate } from './candidate';
import { coolFixes, cureFixes, lockFixes, looseFixes, sealFixes, spunLooseFixes, usedAgainFixes } from './closing';
import { decidingFixes, identifyFixes } from './knowing';
import { leftOffFixes } from './leftOff';
import { alignFixes, markFixes } from './marks';
import { inTheWayFixes, notFittedFixes, nothingHeldFixes } from './ordering';
import { cleanFixes, inspectFixes, lubricateFixes, threadlockFixes } from './preparing';
import { balanceFixes, checkFixes, measureAgainFixes } from './resultFixes';
import type { Scene } from './scene';
import {
  blockedFixes,
  fittedAlreadyFixes,
  leftInFixes,
  receiveFixes,
  stillInUnitFixes,
  unreachableFixes,
} from './takingOff';

/** What could mend a failure, likeliest first; no entry for a cause that only a person can mend. */
const BY_CAUSE: Readonly<Partial<Record<Cause, (scene: Scene) => readonly Candidate[]>>> = {
  'not-cleaned': cleanFixes,
  'threadlocker-on-oil': cleanFixes,
  'not-inspected': inspectFixes,
  'not-lubricated': lubricateFixes,
  'not-threadlocked': threadlockFixes,
  'still-fastened': blockedFixes,
  covered: blockedFixes,
  unreachable: unreachableFixes,
  'fitted-already': fittedAlreadyFixes,
  'still-in-unit': stillInUnitFixes,
  'carrier-missing': receiveFixes,
  'left-in': leftInFixes,
  'in-the-way': inTheWayFixes,
  'not-fitted': notFittedFixes,
  'nothing-held': nothingHeldFixes,
  'used-again': usedAgainFixes,
  'seal-used-again': sealFixes,
  'hot-while-tightened': coolFixes,
  'left-off': leftOffFixes,
  'left-loose': looseFixes,
  'adjustment-open': lockFixes,
  'spun-loose': spunLooseFixes,
  'spun-uncured': cureFixes,
  'mark-missing': markFixes,
  'alignment-missing': alignFixes,
  'hand-unknown': identifyFixes,
  'undecided-yet': decidingFixes,
  undecided: decidingFixes,
  'not-measured': decidingFixes,
  'size-not-chosen': decidingFixes,
  'check-missing': checkFixes,
  'result-void': measureAgainFixes,
  'balance-missing': balanceFixes,
};

export function candidatesFor(scene: Scene): readonly Candidate[] {
  return BY_CAUSE[scene.failure.cause]?.(scene) ?? [];
}
