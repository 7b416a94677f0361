import type { KitView } from '../../analysis/kitView';
import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { defineRule } from '../defineRule';
import { inStep, withKit } from '../examples';
import { firstWithin, fittingsOf } from '../support/fittings';
import { kitSupply, lineName, type SupplyLine } from '../support/kitSupply';

export const partNotInKit = defineRule({
  id: 'part-not-in-kit',
  group: 'kit',
  looksAt: 'procedure',
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
    ref({ ref }, ctx) {
      const { procedure } = ctx;
      const missing = procedure === undefined ? undefined : missingAt(procedure).get(ref);
      if (procedure?.family === undefined || missing === undefined) return;
      const { document } = procedure.family;
      const name = procedure.family.nameOf(ref.id);
      ctx.report(ref.range, 'missing', [name, notHeld(procedure.kits)], {
        about: [ref.id],
        ...(missing.where.isEverything ? {} : { where: { set: missing.where, space: procedure.space } }),
        related: [
          ...missing.lines.map(({ kit, line }) => ({
            range: line.part?.range ?? line.node,
            document: kit.document,
            message: `Only for other builds: ${lineName(line)}`,
          })),
          ...[procedure.family.parts.get(ref.id)?.id.node ?? []].flat().map((range) => ({
            range,
            document,
            message: `The ${name} is declared here`,
          })),
        ],
      });
    },
  },
});

interface Missing {
  readonly where: BuildSet;
  /** Lines that hold the part for other builds. */
  readonly lines: readonly SupplyLine[];
}

const remembered = new WeakMap<ProcedureView, ReadonlyMap<Ref, Missing>>();

/** What the kits lack, by the place at which it is fitted first. */
function missingAt(procedure: ProcedureView): ReadonlyMap<Ref, Missing> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const missing = new Map<Ref, Missing>();
  const supply = kitSupply(procedure);
  for (const [id, fittings] of supply === undefined ? [] : fittingsOf(procedure)) {
    if (procedure.family?.part(id)?.renew?.value !== 'always') continue;
    const lines = supply?.get(id) ?? [];
    const fitted = procedure.space.union(fittings.map((one) => one.where));
    const where = fitted.minus(procedure.space.union(lines.map((one) => one.where)));
    const first = firstWithin(fittings, where);
    if (first !== undefined) missing.set(first.ref, { where, lines });
  }
  remembered.set(procedure, missing);
  return missing;
}

function notHeld(kits: readonly KitView[]): string {
  const [only] = kits;
  return kits.length === 1 && only !== undefined
    ? `the kit ${only.value.kit?.text ?? 'of this procedure'} does not hold one`
    : 'none of the kits holds one';
}
