import type { Unit } from '../model/facts';
import type {
  FamilyDocument,
  KitDocument,
  ProcedureDocument,
  SettingsDocument,
  StoresDocument,
} from '../model/generated/types';
import { readUnit } from '../model/readUnit';
import type { DocumentKind } from '../syntax/documentKind';
import type { SyntaxDocument } from '../syntax/readDocument';

interface ValueByKind {
  family: FamilyDocument;
  kit: KitDocument;
  stores: StoresDocument;
  procedure: ProcedureDocument;
  settings: SettingsDocument;
}

/** The document as read by its schema; undefined where it is empty or no map. */
export function documentUnit(document: SyntaxDocument): Unit | undefined {
  return document.root === undefined ? undefined : readUnit(document.root, document.kind);
}

/** The document's value where it is of the wanted kind. */
export function documentValue<Kind extends DocumentKind>(
  document: SyntaxDocument,
  kind: Kind,
): ValueByKind[Kind] | undefined {
  return document.kind === kind ? (documentUnit(document)?.value as ValueByKind[Kind] | undefined) : undefined;
}
