import { fillLabel, type Labels } from '../labels';
import type { Sheet, UntranslatedText } from '../sheet';
import { formTable, stepsCell, words } from './cells';
import type { CellText, Form, FormCell } from './form';

/** What the sheet prints in another language than its own, each text once, so that nobody meets it unawares. */
export function untranslatedForm({ untranslated = [] }: Sheet, labels: Labels): Form[] {
  if (untranslated.length === 0) return [];
  const columns = [
    [labels.untranslatedKind, 'short'],
    [labels.step, 'short'],
    [labels.untranslatedText, 'wide'],
  ] as const;
  const rows = rowsOf(untranslated).map(({ kind, at, texts }): FormCell[] => [
    words(kindLabel(kind, labels)),
    stepsCell(at),
    { kind: 'text', texts },
  ]);
  const note = { kind: 'note', text: untranslatedNote(untranslated.length, labels) } as const;
  const blocks = [note, formTable('untranslated-list', columns, rows)];
  return [{ name: 'untranslated', title: labels.untranslated, page: 'flow', blocks }];
}

type Row = Pick<UntranslatedText, 'kind' | 'at'> & { texts: CellText[] };

/** Texts of one kind at the same steps share a row: a document without any translation would fill pages with rows. */
function rowsOf(untranslated: readonly UntranslatedText[]): Row[] {
  const rows = new Map<string, Row>();
  for (const { kind, at, text, language } of untranslated) {
    const key = [kind, language, ...at.map(({ stepId }) => stepId)].join(' ');
    const [line] = rows.get(key)?.texts ?? [];
    const joined = line === undefined ? text : `${line.text} · ${text}`;
    rows.set(key, { kind, at, texts: [{ text: joined, strong: false, lang: language }] });
  }
  return [...rows.values()];
}

/** `12 texts have no translation…`, as the sheet and the command line say it. */
export function untranslatedNote(count: number, labels: Labels): string {
  return count === 1 ? labels.untranslatedOne : fillLabel(labels.untranslatedMany, { count });
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
