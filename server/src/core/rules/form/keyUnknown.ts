import type { Unit } from '../../model/facts';
import { verbPairOf } from '../../model/instructionDef';
import type { ShapeProblem } from '../../model/shapeProblem';
import type { ItemRange } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, ReportDetails } from '../ruleContext';
import { isOfOtherKind } from '../support/documentKinds';
import { ownerText } from '../support/owners';
import { didYouMean, shortened } from '../support/phrases';
import { isEcho, isRootTorn, pairWithKey } from '../support/tornText';
import { replaceBy } from '../support/valueFixes';

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
    noVerb: (word: string, near: readonly string[]) =>
      `"${shortened(word)}" is no verb that an instruction can start with; ${didYouMean(near, 'write one, or a plain sentence')}`,
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
          const details: ReportDetails = {
            about: [problem.key],
            fixes: () => problem.near.map((key) => replaceBy(problem.range, key)),
          };
          if (standsForVerb(unit, problem.range))
            ctx.report(problem.range, 'noVerb', [problem.key, problem.near], details);
          else ctx.report(problem.range, 'unknown', [problem.key, ownerOf(unit, problem), problem.near], details);
        }
      }
    },
  },
});

/** A misspelt verb: the first key of an instruction that has no other verb. */
function standsForVerb(unit: Unit, key: ItemRange): boolean {
  const { node } = unit;
  return (
    unit.def.startsWith('procedure/verb-') &&
    node.kind === 'map' &&
    node.pairs[0]?.key === key &&
    verbPairOf(node) === undefined
  );
}

/** A text with its translations is a thing of its own, whatever it stands in. */
function ownerOf(unit: Unit, problem: ShapeProblem & { kind: 'key-unknown' }): string {
  const map = pairWithKey(unit.node, problem.range)?.map;
  const isTranslated = map !== unit.node && map?.pairs.some(({ key }) => key.text === 'text') === true;
  return isTranslated ? 'a text with translations, which are de, en and es' : ownerText(unit, problem.owner);
}

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
