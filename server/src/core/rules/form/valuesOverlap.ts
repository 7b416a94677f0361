import { valuesByBuild } from '../../builds';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { scopeOf } from '../support/scopes';
import { isEcho } from '../support/tornText';

const nut = (hand: string): string =>
  `parts:\n  cap-nut: { name: cap nut, kind: nut, sits-on: core, thread: M5×0.8, hand: ${hand}, torque: 4.6 ± 0.3 N·m }`;

export const valuesOverlap = defineRule({
  id: 'values-overlap',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'Two entries of a value by build hold for the same build.',
    why: 'Nobody can say which of the two values the fitter is to use on that build.',
    wrong: inFamily(nut('{ k1-a: right, big-wheel: left, k1-b: left }')),
    right: inFamily(nut('{ k1-a: right, k1-b: left }')),
  },
  messages: {
    overlap: (first: string, second: string) =>
      `"${second}" and "${first}" both hold for the same builds; make them exclude each other, so that one value is left`,
  },
  check: {
    unit(unit, ctx) {
      if (unit.facts.byBuilds.length === 0) return;
      const values = unit.facts.byBuilds.flatMap(({ byBuild }) => (byBuild.is === 'cases' ? [byBuild] : []));
      if (values.length === 0) return;
      const scope = scopeOf(unit, ctx);
      if (scope === undefined) return;
      for (const { cases, node } of values) {
        if (isEcho(ctx.document, node)) continue;
        const entries = cases.flatMap((one) =>
          one.expr === undefined ? [] : [{ key: one.key.text, expr: one.expr, node: one.key }],
        );
        const { overlaps } = valuesByBuild(scope.space, entries, { within: scope.set });
        for (const { first, second, where } of overlaps) {
          const [one, other] = [entries[first], entries[second]];
          // The same key twice is told as such.
          if (one === undefined || other === undefined || one.key === other.key) continue;
          ctx.report(other.node, 'overlap', [one.key, other.key], {
            about: [one.key, other.key].sort(),
            where: { set: where, space: scope.space },
            related: [{ range: one.node, message: `"${one.key}" holds for them as well` }],
          });
        }
      }
    },
  },
});
