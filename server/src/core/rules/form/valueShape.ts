import type { Unit } from '../../model/facts';
import type { ShapeProblem } from '../../model/shapeProblem';
import type { ItemRange } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { FixDraft, ReportDetails, RuleContext } from '../ruleContext';
import { isOfOtherKind } from '../support/documentKinds';
import { didYouMean, listed, shortened } from '../support/phrases';
import { quoteCut, quoteRange } from '../support/quoteFix';
import { isEcho, isRootTorn, pairWithKey } from '../support/tornText';
import { dayFix, idFix, replaceBy } from '../support/valueFixes';

const MOST_CHOICES = 12;

const messages = {
  empty: (key: string) => `"${shortened(key)}" has no value; write one, or take the key out`,
  needed: (key: string) => `"${shortened(key)}" has no value; write one`,
  comma: (written: string) => `The comma in "${shortened(written)}" cuts the value in two; write a decimal point`,
  list: (key: string, text: string) => `"${key}" wants a list; write [${shortened(text)}]`,
  becameMap: (text: string) =>
    `The colon in "${shortened(text)}" makes a key of what stands before it; put the whole text in quotes`,
  wantsText: () => 'A text belongs here, or a map with "text" and its translations',
  cut: (key: string) => `The comma before "${shortened(key)}" cuts the text in two; put the whole text in quotes`,
  kind: (key: string, wanted: string, found: string) =>
    key === '' ? `Here belongs ${wanted}, not a ${found}` : `"${key}" wants ${wanted}, not a ${found}`,
  choice: (text: string, choices: readonly string[], near: readonly string[]) =>
    `"${shortened(text)}" is none of the choices; ${didYouMean(near, `write ${choicesText(choices)}`)}`,
  flag: (text: string) => `"${shortened(text)}" is neither true nor false; write one of the two`,
  count: (text: string, key: string) => `"${key}" wants a whole number from 1 on, in digits, not "${shortened(text)}"`,
  date: (text: string) => `"${shortened(text)}" is no day of the calendar; write it like 2027-03-01`,
  id: (text: string) =>
    `"${shortened(text)}" cannot be an id; start with a small letter and write at least three small letters, digits and hyphens`,
  version: (text: string) =>
    `Version "${shortened(text)}" of the format is not known; version 1 is, written "witnessmark: 1"`,
  text: (text: string, key: string) =>
    `"${shortened(text)}" is not written as "${key}" wants it${key === 'hazards' ? ': a code such as H225 or EUH066' : ''}`,
};

export const valueShape = defineRule({
  id: 'value-shape',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A value that is empty, or of another kind than its key wants: a list for a text, a word that is none of the choices, a date that is no day.',
    why: 'A value that cannot be read is left out, and the part is then handled as if nothing had been said of it.',
    wrong: inFamily('parts:\n  wheel: { name: wheel, sits-on: core, renew: allways }'),
    right: inFamily('parts:\n  wheel: { name: wheel, sits-on: core, renew: always }'),
  },
  messages,
  check: {
    unit(unit, ctx) {
      const root = unit.def === ctx.document.kind;
      if (root && (isOfOtherKind(ctx.document) || isRootTorn(ctx.document))) return;
      for (const problem of unit.problems) {
        if (isEcho(ctx.document, problem.range)) continue;
        if (!reportComma(unit, problem, ctx)) reportProblem(unit, problem, ctx);
      }
    },
  },
});

/** Between braces a decimal comma leaves the end of a number behind as a key without a value. */
function reportComma(unit: Unit, problem: ShapeProblem, ctx: RuleContext<typeof messages>): boolean {
  const cut = problem.kind === 'empty' || problem.kind === 'cut-at-comma' ? cutNumber(unit, problem.range) : undefined;
  if (cut === undefined) return false;
  const text = cut.item.text.slice(cut.from, cut.to);
  const points = text.replace(/(\d),(?=\d)/g, '$1.');
  ctx.report(cut, 'comma', [text], { fixes: () => [replaceBy(cut, points)] });
  return true;
}

