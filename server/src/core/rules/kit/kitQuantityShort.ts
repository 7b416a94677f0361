import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import { defineRule } from '../defineRule';
import { inStep, withFamily, withFiles } from '../examples';
import { type Fitting, firstWithin, fittedParts, fittingsOf } from '../support/fittings';
import { kitSupply, lineName, type SupplyLine } from '../support/kitSupply';
import { piecesNeeded, piecesSupplied } from '../support/pieces';

const TWO_SEALS =
  'parts:\n  cover-seal: { name: cover seal, kind: o-ring, quantity: 2, sits-on: core, seals: cover, behind: [cover], renew: always }';
const KIT_OF_TWO = `witnessmark: 1
kit: K-PK1
family: ../families/pellow-k1.family.yaml
lines:
  - { item: 10, part: cover-seal, number: PK-104, quantity: 2 }
`;

export const kitQuantityShort = defineRule({
  id: 'kit-quantity-short',
  group: 'kit',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'The kits hold fewer pieces of a part that is always renewed than the procedure fits.',
    why: 'The last place gets the old part, or the unit lies open until another kit arrives.',
    wrong: withFamily(inStep('- install: cover-seal'), TWO_SEALS),
    right: withFiles(withFamily(inStep('- install: cover-seal'), TWO_SEALS), { 'kits/pellow-k1.kit.yaml': KIT_OF_TWO }),
  },
  messages: {
    short: (name: string, needed: number, held: number, kits: number) =>
      `The procedure fits ${needed} pieces of the ${name}, but the ${kits === 1 ? 'kit holds' : 'kits hold'} ${held}; raise the quantity of the line`,
  },
  check: {
    procedure(procedure, ctx) {
      const { family, kits, space } = procedure;
      if (family === undefined) return;
      for (const { short, fitting } of shortages(procedure)) {
        const { where, needed, held, lines } = short;
        const { ref, step, view } = fitting;
        ctx.at(step, view).report(ref.range, 'short', [family.nameOf(ref.id), needed, held, kits.length], {
          about: [ref.id],
          ...(where.isEverything ? {} : { where: { set: where, space } }),
          related: lines.map(({ kit, line }) => ({
            range: line.quantity?.node ?? line.node,
            document: kit.document,
            message: `The quantity of ${lineName(line)}`,
          })),
        });
      }
    },
  },
});

interface Short {
  readonly where: BuildSet;
  readonly needed: number;
  readonly held: number;
  readonly lines: readonly SupplyLine[];
}

/** What the kits hold too few of, each at the place at which it is fitted first. */
function shortages(procedure: ProcedureView): { short: Short; fitting: Fitting }[] {
  const shorts: { short: Short; fitting: Fitting }[] = [];
  const supply = kitSupply(procedure);
  for (const id of supply === undefined ? [] : fittedParts(procedure).keys()) {
    if (procedure.family?.part(id)?.renew?.value !== 'always') continue;
    const short = worstShortage(procedure, id, supply?.get(id) ?? []);
    const first = short === undefined ? undefined : firstWithin(fittingsOf(procedure, id), short.where);
    if (short !== undefined && first !== undefined) shorts.push({ short, fitting: first });
  }
  return shorts;
}

/** One part gives one finding: that of the builds which lack most. A build without any piece is another finding. */
function worstShortage(procedure: ProcedureView, id: string, lines: readonly SupplyLine[]): Short | undefined {
  const needs = piecesNeeded(procedure, id) ?? [];
  const supplies = piecesSupplied(procedure, lines) ?? [];
  let worst: Short | undefined;
  for (const need of needs) {
    for (const supply of supplies) {
      const where = need.where.and(supply.where);
      const lacking = need.number - supply.number;
      if (where.isEmpty || lacking <= (worst === undefined ? 0 : worst.needed - worst.held)) continue;
      const there = lines.filter((one) => one.where.overlaps(where));
      worst = { where, needed: need.number, held: supply.number, lines: there };
    }
  }
  return worst;
}
