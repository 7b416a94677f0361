import type { ItemRange, ScalarNode, SyntaxProblem } from '../../syntax/node';
import { quoteValueAt } from '../../syntax/quoteValue';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { indentFix } from '../support/indentFix';
import { mends, quoteFix, restOfLine } from '../support/quoteFix';
import { findScalar, firstWithSameKey, isDoubled } from '../support/tornText';

const messages = {
  broken: (what: string) => what,
  conflict: () =>
    'Two versions stand here, as a merge left them; keep one of them and take out the lines that mark them',
  glued: (key: string) => `A space is missing behind the colon of "${key}"; write one`,
  twice: (key: string) => `"${key}" stands twice here and only the first one counts; take one of them out`,
};

export const notYaml = defineRule({
  id: 'not-yaml',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A text that cannot be read as YAML: an open quote or bracket, a second colon, a tab, a merge left undone, a key that stands twice.',
    why: 'What cannot be read is missing on the sheet: the fitter never sees the step, or sees half of it.',
    wrong: inStep('- say: Stop here: the shaft breaks'),
    right: inStep('- say: "Stop here: the shaft breaks"'),
  },
  messages,
  check: {
    syntaxProblem(problem, ctx) {
      if (problem.kind === 'broken') reportBroken(problem, ctx);
      if (problem.kind === 'conflict-marker' && opensConflict(problem, ctx.document.problems)) {
        ctx.report(problem.range, 'conflict', []);
      }
    },
    unit(unit, ctx) {
      for (const problem of unit.problems) {
        if (problem.kind !== 'duplicate-key' || problem.declares || isDoubled(ctx.document)) continue;
        const first = firstWithSameKey(unit.node, problem.range)?.key;
        ctx.report(problem.range, 'twice', [problem.key], {
          about: [problem.key],
          related: first === undefined ? [] : [{ range: first, message: `The first "${problem.key}" stands here` }],
        });
      }
    },
  },
});

function reportBroken(problem: SyntaxProblem & { kind: 'broken' }, ctx: RuleContext<typeof messages>): void {
  const open = openQuoteOf(problem.range);
  const glued = open === undefined ? gluedKey(problem.range) : undefined;
  if (glued !== undefined) {
    ctx.report(glued.range, 'glued', [glued.key], { fixes: () => [glued.fix] });
    return;
  }
  const range = open === undefined ? visibleRange(problem.range) : restOfLine(open.item, open.from);
  const fixes = (): FixDraft[] => {
    const certain = [...(open === undefined ? [] : closeQuote(open)), ...indentFix(ctx.document, problem.range)];
    return certain.length > 0 || isTab(problem.range) ? certain : quoteFix(range);
  };
  ctx.report(range, 'broken', [problem.message], { fixes });
}

/** A key whose colon its value stands against: what was read as one long key is two words and a missing space. */
function gluedKey(blamed: ItemRange): { range: ItemRange; key: string; fix: FixDraft } | undefined {
  const { item } = blamed;
  const from = item.text.lastIndexOf('\n', blamed.from - 1) + 1;
  const [, before = '', key] = /^([\s-]*)([a-z][a-z-]*):(?=[^\s:/])/.exec(item.text.slice(from)) ?? [];
  if (key === undefined) return undefined;
  const range = restOfLine(item, from + before.length);
  const at = range.from + key.length + 1;
  const gap = { item, from: at, to: at };
  return mends(gap, ' ')
    ? { range, key, fix: { title: 'Write a space', edits: [{ range: gap, text: ' ' }] } }
    : undefined;
}

/** Where one character is blamed, the value that quotes would mend is what the writer must look at. */
function visibleRange(range: ItemRange): ItemRange {
  if (range.to - range.from > 1 || isTab(range)) return range;
  const quotable = quoteValueAt(range.item, range.from)?.range;
  return quotable !== undefined && quotable.from <= range.from && range.from <= quotable.to ? quotable : range;
}

function isTab(range: ItemRange): boolean {
  return range.item.text.charAt(range.from) === '\t';
}

/** A quote that is never closed runs to the end of its item, far below the line that it was opened in. */
function openQuoteOf(range: ItemRange): ScalarNode | undefined {
  return findScalar(range.item.root, (scalar) => {
    if (scalar.style !== 'single' && scalar.style !== 'double') return false;
    const source = range.item.text.slice(scalar.from, scalar.to).trimEnd();
    return source.length < 2 || source.at(-1) !== source.at(0);
  });
}

function closeQuote(open: ScalarNode): FixDraft[] {
  const quote = open.item.text.charAt(open.from);
  const line = restOfLine(open.item, open.from);
  const range = { item: open.item, from: line.to, to: line.to };
  return mends(range, quote) ? [{ title: 'Close the quote', edits: [{ range, text: quote }] }] : [];
}

/** A conflict is told once, at its first line; its other lines are told only where that one is missing. */
function opensConflict(problem: SyntaxProblem, all: readonly SyntaxProblem[]): boolean {
  const opener = (one: SyntaxProblem): boolean => one.kind === 'conflict-marker' && sign(one) === '<';
  return sign(problem) === '<' || !all.some(opener);
}

/** The first character of a marker was turned into a comment sign, so the second one tells what it is. */
function sign(problem: SyntaxProblem): string {
  return problem.range.item.text.charAt(1);
}
