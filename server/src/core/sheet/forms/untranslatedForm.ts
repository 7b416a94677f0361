import { fillLabel, type Labels } from '../labels';
import type { Sheet, UntranslatedText } from '../sheet';
import { formTable, stepsCell, words } from './cells';
import type { Form, FormCell } from './form';

/** What the sheet prints in another language than its own, each text once, so that nobody meets it unawares. */
export function untranslatedForm({ untranslated = [] }: Sheet, labels: Labels): Form[] {
  if (untranslated.length === 0) return [];
  const columns = [
    [labels.untranslatedKind, 'medium'],
    [labels.untranslatedText, 'wide'],
    [labels.step, 'short'],
  ] as const;
  const rows = untranslated.map((one): FormCell[] => [
    words(kindLabel(one.kind, labels)),
    textCell(one),
    stepsCell(one.at),
  ]);
  const count = { kind: 'note', text: untranslatedNote(untranslated.length, labels) } as const;
  return [
    {
      name: 'untranslated',
      title: labels.untranslated,
      page: 'flow',
      blocks: [count, formTable('untranslated-list', columns, rows)],
    },
  ];
}

/** `12 texts have no translation…`, as the sheet and the command line say it. */
export function untranslatedNote(count: number, labels: Labels): string {
  return count === 1 ? labels.untranslatedOne : fillLabel(labels.untranslatedMany, { count });
}

function textCell({ text, language }: UntranslatedText): FormCell {
  return { kind: 'text', texts: [{ text, strong: false, lang: language }] };
}

function kindLabel(kind: UntranslatedText['kind'], labels: Labels): string {
  const words: Record<UntranslatedText['kind'], string> = {
    part: labels.part,
    tool: labels.tool,
    consumable: labels.consumable,
    name: labels.untranslatedName,
    text: labels.untranslatedText,
  };
  return words[kind];
}
