import type { KitView } from '../../analysis/kitView';
import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import { defineRule } from '../defineRule';
import { inStep, withKit } from '../examples';
import { type Fitting, firstWithin, fittedParts, fittingsOf } from '../support/fittings';
import { kitSupply, lineName, type SupplyLine } from '../support/kitSupply';

export const partNotInKit = defineRule({
  id: 'part-not-in-kit',
  group: 'kit',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A part that is always renewed is fitted, but on some build no kit of the procedure holds it.',
    why: 'The unit is open, the old part is scrap and no new one is in the box: the fitter waits, or fits the old one again.',
    wrong: withKit(
      inStep('- install: cover-seal'),
      '- { item: 10, part: cover-seal, number: PK-104, quantity: 1, when: k1-a }',
    ),
    right: inStep('- install: cover-seal'),
  },
  messages: {
    missing: (name: string, notHeld: string) => `The ${name} is always renewed, but ${notHeld}; add a line to the kit`,
  },
  check: {
    procedure(procedure, ctx) {
      const { family } = procedure;
      if (family === undefined) return;
      for (const { where, lines, fitting } of missingFrom(procedure)) {
        const { ref } = fitting;
        const { document } = family;
        const name = family.nameOf(ref.id);
        ctx.at(fitting.step, fitting.view).report(ref.range, 'missing', [name, notHeld(procedure.kits)], {
          about: [ref.id],
          ...(where.isEverything ? {} : { where: { set: where, space: procedure.space } }),
          related: [
            ...lines.map(({ kit, line }) => ({
              range: line.part?.range ?? line.node,
              document: kit.document,
              message: `Only for other builds: ${lineName(line)}`,
            })),
            ...[family.parts.get(ref.id)?.id.node ?? []].flat().map((range) => ({
              range,
              document,
              message: `The ${name} is declared here`,
            })),
          ],
        });
      }
    },
  },
});

interface Missing {
  readonly where: BuildSet;
  readonly fitting: Fitting;
  /** Lines that hold the part for other builds. */
  readonly lines: readonly SupplyLine[];
}

/** What the kits lack, each at the place at which it is fitted first. */
function missingFrom(procedure: ProcedureView): Missing[] {
  const missing: Missing[] = [];
  const supply = kitSupply(procedure);
  for (const [id, fitted] of supply === undefined ? [] : fittedParts(procedure)) {
    if (procedure.family?.part(id)?.renew?.value !== 'always') continue;
    const lines = supply?.get(id) ?? [];
    const where = fitted.where.minus(procedure.space.union(lines.map((one) => one.where)));
    const first = where.isEmpty ? undefined : firstWithin(fittingsOf(procedure, id), where);
    if (first !== undefined) missing.push({ where, lines, fitting: first });
  }
  return missing;
}

function notHeld(kits: readonly KitView[]): string {
  const [only] = kits;
  return kits.length === 1 && only !== undefined
    ? `the kit ${only.value.kit?.text ?? 'of this procedure'} does not hold one`
    : 'none of the kits holds one';
}
