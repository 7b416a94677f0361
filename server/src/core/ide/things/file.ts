import { documentValue } from '../../analysis/documentUnit';
import { FamilyView } from '../../analysis/familyView';
import type { Snapshot } from '../../analysis/snapshot';
import { fileNameOf, type Uri } from '../../analysis/uri';
import { countBuilds } from '../../builds';
import type { SyntaxDocument } from '../../syntax/readDocument';
import { type Card, type CardRow, row } from './card';

/** What a path leads to: the document there by its name and size. */
export function fileCard(snapshot: Snapshot, uri: Uri): Card | undefined {
  const document = snapshot.document(uri);
  if (document === undefined) return undefined;
  return { ...headOf(document), id: fileNameOf(uri) };
}

function headOf(document: SyntaxDocument): Pick<Card, 'name' | 'kind' | 'rows'> {
  const { kind, uri } = document;
  const named = (name: string | undefined, rows: CardRow[]) => ({ name: name ?? fileNameOf(uri), kind, rows });
  const family = FamilyView.of(document);
  if (family !== undefined) return named(family.value.name?.text, familyRows(family));
  const kit = documentValue(document, 'kit');
  if (kit !== undefined) return { ...named(kit.name?.text ?? kit.kit?.text, kitRows(kit)), kind: 'kit bill' };
  const stores = documentValue(document, 'stores');
  if (stores !== undefined) {
    const held = `${counted(stores.tools, 'tool')}, ${counted(stores.consumables, 'consumable')}`;
    return named(stores.stores?.text, row('Holds', held));
  }
  return named(documentValue(document, 'procedure')?.title?.text, []);
}

function familyRows(family: FamilyView): CardRow[] {
  const { variants = [], options = [] } = family.value;
  const names = (things: typeof variants | typeof options) => things.map(({ id, value }) => value.name?.text ?? id.id);
  return [
    ...row('Variants', names(variants).join(', ')),
    ...row('Options', names(options).join(', ')),
    ...row('Builds', String(countBuilds(family.space.everything, family.space))),
    ...row('Parts', String(family.parts.size)),
  ];
}

function kitRows(kit: NonNullable<ReturnType<typeof documentValue<'kit'>>>): CardRow[] {
  return [
    ...row('Number', kit.kit?.text),
    ...row('Revision', kit.revision?.text),
    ...row('Holds', counted(kit.lines, 'line')),
  ];
}

function counted(things: readonly unknown[] | undefined, noun: string): string {
  const count = things?.length ?? 0;
  return `${count} ${noun}${count === 1 ? '' : 's'}`;
}
