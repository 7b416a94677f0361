import type { Figure } from '../../model/generated/types';
import { pairOf } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inFamily } from '../examples';
import { isEcho } from '../support/tornText';

export const figureTextMissing = defineRule({
  id: 'figure-text-missing',
  group: 'form',
  since: '0.1.0',
  severity: 'warning',
  fix: 'none',
  doc: {
    what: 'A figure has no text that says what it shows.',
    why: 'Whoever cannot see the figure, on a poor print or with a screen reader, does not learn what it shows.',
    wrong: inFamily('figures:\n  section: { file: ../figures/section.svg }'),
    right: inFamily(
      'figures:\n  section: { file: ../figures/section.svg, alt: The seal in its groove; the bevel faces the cover }',
    ),
  },
  messages: {
    missing: () => 'This figure has no text for whoever cannot see it; say in "alt" what it shows',
  },
  check: {
    unit(unit, ctx) {
      if (unit.def !== 'family/figure' && unit.def !== 'procedure/figure') return;
      const { node } = unit;
      if (node.kind !== 'map' || isEcho(ctx.document, node)) return;
      const { alt } = unit.value as Figure;
      const pair = pairOf(node, 'alt');
      // A key without a value is told as such.
      if (pair !== undefined && (pair.value === undefined || alt === undefined)) return;
      if (alt !== undefined && alt.text.trim() !== '') return;
      ctx.report(alt?.node ?? pairOf(node, 'file')?.value ?? node.pairs[0]?.key ?? node, 'missing', []);
    },
  },
});
