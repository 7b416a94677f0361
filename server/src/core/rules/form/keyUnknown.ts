import type { Unit } from '../../model/facts';
import type { ShapeProblem } from '../../model/shapeProblem';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft } from '../ruleContext';
import { isOfOtherKind } from '../support/documentKinds';
import { ownerText } from '../support/owners';
import { didYouMean, shortened } from '../support/phrases';
import { isEcho, isRootTorn, pairWithKey } from '../support/tornText';

export const keyUnknown = defineRule({
  id: 'key-unknown',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A key that does not belong where it stands, or a second verb in one instruction.',
    why: 'What stands under a key that nothing reads is not on the sheet: a misspelt "torque" leaves the nut without one.',
    wrong: inStep('- tighten: cap-nut\n  torqe: 4.6 ± 0.3 N·m'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
  },
  messages: {
    unknown: (key: string, owner: string, near: readonly string[]) =>
      `"${shortened(key)}" is no key of ${owner}; ${didYouMean(near, 'take it out, or write it as a note')}`,
    secondVerb: (verb: string, key: string) =>
      `One instruction does one thing, and this one has "${verb}" already; start a new entry with "- ${key}:"`,
  },
  check: {
    unit(unit, ctx) {
      for (const problem of unit.problems) {
        if (problem.kind !== 'key-unknown' && problem.kind !== 'second-verb') continue;
        if (isEcho(ctx.document, problem.range)) continue;
        if (problem.kind === 'second-verb') {
          ctx.report(problem.range, 'secondVerb', [problem.verb, problem.key], {
            fixes: () => splitOff(unit, problem),
          });
        } else if (unit.def !== ctx.document.kind || !(isRootTorn(ctx.document) || isOfOtherKind(ctx.document))) {
          ctx.report(problem.range, 'unknown', [problem.key, ownerText(unit, problem.owner), problem.near], {
            about: [problem.key],
            fixes: () =>
              problem.near.map((key) => ({ title: `Write ${key}`, edits: [{ range: problem.range, text: key }] })),
          });
        }
      }
    },
  },
});

/** Gives the second verb and what stands below it an entry of its own, behind a dash like that of the first. */
function splitOff(unit: Unit, problem: ShapeProblem & { kind: 'second-verb' }): FixDraft[] {
  const found = pairWithKey(unit.node, problem.range);
  const first = found?.map.pairs[0]?.key;
  if (found === undefined || first === undefined || found.map.flow) return [];
  const { text } = problem.range.item;
  const lineOf = (offset: number): number => text.lastIndexOf('\n', offset - 1) + 1;
  const dash = text.slice(lineOf(first.from), first.from);
  const from = lineOf(problem.range.from);
  if (!/^\s*- +$/.test(dash) || text.slice(from, problem.range.from).trim() !== '') return [];
  const range = { item: problem.range.item, from, to: problem.range.from };
  return [{ title: `Make "${problem.key}" an instruction of its own`, edits: [{ range, text: dash }] }];
}
