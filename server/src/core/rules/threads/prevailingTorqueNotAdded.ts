import type { FamilyView } from '../../analysis/familyView';
import { anyHeldOf, type HeldValue, whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import { type Tightened, tightened, torquesOfInstruction, torquesOfPart } from '../../analysis/statedTorques';
import type { TightenInstruction } from '../../model/generated/types';
import type { QuantityValue } from '../../model/values';
import { pairOf } from '../../syntax/node';
import { jointsOf } from '../../workings/joint';
import type { Stated } from '../../workings/jointFacts';
import { torqueWorkingsOfInstruction } from '../../workings/torqueWorking';
import { defineRule } from '../defineRule';
import { inStep, withFamily } from '../examples';
import type { FixDraft, RuleContext } from '../ruleContext';
import { addKey } from '../support/mapKey';

const messages = {
  notAdded: (name: string, prevailing: string) =>
    `The ${name} is a locking fastener that takes ${prevailing} before it seats, and the torque leaves that out; measure it and add it with "plus"`,
};

const LOCKING = `parts:
  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: right, torque: 4.6 ± 0.3 N·m, prevailing-torque: 0.6..1.6 N·m }
readings:
  run-down: { name: torque to run the cap nut down, quantity: torque }`;

export const prevailingTorqueNotAdded = defineRule({
  id: 'prevailing-torque-not-added',
  group: 'threads',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A locking fastener is tightened to a torque, and the torque that it takes to turn it before it seats is not added.',
    why: 'The wrench clicks on the friction of the lock, and part of the preload is missing (AC 43.13-1B, 7-40: add the friction drag to the torque).',
    wrong: withFamily(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m'), LOCKING),
    right: withFamily(inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  plus: run-down'), LOCKING),
  },
  messages,
  check: {
    instruction(view, ctx) {
      const { procedure } = ctx;
      const { instruction } = view;
      if (procedure === undefined || instruction.verb !== 'tighten' || instruction.plus !== undefined) return;
      for (const one of tightened(procedure, view)) check(procedure, view, instruction, one, ctx);
    },
  },
});

function check(
  procedure: ProcedureView,
  view: InstructionView,
  instruction: TightenInstruction,
  { ref, part, name, where }: Tightened,
  ctx: RuleContext<typeof messages>,
): void {
  const { family, space } = procedure;
  if (family === undefined) return;
  const own = torquesOfInstruction(instruction, space, where);
  const rest = torquesOfPart(part, space, own.absent);
  const torqued = anyHeldOf([...own.torques, ...rest.torques], space);
  for (const { value: prevailing, where: locking } of prevailingTorques(procedure, family, ref.id)) {
    const silent = torqued.and(locking);
    if (silent.isEmpty) continue;
    ctx.report(ref.range, 'notAdded', [name, prevailing.value.text.trim()], {
      about: [ref.id],
      ...whereUnless(silent, where, space),
      related: [
        {
          range: prevailing.value.node,
          document: family.document,
          message: `The prevailing torque of the ${family.nameOf(prevailing.of)} is stated here`,
        },
      ],
      fixes: () => addReading(procedure, instruction),
      working: () => torqueWorkingsOfInstruction(procedure, view),
    });
  }
}

/** The prevailing torques that can be read, each with all builds on which it is stated. */
function prevailingTorques(
  { space }: ProcedureView,
  family: FamilyView,
  id: string,
): HeldValue<Stated<QuantityValue>>[] {
  const byText = new Map<string, HeldValue<Stated<QuantityValue>>>();
  for (const { prevailing, where } of jointsOf(family, space, id)) {
    if (prevailing === undefined || !isTorque(prevailing.value)) continue;
    const text = prevailing.value.text.trim();
    byText.set(text, { value: prevailing, where: byText.get(text)?.where.or(where) ?? where });
  }
  return [...byText.values()];
}

function isTorque({ reading }: QuantityValue): boolean {
  return reading.quantity?.dimension === 'torque';
}

/** Adds a reading that is declared already; the tool makes up none. */
function addReading({ family, value }: ProcedureView, instruction: TightenInstruction): FixDraft[] {
  const { node } = instruction;
  if (node.kind !== 'map') return [];
  const behind = pairOf(node, 'torque') ?? pairOf(node, 'passes') ?? pairOf(node, 'tighten');
  return [...(value.readings ?? []), ...(family?.value.readings ?? [])].flatMap(({ id, value: reading }) => {
    if (reading.quantity?.value !== 'torque') return [];
    const edit = addKey(node, behind, 'plus', id.id);
    return edit === undefined ? [] : [{ title: `Write plus: ${id.id}`, edits: [edit] }];
  });
}
