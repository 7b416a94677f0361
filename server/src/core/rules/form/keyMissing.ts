import type { Unit } from '../../model/facts';
import { VERBS } from '../../model/generated/shapes';
import { isVerb } from '../../model/instructionDef';
import type { ShapeProblem } from '../../model/shapeProblem';
import type { ItemRange, ScalarNode } from '../../syntax/node';
import { nearest } from '../../text/near';
import { defineRule } from '../defineRule';
import { EXAMPLE_KIT, EXAMPLE_PATHS } from '../exampleDocuments';
import { wholeDocument } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { isOfOtherKind } from '../support/documentKinds';
import { newlineOf } from '../support/newline';
import { ownerText } from '../support/owners';
import { didYouMean, listed } from '../support/phrases';
import { isEcho, isRootTorn } from '../support/tornText';
import { replaceBy } from '../support/valueFixes';

type Missing = ShapeProblem & { readonly kind: 'key-missing' };

const messages = {
  missing: (owner: string, keys: readonly string[]) => {
    const names = listed(keys.map((key) => `"${key}"`));
    return `${capital(owner)} needs ${names}, which ${keys.length === 1 ? 'is' : 'are'} missing here; write ${keys.length === 1 ? 'it' : 'them'} in`;
  },
  noSuchVerb: (word: string, near: readonly string[]) =>
    `"${word}" is no verb that an instruction can start with; ${didYouMean(near, 'write a verb')}`,
  glued: (verb: string) => `"${verb}:" is read as the start of a sentence; write a space behind the colon`,
  bareVerb: (verb: string) => `"${verb}" alone is read as a sentence; write a colon behind it, and what it is done to`,
  noVerb: () => 'This instruction has no verb; start it with one, such as "install:", or write a plain sentence',
};

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
  messages,
  check: {
    unit(unit, ctx) {
      const silent = unit.def === ctx.document.kind && (isRootTorn(ctx.document) || isOfOtherKind(ctx.document));
      for (const problem of unit.problems) {
        if (problem.kind === 'verb-missing' && !isEcho(ctx.document, problem.range))
          reportVerb(unit, problem.range, ctx);
      }
      if (unit.def === 'procedure/sentence' && unit.node.kind === 'scalar') reportSentence(unit.node, ctx);
      if (silent) return;
      for (const group of groupsOf(unit)) {
        const [first] = group;
        if (first === undefined || isEcho(ctx.document, first.range)) continue;
        const keys = group.map((one) => one.key);
        ctx.report(first.range, 'missing', [ownerText(unit, first.owner), keys], {
          about: keys,
          fixes: () => group.flatMap((one) => versionFix(one, newlineOf(ctx.document.text))),
        });
      }
    },
  },
});

type Context = RuleContext<typeof messages>;

/** Words of the trade for what an instruction says with one of its own verbs. */
const SAME: Readonly<Record<string, readonly string[]>> = {
  ...{ fit: ['install'], refit: ['install'], mount: ['install'], insert: ['install'], assemble: ['install'] },
  ...{ detach: ['remove'], withdraw: ['remove'], dismount: ['remove'], unscrew: ['loosen', 'remove'] },
  ...{ undo: ['loosen'], slacken: ['loosen'], torque: ['tighten'], fasten: ['tighten'], screw: ['tighten'] },
  ...{ lubricate: ['apply'], oil: ['apply'], grease: ['apply'], coat: ['apply'], wash: ['clean'], wipe: ['clean'] },
  ...{ examine: ['inspect'], look: ['inspect'], gauge: ['measure'], test: ['check'], verify: ['check'] },
  ...{ write: ['record'], scrap: ['discard'], ship: ['send'], warm: ['heat'] },
};

function reportVerb({ node }: Unit, range: ItemRange, ctx: Context): void {
  const word = node.kind === 'map' ? (node.pairs[0]?.key.text ?? '') : '';
  const near = SAME[word.toLowerCase()] ?? (word === '' ? [] : nearest(word, VERBS));
  if (near.length === 0) ctx.report(range, 'noVerb', []);
  else ctx.report(range, 'noSuchVerb', [word, near], { fixes: () => near.map((verb) => suggest(range, verb)) });
}

/** A verb that its colon or the space behind it did not make a key. */
function reportSentence(node: ScalarNode, ctx: Context): void {
  const [, verb = '', glued] = /^([a-z]+)(:\S|$)/.exec(node.text) ?? [];
  if (node.style !== 'plain' || !isVerb(verb) || isEcho(ctx.document, node)) return;
  const at = node.from + verb.length + 1;
  const gap = { item: node.item, from: at, to: at };
  if (glued === '') ctx.report(node, 'bareVerb', [verb], { about: [verb] });
  else {
    const fix: FixDraft = { title: 'Write a space', safety: 'suggestion', edits: [{ range: gap, text: ' ' }] };
    ctx.report(node, 'glued', [verb], { about: [verb], fixes: () => [fix] });
  }
}

function suggest(range: ItemRange, text: string): FixDraft {
  return { ...replaceBy(range, text), safety: 'suggestion' };
}

/** Keys that are missing at one place are told together. */
const NO_GROUPS: readonly Missing[][] = [];

function groupsOf(unit: Unit): readonly Missing[][] {
  if (unit.problems.length === 0) return NO_GROUPS;
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
function versionFix({ key, range }: Missing, newline: string): FixDraft[] {
  if (key !== 'witnessmark') return [];
  const start = { item: range.item, from: range.from, to: range.from };
  return [{ title: 'Write witnessmark: 1', edits: [{ range: start, text: `witnessmark: 1${newline}` }] }];
}

function capital(text: string): string {
  return text.replace(/^[a-z]/, (letter) => letter.toUpperCase());
}
