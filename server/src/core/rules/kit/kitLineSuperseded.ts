import type { KitView } from '../../analysis/kitView';
import type { Line } from '../../model/generated/types';
import type { Text } from '../../model/values';
import { type ItemRange, pairOf } from '../../syntax/node';
import { defineRule } from '../defineRule';
import { inKit } from '../examples';
import type { FixDraft } from '../ruleContext';
import { numbersInFamily } from '../support/numbersInFamily';

export const kitLineSuperseded = defineRule({
  id: 'kit-line-superseded',
  group: 'kit',
  since: '0.1.0',
  severity: 'warning',
  fix: 'suggestion',
  doc: {
    what: 'A line of a kit, or a part of its family, has a number that another number has replaced.',
    why: 'The bag in the box has another number than the sheet, or a part of the old standard is ordered and fitted.',
    wrong: inKit('- { item: 10, part: cover-seal, number: PK-104, superseded-by: PK-114, quantity: 1 }'),
    right: inKit('- { item: 10, part: cover-seal, number: PK-114, replaces: PK-104, quantity: 1 }'),
  },
  messages: {
    line: (old: string, now: string) => `The number ${old} is superseded by ${now}; write ${now}`,
    family: (name: string, old: string, now: string) =>
      `${now} replaces ${old}, but the family still gives the ${name} the number ${old}; write ${now} there`,
  },
  check: {
    kitLine(line, ctx) {
      const { kit } = ctx;
      const successor = kit === undefined ? undefined : successorOf(kit, line);
      if (kit === undefined || line.number === undefined || successor === undefined) return;
      const { number } = line;
      ctx.report(number.node, 'line', [number.text, successor.text], {
        about: line.part === undefined ? [] : [line.part.id],
        related: [{ range: successor.node, message: `The number that supersedes it: ${successor.text}` }],
        fixes: () => writeSuccessor(line, number, successor),
      });
    },
    kit(kit, ctx) {
      for (const { part, old, now, place } of oldInFamily(kit)) {
        const document = kit.family?.document;
        if (document === undefined) continue;
        const name = kit.family?.nameOf(part) ?? part;
        ctx.report(old.node, 'family', [name, old.text, now.text], {
          about: [part],
          related: [{ range: place, document, message: `The number of the ${name} in the family` }],
          fixes: () => [
            {
              title: `Write ${now.text} in the family`,
              edits: [{ document, span: document.spanOf(place), text: sourceOf(now) }],
            },
          ],
        });
      }
    },
  },
});

/** What a line's number is superseded by, as the line says or as another line of the kit does. */
function successorOf(kit: KitView, line: Line): Text | undefined {
  const now = line.number === undefined ? undefined : kit.superseded.get(line.number.text);
  if (now === undefined || now === line.number?.text) return undefined;
  if (line.supersededBy?.text === now) return line.supersededBy;
  return kit.lines.find((one) => one.number?.text === now)?.number;
}

/** A line that names its own successor keeps the history: the old number becomes what the new one replaces. */
function writeSuccessor(line: Line, number: Text, successor: Text): FixDraft[] {
  const title = `Write ${successor.text}`;
  const edits = [{ range: number.node, text: sourceOf(successor) }];
  if (line.supersededBy !== successor) return [{ title, edits }];
  const key = line.node.kind === 'map' ? pairOf(line.node, 'superseded-by')?.key : undefined;
  if (key === undefined || line.replaces !== undefined) return [];
  return [
    { title, edits: [...edits, { range: key, text: 'replaces' }, { range: successor.node, text: sourceOf(number) }] },
  ];
}

interface OldInFamily {
  readonly part: string;
  readonly old: Text;
  readonly now: Text;
  readonly place: ItemRange;
}

function oldInFamily(kit: KitView): OldInFamily[] {
  const { family } = kit;
  if (family === undefined) return [];
  return kit.lines.flatMap(({ number: now, replaces = [] }) =>
    replaces.flatMap((old) => {
      if (now === undefined || now.text === old.text) return [];
      return numbersInFamily(family, old.text).map(({ part, number }) => ({ part, old, now, place: number.node }));
    }),
  );
}

/** As it is written, with quotes where the writer put them. */
function sourceOf({ node }: Text): string {
  return node.item.text.slice(node.from, node.to);
}
