import type { KitView } from '../../analysis/kitView';
import type { ProcedureView } from '../../analysis/procedureView';
import type { BuildSet } from '../../builds';
import { defineRule } from '../defineRule';
import { inStep } from '../examples';
import { kitSupply, lineName, pathOfKit, type SupplyLine } from '../support/kitSupply';
import { partsUsed } from '../support/partsUsed';
import { mayUseMore } from '../support/unsettled';

export const kitLineUnused = defineRule({
  id: 'kit-line-unused',
  group: 'kit',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A line of the kit holds a part that the procedure never fits on the builds that the line is for.',
    why: 'A new part is left in the box. Either the kit is too large, or the step that fits the part was forgotten.',
    wrong: inStep('- remove: cover-seal'),
    right: inStep('- remove: cover-seal\n- install: cover-seal'),
  },
  messages: {
    unused: (name: string, lines: string) =>
      `The kit holds the ${name} (${lines}), but no instruction fits it; fit it, or take it out of the kit`,
  },
  check: {
    procedure(procedure, ctx) {
      for (const { part, kit, lines, where } of unusedLines(procedure)) {
        const path = pathOfKit(procedure, kit);
        if (path === undefined) continue;
        const name = procedure.family?.nameOf(part) ?? part;
        ctx.report(path.node, 'unused', [name, lines.map(({ line }) => lineName(line)).join('; ')], {
          about: [part],
          ...(where.isEverything ? {} : { where: { set: where, space: procedure.space } }),
          related: lines.map(({ line }) => ({
            range: line.part?.range ?? line.node,
            document: kit.document,
            message: `The ${name} in the kit`,
          })),
        });
      }
    },
  },
});

interface UnusedLines {
  readonly part: string;
  readonly kit: KitView;
  readonly lines: readonly SupplyLine[];
  readonly where: BuildSet;
}

/** The lines of one part in one kit are one finding. */
function unusedLines(procedure: ProcedureView): UnusedLines[] {
  const supply = kitSupply(procedure);
  if (supply === undefined) return [];
  const found = [...supply].flatMap(([part, lines]) => {
    if (procedure.family?.part(part) === undefined) return [];
    const used = partsUsed(procedure).get(part) ?? procedure.space.nothing;
    const unused = lines.filter((one) => !one.where.isEmpty && !one.where.overlaps(used));
    return [...new Set(unused.map((one) => one.kit))].map((kit): UnusedLines => {
      const ofKit = unused.filter((one) => one.kit === kit);
      return { part, kit, lines: ofKit, where: procedure.space.union(ofKit.map((one) => one.where)) };
    });
  });
  return found.length > 0 && mayUseMore(procedure, ['part']) ? [] : found;
}
