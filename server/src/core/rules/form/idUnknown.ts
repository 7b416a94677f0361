import { Names } from '../../analysis/names';
import type { BuildSpace, ConditionExpr } from '../../builds';
import type { RefKind } from '../../model/shape';
import type { Mention, Ref } from '../../model/values';
import type { ItemRange, ScalarNode } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { nearest } from '../../text/near';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { RuleContext } from '../ruleContext';
import { knownSpace, mayBeDeclared, namesOfUnit, type WrittenName } from '../support/conditionNames';
import { mentionsOf } from '../support/mentions';
import { nounOf } from '../support/nouns';
import { didYouMean, listed, shortened } from '../support/phrases';
import { isEcho } from '../support/tornText';
import { replaceBy } from '../support/valueFixes';

/** Rules of their own tell these. */
const ELSEWHERE: ReadonlySet<RefKind> = new Set(['part', 'tool', 'consumable']);

const OTHERWISE: Readonly<Partial<Record<RefKind, string>>> = {
  step: 'write the id of a step of this procedure',
  rule: 'write the id of a rule as findings show it',
  check: 'write one of the family, or a sentence',
  figure: 'write one that is declared under "figures", or declare it there',
  reading: 'write one that is declared under "readings", or declare it there',
  'limit-or-reading': 'declare a limit in the family, or a reading here',
  assembly: 'write assembled, parts, or an assembly of the family',
};

const messages = {
  unknown: (noun: string, id: string, near: readonly string[], otherwise: string) =>
    `No ${noun} has the id "${shortened(id)}"; ${didYouMean(near, otherwise)}`,
  mention: (text: string, near: readonly string[]) =>
    `"${text}" names nothing; ${didYouMean(near, 'write the id of a part, tool, step or the like, or take out the signs around it')}`,
  words: (text: string, written: string) => `"${shortened(text)}" is a condition in words; write ${written}`,
  name: (text: string, near: readonly string[]) =>
    `No variant, option or outcome is called "${shortened(text)}"; ${didYouMean(near, 'write one that the family declares')}`,
  value: (name: string, value: string, known: readonly string[]) =>
    `"${name}" is never found to be "${value}"; write ${listed(known, 'or')} behind the equals sign`,
  notOnCondition: (name: string) =>
    `The ${name} is not renewed on condition, so nobody decides on it at the bench; write "renew: on-condition" at the part, or take the condition out`,
};

type Context = RuleContext<typeof messages>;

export const idUnknown = defineRule({
  id: 'id-unknown',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'suggestion',
  doc: {
    what: 'An id that names nothing: a limit, reading, check, step, figure, variant, option, outcome or rule that nobody declares.',
    why: 'The sheet cannot print what is not there: a measurement without its limit is a number that nobody can judge.',
    wrong: inStep('- measure: endplay\n  with: dial-gauge'),
    right: inStep('- measure: end-play\n  with: dial-gauge'),
  },
  messages,
  check: {
    ref({ ref }, ctx) {
      if (ref.id === '' || ELSEWHERE.has(ref.kind) || isEcho(ctx.document, ref.range)) return;
      if (ref.kind === 'rule') reportRule(ref.id, ref.range, ctx);
      else reportRef(ref, ctx);
    },
    prose({ prose }, ctx) {
      for (const { mention, scalar } of mentionsOf(prose)) reportMention(mention, scalar, ctx);
    },
    unit(unit, ctx) {
      for (const name of namesOfUnit(unit)) reportName(name, ctx);
      if (unit.def === 'settings') for (const { id } of severitiesOf(unit.value)) reportRule(id.id, id.node, ctx);
    },
  },
});

function reportRef(ref: Ref, ctx: Context): void {
  const found = Names.of(ctx.snapshot, ctx.document).lookUp(ref.kind, ref.id);
  if (found.is !== 'unknown') return;
  const near = found.near.map((thing) => thing.id);
  const otherwise = OTHERWISE[ref.kind] ?? 'write one that the family declares';
  ctx.report(ref.range, 'unknown', [nounOf(ref.kind), ref.id, near, otherwise], {
    about: [ref.id],
    fixes: () => near.map((id) => replaceBy(ref.range, id)),
  });
}

function reportRule(id: string, range: ItemRange, ctx: Context): void {
  if (ctx.ruleIds.has(id)) return;
  const near = nearest(id, ctx.ruleIds);
  ctx.report(range, 'unknown', ['rule', id, near, OTHERWISE.rule ?? ''], {
    about: [id],
    fixes: () => near.map((one) => replaceBy(range, one)),
  });
}

function reportMention(mention: Mention, scalar: ScalarNode, ctx: Context): void {
  const found = Names.of(ctx.snapshot, ctx.document).lookUpMention(mention);
  if (found.is !== 'unknown') return;
  const range = sourceRange(scalar, mention.from, mention.to);
  const written = scalar.text.slice(mention.from, mention.to);
  const near = found.near.map(({ kind, id }) => (mention.kind === undefined ? `<${id}>` : `<${kind}/${id}>`));
  ctx.report(range, 'mention', [written, near], {
    about: [mention.id],
    fixes: () => near.map((text) => replaceBy(range, text)),
  });
}

function reportName({ node, text, expr }: WrittenName, ctx: Context): void {
  const space = knownSpace(ctx);
  if (space === undefined || text === '' || isEcho(ctx.document, node)) return;
  const written = expr === undefined ? conditionInWords(text, space) : undefined;
  if (written !== undefined) {
    const edits = [replaceBy(node, written)];
    ctx.report(node, 'words', [text, written], { about: [text], fixes: () => edits });
  } else if (expr === undefined) {
    ctx.report(node, 'name', [text, []], { about: [text] });
  } else reportAtoms(node, text, expr, space, ctx);
}

function reportAtoms(node: ScalarNode, text: string, expr: ConditionExpr, space: BuildSpace, ctx: Context): void {
  for (const { atom, near } of space.unknownNames(expr)) {
    if (mayBeDeclared(ctx.around, atom)) continue;
    const details = { about: [text], fixes: () => near.map((one) => replaceBy(node, one)) };
    const known = atom.kind === 'outcome' ? space.facts.outcomes.get(atom.name)?.values : undefined;
    const part = atom.kind === 'outcome' ? ctx.family?.part(atom.name) : undefined;
    if (atom.kind === 'outcome' && known !== undefined) {
      ctx.report(node, 'value', [atom.name, atom.value, known], details);
    } else if (part !== undefined) ctx.report(node, 'notOnCondition', [part.name?.text ?? text], details);
    else ctx.report(node, 'name', [text, near], details);
  }
}

/** What names that `or`, `and` or `not` joins are written as; undefined where one of them is no name. */
function conditionInWords(text: string, { facts }: BuildSpace): string | undefined {
  const isName = (name: string): boolean => facts.variants.some(({ id }) => id === name) || facts.options.has(name);
  const negated = /^not\s+(\S+)$/.exec(text)?.[1];
  if (negated !== undefined) return isName(negated) ? `{ none: [${negated}] }` : undefined;
  const [either, both] = [text.split(/\s+or\s+|\s*\|+\s*/), text.split(/\s+and\s+|\s*&+\s*/)];
  if (either.length > 1 && either.every(isName)) return `[${either.join(', ')}]`;
  return both.length > 1 && both.every(isName) ? `{ all: [${both.join(', ')}] }` : undefined;
}

interface SettingsValue {
  readonly severities?: readonly { readonly id: { readonly id: string; readonly node: ScalarNode } }[];
}

function severitiesOf(value: unknown): NonNullable<SettingsValue['severities']> {
  return (value as SettingsValue).severities ?? [];
}