function reportProblem(unit: Unit, problem: ShapeProblem, ctx: RuleContext<typeof messages>): void {
  const { range } = problem;
  const details: ReportDetails = { about: aboutOf(problem), fixes: () => fixesOf(unit, problem) };
  switch (problem.kind) {
    case 'empty':
      ctx.report(range, isNeeded(unit, problem.key) ? 'needed' : 'empty', [problem.key], details);
      break;
    case 'prose-became-map':
      if (problem.node.pairs.length === 1) ctx.report(range, 'becameMap', [sourceOf(problem)], details);
      else ctx.report(problem.node.pairs[0]?.key ?? range, 'wantsText', [], details);
      break;
    case 'cut-at-comma':
      ctx.report(range, 'cut', [problem.key], details);
      break;
    case 'wrong-kind':
      ctx.report(firstLine(problem), 'kind', [problem.key, problem.wanted, problem.found], details);
      break;
    case 'wrong-choice':
      ctx.report(range, 'choice', [problem.text, problem.choices, problem.near], details);
      break;
    case 'wrong-flag':
      ctx.report(range, 'flag', [problem.text], details);
      break;
    case 'wrong-count':
      ctx.report(range, 'count', [problem.text, problem.key], details);
      break;
    case 'wrong-date':
      ctx.report(range, 'date', [problem.text], details);
      break;
    case 'wrong-id':
      ctx.report(range, 'id', [problem.text], details);
      break;
    case 'wrong-version':
      ctx.report(range, 'version', [problem.text], details);
      break;
    case 'wrong-text':
      if (problem.key === 'passes') ctx.report(range, 'list', [problem.key, problem.text], details);
      else ctx.report(range, 'text', [problem.text, problem.key], details);
      break;
    // Keys that are unknown, missing or doubled have rules of their own.
  }
}

/** Keys that the thing they stand in cannot do without. */
const NEEDED: ReadonlySet<string> = new Set([
  ...['witnessmark', 'procedure', 'title', 'revision', 'status', 'family', 'phases', 'phase', 'steps', 'step', 'do'],
  ...['kit', 'lines', 'part', 'number', 'quantity', 'stores', 'variants', 'base', 'parts', 'name', 'rule', 'at'],
  ...['because', 'by', 'until'],
]);

/** An instruction cannot do without its verb, nor a document without what it is called. */
function isNeeded({ def }: Unit, key: string): boolean {
  if (def.startsWith('procedure/verb-')) return key === def.slice('procedure/verb-'.length);
  return NEEDED.has(key) && !(def === 'procedure' && key === 'kit') && !(def === 'procedure' && key === 'stores');
}

/** The value that decimal commas cut, from its start to the end of its last piece. */
function cutNumber(unit: Unit, key: ItemRange): ItemRange | undefined {
  const found = pairWithKey(unit.node, key);
  const start = found?.map.pairs[found.index - 1]?.value;
  if (found === undefined || !found.map.flow || start?.kind !== 'scalar' || start.style !== 'plain') return undefined;
  const { item } = key;
  const joined = (at: number): boolean => /\d,\d/.test(item.text.slice(at - 2, at + 1));
  if (!joined(key.from)) return undefined;
  let end: ItemRange = key;
  for (const next of found.map.pairs.slice(found.index + 1)) {
    if (next.value !== undefined || !joined(next.key.from)) break;
    end = next.key;
  }
  return { item, from: start.from, to: end.to };
}

function aboutOf(problem: ShapeProblem): string[] {
  if ('key' in problem && problem.key !== '') return [problem.key];
  return 'text' in problem ? [problem.text] : [];
}

function fixesOf(unit: Unit, problem: ShapeProblem): FixDraft[] {
  switch (problem.kind) {
    case 'prose-became-map':
      return problem.node.pairs.length === 1 ? quoteRange(problem.range) : [];
    case 'cut-at-comma': {
      const found = pairWithKey(unit.node, problem.range);
      return found === undefined ? [] : quoteCut(found.map, found.index);
    }
    case 'wrong-choice':
      return problem.near.map((choice) => replaceBy(problem.range, choice));
    case 'wrong-flag':
      return (problem.meant === undefined ? ['true', 'false'] : [problem.meant]).map((flag) =>
        replaceBy(problem.range, flag),
      );
    case 'wrong-date':
      return dayFix(problem.range, problem.text);
    case 'wrong-id':
      return idFix(problem.range, problem.text);
    case 'wrong-version':
      return /^1\D/.test(problem.text) ? [replaceBy(problem.range, '1')] : [];
    case 'wrong-text':
      return problem.key === 'passes' ? [replaceBy(problem.range, `[${problem.text}]`)] : [];
    default:
      return [];
  }
}

function sourceOf({ range }: ShapeProblem): string {
  return range.item.text.slice(range.from, range.to).replace(/\s+/g, ' ');
}

/** A list or map that stands in the wrong place is shown by its first line. */
function firstLine({ range }: ShapeProblem): ShapeProblem['range'] {
  const newline = range.item.text.indexOf('\n', range.from);
  return newline < 0 || newline >= range.to ? range : { item: range.item, from: range.from, to: newline };
}

function choicesText(choices: readonly string[]): string {
  if (choices.length <= MOST_CHOICES) return listed(choices, 'or');
  return `${choices.slice(0, MOST_CHOICES).join(', ')} or one of ${choices.length - MOST_CHOICES} more`;
}
