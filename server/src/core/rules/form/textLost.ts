import type { ItemRange, ScalarNode } from '../../syntax/node';
import { quoteValueAt } from '../../syntax/quoteValue';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft } from '../ruleContext';
import { quoteRange, restOfLine } from '../support/quoteFix';
import { findScalar } from '../support/tornText';

export const textLost = defineRule({
  id: 'text-lost',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'safe',
  doc: {
    what: 'A text that ends at a # which starts a remark, although it was meant to go on.',
    why: 'What follows the # is not on the sheet: "Tighten bolt #3" becomes "Tighten bolt", and #10-32 UNF is no thread at all.',
    wrong: inStep('- say: Tighten bolt #3 by hand'),
    right: inStep('- say: "Tighten bolt #3 by hand"'),
  },
  messages: {
    lost: (lost: string) =>
      `"${lost}" is lost, since a # with a space before it starts a remark; put the whole text in quotes, or set a space behind the # where it is a remark`,
  },
  check: {
    syntaxProblem(problem, ctx) {
      if (problem.kind !== 'text-lost') return;
      ctx.report(problem.range, 'lost', [shortened(problem.lost)], { fixes: () => fixesOf(problem.range) });
    },
  },
});

function shortened(text: string): string {
  return text.length > 40 ? `${text.slice(0, 39)}…` : text;
}

/** Quotes keep what the writer typed. Within brackets it is a guess where the text was meant to end. */
function fixesOf(lost: ItemRange): FixDraft[] {
  const above = textFromLineAbove(lost);
  const line = restOfLine(lost.item, lost.from);
  if (above !== undefined) return quoteRange({ item: lost.item, from: above.from, to: line.to }, 'safe');
  const edit = quoteValueAt(lost.item, lost.from);
  if (edit === undefined) return [];
  const isRemark = isRemarkOnId(lost, edit.range);
  const isCertain = edit.range.to === line.to && !isRemark;
  const quote: FixDraft = { title: 'Put the text in quotes', safety: isCertain ? 'safe' : 'suggestion', edits: [edit] };
  const behind = { item: lost.item, from: lost.from + 1, to: lost.from + 1 };
  const space: FixDraft = {
    title: 'Set a space behind the #',
    safety: 'suggestion',
    edits: [{ range: behind, text: ' ' }],
  };
  return isRemark ? [space, quote] : [quote];
}

/** Behind a single id, words that the # stands against are a remark more often than the end of a text. */
function isRemarkOnId(lost: ItemRange, value: ItemRange): boolean {
  const { text } = lost.item;
  const before = text.slice(value.from, lost.from).trim();
  return /^[a-z][a-z0-9-]*$/.test(before) && /^#\p{L}/u.test(text.slice(lost.from, lost.to));
}

/** The text that began on an earlier line and ends before the #. */
function textFromLineAbove(lost: ItemRange): ScalarNode | undefined {
  const lineStart = lost.item.text.lastIndexOf('\n', lost.from) + 1;
  return findScalar(
    lost.item.root,
    (scalar) => scalar.style === 'plain' && scalar.from < lineStart && scalar.to > lineStart && scalar.to <= lost.from,
  );
}
