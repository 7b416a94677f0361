import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import type { Ref } from '../../model/values';
import { defineRule } from '../defineRule';
import { inStep, withFamily, withFiles } from '../examples';
import { firstWithin, fittingsOf } from '../support/fittings';
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
  looksAt: 'procedure',
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
    ref({ ref }, ctx) {
      const { procedure } = ctx;
      const short = procedure === undefined ? undefined : shortAt(procedure).get(ref);
      if (procedure?.family === undefined || short === undefined) return;
      const { where, needed, held, lines } = short;
      ctx.report(ref.range, 'short', [procedure.family.nameOf(ref.id), needed, held, procedure.kits.length], {
        about: [ref.id],
        ...(where.isEverything ? {} : { where: { set: where, space: procedure.space } }),
        related: lines.map(({ kit, line }) => ({
          range: line.quantity?.node ?? line.node,
          document: kit.document,
          message: `The quantity of ${lineName(line)}`,
        })),
      });
    },
  },
});

interface Short {
  readonly where: BuildSet;
  readonly needed: number;
  readonly held: number;
  readonly lines: readonly SupplyLine[];
}

const remembered = new WeakMap<ProcedureView, ReadonlyMap<Ref, Short>>();

/** What the kits hold too few of, by the place at which it is fitted first. */
function shortAt(procedure: ProcedureView): ReadonlyMap<Ref, Short> {
  const known = remembered.get(procedure);
  if (known !== undefined) return known;
  const shorts = new Map<Ref, Short>();
  const supply = kitSupply(procedure);
  for (const [id, fittings] of supply === undefined ? [] : fittingsOf(procedure)) {
    if (procedure.family?.part(id)?.renew?.value !== 'always') continue;
    const short = worstShortage(procedure, id, supply?.get(id) ?? []);
    const first = short === undefined ? undefined : firstWithin(fittings, short.where);
    if (short !== undefined && first !== undefined) shorts.set(first.ref, short);
  }
  remembered.set(procedure, shorts);
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
