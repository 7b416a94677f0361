import type { FamilyView } from '../../analysis/familyView';
import { heldValues, meetings, whereUnless } from '../../analysis/heldValues';
import type { InstructionView, ProcedureView } from '../../analysis/procedureView';
import type { BalanceInstruction } from '../../model/generated/types';
import type { QuantityValue } from '../../model/values';
import { type UnbalanceCase, unbalanceCases, wholeUnbalance } from '../../workings/unbalanceCases';
import { unbalanceText, unbalanceWorking } from '../../workings/unbalanceWorking';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import type { RuleContext } from '../ruleContext';

/** A value that was rounded up lies above by a few per cent, which no balance machine tells. Our own choice. */
const rounding = 1.05;

const family = (permissible: string): string =>
  `max-speed: 120000 rpm
parts:
  rotor: { name: shaft, kind: shaft, sits-on: core }
balance-groups:
  rotor: { name: rotor, members: [rotor, wheel], grade: G 6.3, mass: 250 g, planes: 2, permissible: ${permissible} }`;

interface Words {
  readonly name: string;
  readonly stated: string;
  readonly grade: string;
  readonly allowed: string;
  /** What is left for each plane, in words; '' for one plane. */
  readonly planes: string;
}

const messages = {
  family: ({ name, stated, grade, allowed, planes }: Words) =>
    `The ${name} may keep ${stated}, and ${grade} allows ${allowed} at the highest speed${planes}; mend the value, the grade, the mass or the speed`,
  step: ({ name, stated, grade, allowed, planes }: Words) =>
    `The step accepts ${stated} for the ${name}, and ${grade} allows ${allowed} at the highest speed${planes}; accept no more than that`,
  permissible: (name: string, stated: string, permissible: string) =>
    `The step accepts ${stated} for the ${name}, and the family permits ${permissible}; accept no more than that`,
};

export const unbalanceAboveGrade = defineRule({
  id: 'unbalance-above-grade',
  group: 'limits',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A permissible unbalance, in the family or at a step, that is more than the balance grade allows for the mass of the rotor and its highest speed (ISO 21940-11), or more at the step than the family permits.',
    why: 'The machine passes a rotor that whirls at speed. It wears its bearings out and rubs its housings, and nothing shows on the bench.',
    wrong: inFamily(family('0.25 g·mm')),
    right: inFamily(family('0.12 g·mm')),
  },
  messages,
  check: {
    family(view, ctx) {
      const { space } = view;
      for (const { id, value } of view.value.balanceGroups ?? []) {
        const { permissible } = value;
        if (permissible === undefined) continue;
        for (const one of unbalanceCases(view, id.id, space, space.everything)) {
          const words = isAbove(one, permissible) ? wordsOf(one, permissible) : undefined;
          if (words === undefined) continue;
          ctx.report(permissible.node, 'family', [words], details(one, permissible));
        }
      }
    },
    instruction(view, ctx) {
      const { procedure } = ctx;
      const { instruction } = view;
      if (procedure?.family === undefined || instruction.verb !== 'balance') return;
      balanced(procedure, procedure.family, view, instruction, ctx);
    },
  },
});

function balanced(
  { space }: ProcedureView,
  family: FamilyView,
  { where: within }: InstructionView,
  { balance, grade, accept }: BalanceInstruction,
  ctx: RuleContext<typeof messages>,
): void {
  if (balance === undefined) return;
  const cases = unbalanceCases(family, balance.id, space, within, grade?.text);
  const held = cases.map((value) => ({ value, where: value.where }));
  for (const { first, second, where } of meetings(heldValues(accept, space, within).held, held)) {
    const one = { ...second, where };
    const { permissible } = one.group;
    const found = { ...details(one, first), ...whereUnless(where, within, space) };
    if (isOverStated(one, first, permissible)) {
      ctx.report(first.node, 'permissible', [one.name, first.text.trim(), permissible?.text.trim() ?? ''], {
        ...found,
        related: permittedAt(family, permissible),
      });
    } else if (
      isAbove(one, first) &&
      (grade !== undefined || permissible === undefined || !isAbove(one, permissible))
    ) {
      // Where the family's own value is above the grade, it is told there.
      const words = wordsOf(one, first);
      if (words !== undefined) ctx.report(first.node, 'step', [words], found);
    }
  }
}

function permittedAt(family: FamilyView, permissible: QuantityValue | undefined) {
  if (permissible === undefined) return [];
  return [{ range: permissible.node, document: family.document, message: 'The family permits this' }];
}

function isAbove(one: UnbalanceCase, value: QuantityValue): boolean {
  const stated = wholeUnbalance(one, value);
  return stated !== undefined && one.allowed !== undefined && stated > one.allowed.unbalance * rounding;
}

/** Between two stated values only what converting loses is let pass. */
function isOverStated(one: UnbalanceCase, value: QuantityValue, permissible: QuantityValue | undefined): boolean {
  const stated = wholeUnbalance(one, value);
  const permitted = permissible && wholeUnbalance(one, permissible);
  return stated !== undefined && permitted !== undefined && stated > permitted * 1.01;
}

function wordsOf({ allowed, planes, grade, name, eachPlane }: UnbalanceCase, value: QuantityValue): Words | undefined {
  if (allowed === undefined || grade === undefined) return undefined;
  const unit = value.reading.quantity?.unit;
  const each = planes > 1 ? `, ${unbalanceText(allowed.unbalance / planes, unit)} in each of ${planes} planes` : '';
  const stated = `${value.text.trim()}${eachPlane && planes > 1 ? ' in each plane' : ''}`;
  const written = /^\s*G/i.test(grade) ? grade.trim() : `G ${grade.trim()}`;
  return { name, stated, grade: written, allowed: unbalanceText(allowed.unbalance, unit), planes: each };
}

function details(one: UnbalanceCase, value: QuantityValue) {
  const { id, where, space } = one;
  return {
    about: [id],
    ...whereUnless(where, space.everything, space),
    working: () => [unbalanceWorking(one, value)],
  };
}
