import type { Unit } from '../../model/facts';
import type { ShapeProblem } from '../../model/shapeProblem';
import { defineRule } from '../defineRule';
import { EXAMPLE_KIT, EXAMPLE_PATHS } from '../exampleDocuments';
import { wholeDocument } from '../examples';
import type { FixDraft } from '../ruleContext';
import { isOfOtherKind } from '../support/documentKinds';
import { ownerText } from '../support/owners';
import { listed } from '../support/phrases';
import { isEcho, isRootTorn } from '../support/tornText';

type Missing = ShapeProblem & { readonly kind: 'key-missing' };

export const keyMissing = defineRule({
  id: 'key-missing',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'safe',
  doc: {
    what: 'A key that must be there is missing, or an instruction has no verb.',
    why: 'A sheet without its number or revision cannot be told from an older one, and an instruction without a verb does nothing.',
    wrong: wholeDocument(EXAMPLE_PATHS.kit, EXAMPLE_KIT.slice(EXAMPLE_KIT.indexOf('\n') + 1)),
    right: wholeDocument(EXAMPLE_PATHS.kit, EXAMPLE_KIT),
  },
  messages: {
    missing: (owner: string, keys: readonly string[]) => {
      const names = listed(keys.map((key) => `"${key}"`));
      return `${capital(owner)} needs ${names}, which ${keys.length === 1 ? 'is' : 'are'} missing here; write ${keys.length === 1 ? 'it' : 'them'} in`;
    },
    noVerb: () => 'This instruction has no verb; start it with one, such as "install:", or write a plain sentence',
  },
  check: {
    unit(unit, ctx) {
      const silent = unit.def === ctx.document.kind && (isRootTorn(ctx.document) || isOfOtherKind(ctx.document));
      for (const problem of unit.problems) {
        if (problem.kind === 'verb-missing' && !isEcho(ctx.document, problem.range))
          ctx.report(problem.range, 'noVerb', []);
      }
      if (silent) return;
      for (const group of groupsOf(unit)) {
        const [first] = group;
        if (first === undefined || isEcho(ctx.document, first.range)) continue;
        const keys = group.map((one) => one.key);
        ctx.report(first.range, 'missing', [ownerText(unit, first.owner), keys], {
          about: keys,
          fixes: () => group.flatMap(versionFix),
        });
      }
    },
  },
});

/** Keys that are missing at one place are told together. */
function groupsOf(unit: Unit): Missing[][] {
  const byNode = new Map<unknown, Missing[]>();
  for (const problem of unit.problems) {
    if (problem.kind !== 'key-missing') continue;
    const group = byNode.get(problem.node);
    if (group === undefined) byNode.set(problem.node, [problem]);
    else group.push(problem);
  }
  return [...byNode.values()];
}

/** Only the version has a value that is certain. */
function versionFix({ key, range }: Missing): FixDraft[] {
  if (key !== 'witnessmark') return [];
  const start = { item: range.item, from: range.from, to: range.from };
  return [{ title: 'Write witnessmark: 1', edits: [{ range: start, text: 'witnessmark: 1\n' }] }];
}

function capital(text: string): string {
  return text.replace(/^[a-z]/, (letter) => letter.toUpperCase());
}
