import type { ItemRange, NotPlain, SyntaxProblem } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { quoteFix } from '../support/quoteFix';

const messages = {
  anchor: (text: string) =>
    `"${text}" marks a value to be drawn in elsewhere; write the value out in each place instead`,
  star: () => 'A text that starts with * is not read as it stands; put it in quotes',
  alias: (text: string) => `"${text}" draws in a value from elsewhere; write that value out here`,
  tag: (text: string) => `"${text}" tells YAML a type, which is not needed; take it out`,
  bang: (text: string) => `A text that starts with "${text}" is not read as it stands; put it in quotes`,
  mergeKey: () => '"<<" draws in keys from elsewhere; write those keys out here',
  explicitKey: () => 'A "?" before a key is not needed; write the key with a colon behind it',
  directive: () => 'A line that starts with % speaks to YAML itself; take it out',
  secondDocument: () => 'A file holds one document; take this line out, or move what follows to a file of its own',
  keyNotText: () => 'A key is one plain text; write a word before the colon, or put the text in quotes',
};

export const notPlainYaml = defineRule({
  id: 'not-plain-yaml',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'Anchors, aliases, tags, merge keys, "? " keys, directives and second documents.',
    why: 'A reviewer cannot see what such a step says without looking elsewhere, and a change in one place changes others unseen.',
    wrong: inStep('- say: "! Hot parts"\n  warning: ! Hot parts'),
    right: inStep('- say: "! Hot parts"\n  warning: "! Hot parts"'),
  },
  messages,
  check: {
    syntaxProblem(problem, ctx) {
      if (problem.kind !== 'not-plain') return;
      const { range } = problem;
      switch (problem.what) {
        case 'anchor':
          return reportSign(range, 'anchor', ctx);
        case 'alias':
          return isMergeValue(range) ? undefined : reportAlias(range, ctx);
        case 'tag':
          return reportSign(range, /^!!|^!<|^!\S+$/.test(textOf(range)) ? 'tag' : 'bang', ctx);
        case 'merge-key':
          return ctx.report(range, 'mergeKey', []);
        case 'explicit-key':
          return ctx.report(range, 'explicitKey', []);
        case 'directive':
          return ctx.report(range, 'directive', []);
        case 'second-document':
          return ctx.report(range, 'secondDocument', []);
        case 'key-not-text':
          return ctx.report(range, 'keyNotText', [], { fixes: () => quoteFix(range) });
      }
    },
  },
});

/** A star before a word that nothing marks is a sign of the writer: a bullet, or words to be set in bold. */
function reportAlias(range: ItemRange, ctx: RuleContext<typeof messages>): void {
  const name = /^\*([^\s,\]}]+)/.exec(textOf(range))?.[1];
  const isMarked = ctx.document.problems.some(
    (problem) => isOfKind(problem, 'anchor') && textOf(problem.range).startsWith(`&${name}`),
  );
  const fixes = isMarked ? [] : quoteFix(range);
  if (fixes.length === 0) reportSign(range, 'alias', ctx);
  else ctx.report(range, 'star', [], { fixes: () => fixes });
}

function reportSign(
  range: ItemRange,
  key: 'anchor' | 'alias' | 'tag' | 'bang',
  ctx: RuleContext<typeof messages>,
): void {
  const word = /^\S+/.exec(textOf(range))?.[0] ?? '';
  const shown = { ...range, to: range.from + word.length };
  ctx.report(shown, key, [word], {
    fixes: () => [
      ...(key === 'alias' ? writeOut(range, word.slice(1), ctx.document.problems) : []),
      ...(isWords(range) ? quoteFix(range) : []),
      ...(key === 'alias' || key === 'bang' ? [] : takeOut(range, word)),
    ],
  });
}

function textOf(range: ItemRange): string {
  return range.item.text.slice(range.from, range.to);
}

/** A sign and then a word of a sentence: what stands here was meant as text. */
function isWords(range: ItemRange): boolean {
  const newline = range.item.text.indexOf('\n', range.from);
  const line = range.item.text.slice(range.from, newline < 0 ? undefined : newline);
  return /^(?:[&*!](?!!)\S*\s+\p{L})/u.test(line);
}

function takeOut(range: ItemRange, word: string): FixDraft[] {
  const rest = range.item.text.slice(range.from + word.length);
  const space = /^[ \t]*/.exec(rest)?.[0].length ?? 0;
  const edit = { range: { ...range, to: range.from + word.length + space }, text: '' };
  return [{ title: `Take out ${word}`, edits: [edit] }];
}

/** The value of an anchor in place of what draws it in, where it stands on one line. */
function writeOut(range: ItemRange, name: string, problems: readonly SyntaxProblem[]): FixDraft[] {
  const anchor = problems.find(
    (problem) => isOfKind(problem, 'anchor') && textOf(problem.range).startsWith(`&${name} `),
  );
  const value =
    anchor === undefined
      ? ''
      : textOf(anchor.range)
          .slice(name.length + 2)
          .trim();
  if (value === '' || value.includes('\n')) return [];
  return [{ title: `Write out ${value.length > 40 ? 'the value' : value}`, edits: [{ range, text: value }] }];
}

function isOfKind(problem: SyntaxProblem, what: NotPlain): boolean {
  return problem.kind === 'not-plain' && problem.what === what;
}

/** What a merge key draws in is told with the key. */
function isMergeValue(range: ItemRange): boolean {
  return /<<\s*:\s*(?:\[[^\]]*)?$/.test(range.item.text.slice(0, range.from));
}
