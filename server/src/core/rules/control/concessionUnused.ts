import type { ProcedureView } from '../../analysis/procedureView';
import type { Concession } from '../../model/generated/types';
import { pairOf } from '../../syntax/node';
import type { CheckOutcome } from '../defineRule';
import { defineRule } from '../defineRule';
import { inHead } from '../examples';
import type { Finding } from '../finding';
import type { FixDraft, Surroundings } from '../ruleContext';
import { newlineOf } from '../support/newline';
import { listed } from '../support/phrases';
import { removeFromKey } from '../support/removeEdit';
import { isStepUnsettled } from '../support/unsettled';

const CONCESSION =
  'concessions:\n  - rule: torque-unit-missing\n    at: only-step\n    because: the maker gives a bare number\n    by: M. Oduya\n    until: 2099-03-31';

export const concessionUnused = defineRule({
  id: 'concession-unused',
  group: 'control',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A concession matches no finding, or more than the one that it may let stand.',
    why: 'A concession that is left behind lets the next mistake of its kind stand unseen; one that matches several lets none stand.',
    wrong: inHead(CONCESSION, '- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
    right: inHead(CONCESSION, '- tighten: cap-nut\n  torque: 45'),
  },
  messages: {
    none: (rule: string, step: string) =>
      `Nothing at ${step} needs the concession for ${rule} any more; remove the concession`,
    noneAbout: (rule: string, step: string, about: string) =>
      `No finding of ${rule} at ${step} is about ${about}; correct "about", or remove the concession`,
    several: (rule: string, count: number, choices: string) =>
      `This concession matches ${count} findings of ${rule} and so lets none stand; name under "about" the one that is meant: ${choices}`,
    alike: (rule: string, count: number) =>
      `This concession matches ${count} findings of ${rule} that are alike, and so lets none stand; mend all but one`,
  },
  check: {
    outcome(outcome, ctx) {
      const { procedure } = ctx;
      if (procedure === undefined || !isReadable(procedure)) return;
      for (const [place, concession] of (procedure.value.concessions ?? []).entries()) {
        const { rule, at } = concession;
        const matches = outcome.matches[place] ?? [];
        if (rule === undefined || at === undefined || matches.length === 1) continue;
        if (!canBeJudged(ctx.around, procedure, concession, outcome)) continue;
        const about = [rule.id, at.id];
        if (matches.length === 0) {
          const ids = (concession.about ?? []).map((one) => one.text);
          const fixes = (): FixDraft[] => removeConcession(procedure, concession);
          const isElsewhere =
            ids.length > 0 && outcome.findings.some((one) => one.rule === rule.id && one.step === at.id);
          if (isElsewhere) ctx.report(rule.node, 'noneAbout', [rule.id, at.id, listed(ids, 'or')], { about, fixes });
          else if (!isStepUnsettled(procedure, procedure.step(at.id)?.step))
            ctx.report(rule.node, 'none', [rule.id, at.id], { about, fixes });
          continue;
        }
        const choices = choicesAmong(matches);
        if (choices.length === 0) ctx.report(rule.node, 'alike', [rule.id, matches.length], { about });
        else {
          const words = listed(
            choices.map((ids) => ids.join(', ')),
            'or',
          );
          ctx.report(rule.node, 'several', [rule.id, matches.length, words], {
            about,
            fixes: () => choices.flatMap((ids) => nameAbout(concession, ids)),
          });
        }
      }
    },
  },
});

/** Where a document is torn or a link is broken, findings are held back, so a concession may still be needed. */
function isReadable(procedure: ProcedureView): boolean {
  const { kit = [], stores = [] } = procedure.value;
  const linked = procedure.kits.length === kit.length && (stores.length === 0 || procedure.storesComplete);
  return procedure.family !== undefined && linked && procedure.document.problems.length === 0;
}

/** An unknown rule or step is told elsewhere, a concession that has run out as well, and a silenced rule finds nothing. */
function canBeJudged(
  around: Surroundings,
  procedure: ProcedureView,
  { rule, at, until }: Concession,
  outcome: CheckOutcome,
): boolean {
  if (rule === undefined || at === undefined || procedure.step(at.id) === undefined) return false;
  if (!outcome.rules.has(rule.id) || around.settings.severities.get(rule.id) === 'off') return false;
  return until?.day !== undefined && until.day >= around.today;
}

/** The ids of each finding that no other finding has all of, so that they single it out. */
function choicesAmong(findings: readonly Finding[]): (readonly string[])[] {
  return findings
    .filter((one) => findings.every((other) => other === one || !one.about.every((id) => other.about.includes(id))))
    .map((one) => one.about);
}

function nameAbout({ node, about }: Concession, ids: readonly string[]): FixDraft[] {
  const map = node.kind === 'map' ? node : undefined;
  const after = map === undefined ? undefined : pairOf(map, 'at')?.value;
  if (map === undefined || after === undefined || about !== undefined) return [];
  const lineStart = after.item.text.lastIndexOf('\n', (map.pairs[0]?.key.from ?? 0) - 1) + 1;
  const indent = ' '.repeat((map.pairs[0]?.key.from ?? 0) - lineStart);
  const joint = map.flow ? ', ' : `${newlineOf(after.item.text)}${indent}`;
  const range = { item: after.item, from: after.to, to: after.to };
  return [
    {
      title: `Let the finding about ${ids.join(', ')} stand`,
      edits: [{ range, text: `${joint}about: [${ids.join(', ')}]` }],
    },
  ];
}

function removeConcession({ document }: ProcedureView, concession: Concession): FixDraft[] {
  const { root } = document;
  const edit = root === undefined ? undefined : removeFromKey(document, root, 'concessions', concession.node);
  return edit === undefined ? [] : [{ title: 'Remove the concession', edits: [edit] }];
}
