import { type DocumentKind, filePatternOf } from '../../syntax/documentKind';
import type { Item } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { EXAMPLE_KIT, EXAMPLE_PATHS } from '../exampleDocuments';
import { wholeDocument } from '../examples';
import { otherKindOf } from '../support/documentKinds';
import { isEcho } from '../support/tornText';

const NAMES: Readonly<Record<DocumentKind, string>> = {
  procedure: 'a procedure',
  family: 'a family',
  kit: 'a kit',
  stores: 'stores',
  settings: 'settings',
};

const NOTHING: Item = { text: '', root: undefined, problems: [] };

export const documentKindWrong = defineRule({
  id: 'document-kind-wrong',
  group: 'form',
  since: '0.1.0',
  severity: 'error',
  fix: 'none',
  doc: {
    what: 'A document that is empty, is no map of keys and values, or has the keys of another kind than its file name says.',
    why: 'A document of another kind is not read as what it is, so nothing of it is checked or printed.',
    wrong: wholeDocument(
      EXAMPLE_PATHS.kit,
      'witnessmark: 1\nprocedure: OP-12\ntitle: Renew the seal\nphases:\n  - phase: Open\n    steps: []\n',
    ),
    right: wholeDocument(EXAMPLE_PATHS.kit, EXAMPLE_KIT),
  },
  messages: {
    empty: (kind: string) => `Nothing is written here yet; ${kind} starts with the line "witnessmark: 1"`,
    noMap: (kind: string) =>
      `This cannot be read as ${kind}; write keys with a colon behind them, first "witnessmark: 1"`,
    other: (key: string, other: string, kind: string, pattern: string) =>
      `"${key}" belongs to ${other}, but the name of this file makes it ${kind}; name the file ${pattern}, or write the keys of ${kind}`,
  },
  check: {
    document(document, ctx) {
      const kind = NAMES[document.kind];
      if (document.other !== undefined) {
        if (!isEcho(document, document.other)) ctx.report(firstLineOf(document.other), 'noMap', [kind]);
        return;
      }
      if (document.root === undefined || document.root.pairs.length === 0) {
        const item = document.items[0] ?? NOTHING;
        if (document.problems.length === 0 && document.kind !== 'settings')
          ctx.report({ item, from: 0, to: 0 }, 'empty', [kind]);
        return;
      }
      const other = otherKindOf(document);
      if (other === undefined) return;
      ctx.report(other.key, 'other', [other.key.text, NAMES[other.kind], kind, filePatternOf(other.kind)], {
        about: [other.kind],
      });
    },
  },
});

function firstLineOf<Range extends { item: Item; from: number; to: number }>(range: Range): Range {
  const newline = range.item.text.indexOf('\n', range.from);
  return newline < 0 || newline >= range.to ? range : { ...range, to: newline };
}
