import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import type { ProseFact } from '../../model/facts';
import type { Prose } from '../../model/values';
import { compareQuantities, type FoundQuantity, formatQuantity, type Quantity } from '../../quantity';
import { pairOf } from '../../syntax/node';
import { sourceRange } from '../../syntax/scalarSource';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { familyTorques } from '../support/familyTorques';
import { fastenersNamed } from '../support/fastenersNamed';
import { addKey } from '../support/mapKey';
import { newlineOf } from '../support/newline';
import { quantitiesIn } from '../support/proseQuantities';
import { sentenceAt } from '../support/sentenceAt';

/** Texts that are not printed as something to do. */
const NOT_DONE: ReadonlySet<string> = new Set(['note', 'alt', 'caption', 'because', 'name', 'what']);

/** A command, or a rule that holds for the job: "tighten", "torque", "to be tightened". */
const COMMANDS = /\b(?:re-?)?(?:tighten|torque)\b|\b(?:to|must|shall|should) be (?:re-?)?(?:tightened|torqued)\b/i;
const SPEAKS_OF_IT = /\btight|\btorqu/i;

const messages = {
  onInstruction: (torque: string, name: string) =>
    `The torque ${torque} of the ${name} stands in a sentence only; write it as the torque of this instruction`,
  elsewhere: (torque: string) =>
    `The torque ${torque} stands in a sentence only; write an instruction that tightens the fastener, with this torque`,
};

export const torqueInProseOnly = defineRule({
  id: 'torque-in-prose-only',
  group: 'quantities',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A sentence, a warning or a title says how tight a fastener is to be, and no instruction states that torque.',
    why: 'It is not checked against the family or the wrench, and on the sheet it does not stand out.',
    wrong: inStep('- tighten: cap-nut\n  say: Tighten the cap nut to 4.6 N·m.'),
    right: inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'),
  },
  messages,
  check: {
    prose(fact, ctx) {
      const { procedure } = ctx;
      const { text } = fact.prose;
      if (procedure === undefined || NOT_DONE.has(fact.key) || !SPEAKS_OF_IT.test(text)) return;
      for (const found of quantitiesIn(fact.prose)) {
        if (found.dimension === 'torque' && standsAlone(procedure, fact.prose, found, ctx)) report(fact, found, ctx);
      }
    },
  },
});

function report({ prose }: ProseFact, found: FoundQuantity, ctx: RuleContext<typeof messages>): void {
  const { start, end } = found.span;
  const written = prose.text.slice(start, end);
  const range = sourceRange(prose.scalar, start, end);
  const ids = objectsOf(ctx.instruction);
  const [first] = ids;
  const fixes = (): FixDraft[] => (first === undefined ? sentenceFix(prose, found, ctx) : keyFix(found, ctx));
  if (first === undefined) ctx.report(range, 'elsewhere', [written], { fixes });
  else ctx.report(range, 'onInstruction', [written, ctx.family?.nameOf(first) ?? first], { about: ids, fixes });
}

/** Whether a torque in a text is an act of its own and no mention of what is stated elsewhere. */
function standsAlone(procedure: ProcedureView, prose: Prose, found: FoundQuantity, ctx: RuleContext<never>): boolean {
  const { start, end } = sentenceAt(prose.text, found.span.start);
  const sentence = prose.text.slice(start, end);
  const named = namedIn(procedure, prose, start, end);
  const objects = objectsOf(ctx.instruction);
  if (objects.length > 0) {
    if (statesTorque(ctx.instruction)) return false;
    return SPEAKS_OF_IT.test(sentence) && (named.length === 0 || named.some((id) => objects.includes(id)));
  }
  // In a step, "is tightened to" tells of another place; before the first step it is all that is said.
  if (!(ctx.step === undefined ? SPEAKS_OF_IT : COMMANDS).test(sentence)) return false;
  return !isStatedNearby(procedure, found.quantity, named, ctx);
}

/** Whether an instruction of the step, or of the procedure where the text is in no step, states this very torque. */
function isStatedNearby(
  procedure: ProcedureView,
  torque: Quantity,
  named: readonly string[],
  ctx: RuleContext<never>,
): boolean {
  const steps = ctx.step === undefined ? procedure.steps : [ctx.step];
  return steps.some(({ instructions }) =>
    instructions.some((view) => {
      const objects = objectsOf(view);
      if (objects.length === 0 || (named.length > 0 && !objects.some((id) => named.includes(id)))) return false;
      return torquesOf(procedure, view).some((one) => compareQuantities(torque, one) !== 'different');
    }),
  );
}

function torquesOf(procedure: ProcedureView, view: InstructionView): Quantity[] {
  const { instruction } = view;
  if (instruction.verb !== 'tighten') return [];
  const { torque, passes = [] } = instruction;
  const own =
    torque === undefined
      ? passes
      : [...passes, ...(torque.is === 'one' ? [torque.value] : torque.cases.map((one) => one.value))];
  const stated = own.flatMap((value) => value.reading.quantity ?? []);
  return stated.length > 0 ? stated : familyTorques({ procedure, instruction: view });
}

function objectsOf(view: InstructionView | undefined): readonly string[] {
  return view?.instruction.verb === 'tighten' ? (view.instruction.tighten ?? []).map((ref) => ref.id) : [];
}

function statesTorque(view: InstructionView | undefined): boolean {
  return (
    view?.instruction.verb === 'tighten' &&
    (view.instruction.torque !== undefined || view.instruction.passes !== undefined)
  );
}

function namedIn(procedure: ProcedureView, prose: Prose, start: number, end: number): string[] {
  if (procedure.family === undefined) return [];
  return fastenersNamed(procedure.family, prose)
    .filter((one) => one.start >= start && one.end <= end)
    .map((one) => one.id);
}

function keyFix({ quantity }: FoundQuantity, ctx: RuleContext<never>): FixDraft[] {
  const node = ctx.instruction?.instruction.node;
  if (node?.kind !== 'map') return [];
  const text = formatQuantity(quantity, { dual: true });
  const edit = addKey(node, pairOf(node, 'tighten'), 'torque', text);
  return edit === undefined ? [] : [{ title: `Write torque: ${text}`, edits: [edit] }];
}

/** A plain sentence that names one fastener becomes an instruction about it; the writer's words stay. */
function sentenceFix(prose: Prose, { quantity, span }: FoundQuantity, ctx: RuleContext<never>): FixDraft[] {
  const { procedure, instruction } = ctx;
  const { node } = prose;
  if (procedure === undefined || node.kind !== 'scalar' || instruction?.instruction.node !== node) return [];
  const sentence = sentenceAt(prose.text, span.start);
  const [id, ...more] = new Set(namedIn(procedure, prose, sentence.start, sentence.end));
  const { text } = node.item;
  const source = text.slice(node.from, node.to);
  const before = text.slice(text.lastIndexOf('\n', node.from - 1) + 1, node.from);
  if (id === undefined || more.length > 0 || source.includes('\n') || !/^\s*-\s+$/.test(before)) return [];
  const torque = formatQuantity(quantity, { dual: true });
  const lineBreak = `${newlineOf(text)}${' '.repeat(before.length)}`;
  const lines = [`tighten: ${id}`, `torque: ${torque}`, `say: ${source}`].join(lineBreak);
  return [{ title: `Write tighten: ${id} with torque: ${torque}`, edits: [{ range: node, text: lines }] }];
}
