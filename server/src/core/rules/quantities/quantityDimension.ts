import type { QuantityFact } from '../../model/facts';
import type { ProcedureReading, Reading } from '../../model/generated/types';
import { type QuantityValue, valuesOf } from '../../model/values';
import { type Dimension, type QuantityProblem, type Unit, usualUnits } from '../../quantity';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { isCutShort } from '../support/cutShort';
import { listed } from '../support/phrases';
import { quantityRange, writtenAt } from '../support/quantityRange';

/** Words that may stand in place of a value, and the key under which each may. */
const WORD_KEYS: Readonly<Record<string, string>> = { cure: 'wait', 'record-only': 'accept' };

const messages = {
  dimension: (written: string, found: string, expected: string, units: string) =>
    `${written} is a unit of ${found}; ${withArticle(expected)} is written in ${units}`,
  unknown: (written: string, units: string) =>
    units === '' ? `There is no unit ${written}` : `There is no unit ${written}; did you mean ${units}?`,
  noNumber: (text: string) => `"${text}" is no value; write a number and its unit`,
  word: (word: string, key: string) => `The word ${word} stands under ${key} only; write a number and its unit here`,
  noUnit: (text: string, units: string) =>
    units === '' ? `The value ${text} has no unit; write one` : `The value ${text} has no unit; write ${units}`,
  comma: (written: string, readings: string) =>
    readings === ''
      ? `The number ${written} has a comma; write a decimal point, and spaces between thousands`
      : `The number ${written} has a comma; write ${readings}, with a decimal point`,
  commas: (written: string, points: string) =>
    `Two numbers in ${written} have a comma; write ${points}, with decimal points`,
  openBracket: () => 'The bracket that opens here is not closed; write ) behind the second value',
  reversed: () => 'The range starts with its greater end; write the smaller one first',
  trailing: (text: string) => `"${text}" is no part of the value; leave it out, or write it as a note`,
  mixed: (unit: string) => `Two units stand in one value; write all of it in ${unit}`,
};

export const quantityDimension = defineRule({
  id: 'quantity-dimension',
  group: 'quantities',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'A value that cannot be read for its place: the wrong kind of unit, none, no number, a decimal comma, a range the wrong way round, or words behind it.',
    why: 'What cannot be read cannot be checked, and at the bench 5,0 is taken for 50.',
    wrong: inStep('- tighten: cap-nut\n  torque: 4,6 ± 0,3 N·m'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
  },
  messages,
  check: {
    stores({ tools = [] }, ctx) {
      for (const { value: tool } of tools)
        if (tool.kind?.value?.startsWith('torque-')) expect(tool.range, 'torque', ctx);
    },
    family({ value }, ctx) {
      for (const { value: reading } of value.readings ?? []) expectReading(reading, ctx);
    },
    procedure({ value }, ctx) {
      for (const { value: reading } of value.readings ?? []) expectReading(reading, ctx);
    },
    quantity(fact, ctx) {
      const { value } = fact;
      if (value.word !== undefined) reportWord(fact, value.word, ctx);
      else if (!isCutShort(value)) {
        const commas = certainCommas(value);
        if (commas.length > 1) reportCommas(value, commas, ctx);
        for (const problem of value.reading.problems) {
          const isTold = (commas.length > 1 && commas.includes(problem)) || isListWithoutBrackets(fact, problem);
          if (!isTold) report(value, problem, ctx);
        }
      }
    },
  },
});

/** Passes that stand on the line as in a sentence are told as the list that they should be. */
function isListWithoutBrackets({ key, value }: QuantityFact, problem: QuantityProblem): boolean {
  return key === 'passes' && problem.kind === 'trailing-text' && /^\s*,/.test(value.text.slice(problem.span.start));
}

/** Commas that can be read in one way only; the commas of one value are one slip and are mended together. */
function certainCommas({ reading }: QuantityValue): QuantityProblem[] {
  return reading.problems.filter((one) => one.kind === 'decimal-comma' && one.replacement !== undefined);
}

function reportCommas(
  value: QuantityValue,
  commas: readonly QuantityProblem[],
  ctx: RuleContext<typeof messages>,
): void {
  const start = Math.min(...commas.map(({ span }) => span.start));
  const end = Math.max(...commas.map(({ span }) => span.end));
  const [written, points] = [value.text.slice(start, end), withPoints(value.text, commas, start, end)];
  const range = quantityRange(value, { start, end });
  ctx.report(range, 'commas', [written, points], {
    fixes: () => [{ title: `Write ${points}`, safety: 'safe', edits: [{ range, text: points }] }],
  });
}

function withPoints(text: string, commas: readonly QuantityProblem[], start: number, end: number): string {
  let written = '';
  let at = start;
  for (const { span, replacement = '' } of commas) {
    written += text.slice(at, span.start) + replacement;
    at = span.end;
  }
  return written + text.slice(at, end);
}

/** Whatever stands where any value may must still be of the kind that its owner is about. */
function expect(
  value: QuantityValue | undefined,
  expected: string | undefined,
  ctx: RuleContext<typeof messages>,
): void {
  const { quantity } = value?.reading ?? {};
  if (value === undefined || quantity === undefined || expected === undefined || quantity.dimension === expected)
    return;
  const written = value.text.slice(quantity.unitSpan.start, quantity.unitSpan.end);
  const units = usualUnits(expected as Dimension);
  const range = quantityRange(value, quantity.unitSpan);
  ctx.report(range, 'dimension', [written, spoken(quantity.dimension), spoken(expected), symbols(units)], {
    fixes: () => units.map((unit) => ({ title: `Write ${unit.symbol}`, edits: [{ range, text: unit.symbol }] })),
  });
}

function expectReading(reading: Reading | ProcedureReading, ctx: RuleContext<typeof messages>): void {
  for (const value of valuesOf(reading.accept)) expect(value, reading.quantity?.value, ctx);
}

function reportWord({ key, value }: QuantityFact, word: string, ctx: RuleContext<typeof messages>): void {
  const wanted = WORD_KEYS[word];
  if (wanted !== undefined && wanted !== key) ctx.report(value.node, 'word', [word, wanted]);
}

function report(value: QuantityValue, problem: QuantityProblem, ctx: RuleContext<typeof messages>): void {
  const range = problem.kind === 'number-missing' ? value.node : quantityRange(value, problem.span);
  const details = { fixes: () => fixesOf(value, problem) };
  const text = value.text.trim();
  switch (problem.kind) {
    case 'wrong-dimension': {
      const { written, found, expected, candidates } = problem;
      ctx.report(range, 'dimension', [written, spoken(found), spoken(expected), symbols(candidates)], details);
      break;
    }
    case 'unit-unknown':
      ctx.report(range, 'unknown', [problem.written, symbols(problem.nearest)], details);
      break;
    case 'number-missing':
      ctx.report(range, 'noNumber', [text]);
      break;
    case 'unit-missing':
      if (value.dimension === 'torque') break;
      ctx.report(range, 'noUnit', [writtenAt(value, problem.span), unitsWanted(value, problem.candidates)], details);
      break;
    case 'decimal-comma':
      ctx.report(range, 'comma', [problem.written, listed(problem.readings, 'or')], details);
      break;
    case 'range-reversed':
      ctx.report(range, 'reversed', [], details);
      break;
    case 'trailing-text':
      if (opensBracket(problem.text)) ctx.report(range, 'openBracket', [], details);
      else ctx.report(range, 'trailing', [problem.text], details);
      break;
    case 'units-mixed':
      ctx.report(range, 'mixed', [problem.unit.symbol], details);
      break;
  }
}

function fixesOf(value: QuantityValue, problem: QuantityProblem): FixDraft[] {
  const range = quantityRange(value, problem.span);
  const write = (text: string, title = `Write ${text}`): FixDraft => ({ title, edits: [{ range, text }] });
  switch (problem.kind) {
    case 'wrong-dimension':
      return problem.candidates.map((unit) =>
        write(gapBefore(value, problem, unit) + unit.symbol, `Write ${unit.symbol}`),
      );
    case 'unit-unknown':
      return problem.nearest.map((unit) =>
        write(gapBefore(value, problem, unit) + unit.symbol, `Write ${unit.symbol}`),
      );
    case 'decimal-comma':
      // A comma that can be read in one way only is mended unseen.
      if (problem.replacement !== undefined) return [{ ...write(problem.replacement), safety: 'safe' }];
      return problem.readings.map((reading) => write(reading));
    case 'unit-missing':
      return value.dimension === 'any' ? [] : problem.candidates.map((unit) => addUnit(value, problem.insertAt, unit));
    case 'trailing-text':
      if (opensBracket(problem.text)) return [write(`${problem.text})`, 'Close the bracket')];
      return problem.replacement === '' ? [{ ...write('', 'Take it away'), safety: 'safe' }] : [];
    default:
      return problem.replacement === undefined ? [] : [write(problem.replacement)];
  }
}

function opensBracket(text: string): boolean {
  return text.startsWith('(') && /\d/.test(text) && !text.includes(')');
}

/** A unit such as ° stands against its number, and one with a space before it may take its place. */
function gapBefore(value: QuantityValue, { span }: QuantityProblem, unit: Unit): string {
  return unit.gap === 'space' && /\d$/.test(value.text.slice(0, span.start)) ? ' ' : '';
}

function withArticle(noun: string): string {
  return `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}

function addUnit(value: QuantityValue, at: number, unit: Unit): FixDraft {
  const text = unit.gap === 'space' ? ` ${unit.symbol}` : unit.symbol;
  return { title: `Write ${unit.symbol}`, edits: [{ range: quantityRange(value, { start: at, end: at }), text }] };
}

/** Where any kind of value may stand, nobody can tell which unit is wanted. */
function unitsWanted(value: QuantityValue, candidates: readonly Unit[]): string {
  return value.dimension === 'any' ? '' : symbols(candidates);
}

function symbols(units: readonly Unit[]): string {
  return listed(
    units.map((unit) => unit.symbol),
    'or',
  );
}

function spoken(dimension: string): string {
  return dimension.replaceAll('-', ' ');
}
