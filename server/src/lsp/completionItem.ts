import {
  type ClientCapabilities,
  type CompletionItem,
  CompletionItemKind,
  type CompletionItemLabelDetails,
  InsertReplaceEdit,
  InsertTextFormat,
  InsertTextMode,
  MarkupKind,
  TextEdit,
} from 'vscode-languageserver';
import type { Candidate, CandidateAbout, CandidateKind, Completions } from '../core/ide/completion/candidate';
import type { LineIndex } from '../core/text/lineIndex';
import { toRange } from './convert';

/** What a candidate takes with it over the wire, to be described once somebody looks at it. */
export interface CompletionData {
  readonly uri: string;
  readonly about: CandidateAbout;
}

/** What a client can do with candidates. */
export interface ClientShows {
  readonly snippets: boolean;
  /** It moves the lines of a snippet to the indentation of the line that they are put on. */
  readonly adjustsIndentation: boolean;
  readonly insertReplace: boolean;
  readonly labelDetails: boolean;
  readonly resolvesEdits: boolean;
  readonly markdown: boolean;
}

export function clientShows({ textDocument }: ClientCapabilities): ClientShows {
  const item = textDocument?.completion?.completionItem;
  return {
    snippets: item?.snippetSupport === true,
    adjustsIndentation: item?.insertTextModeSupport?.valueSet.includes(InsertTextMode.adjustIndentation) === true,
    insertReplace: item?.insertReplaceSupport === true,
    labelDetails: item?.labelDetailsSupport === true,
    resolvesEdits: item?.resolveSupport?.properties.includes('additionalTextEdits') === true,
    markdown: item?.documentationFormat?.includes(MarkupKind.Markdown) ?? true,
  };
}

export interface ItemPlace {
  readonly found: Completions;
  readonly lines: LineIndex;
  readonly shows: ClientShows;
  /** Its place among all, which is kept. */
  readonly place: number;
  readonly uri: string;
}

export function toCompletionItem(candidate: Candidate, { found, lines, shows, place, uri }: ItemPlace): CompletionItem {
  const { label, filter, about } = candidate;
  const snippet = snippetFor(candidate, shows);
  const text = snippet ?? candidate.text ?? label;
  const replace = toRange(lines, found.replace);
  const data: CompletionData | undefined = about === undefined ? undefined : { uri, about };
  return {
    label,
    kind: KINDS[candidate.kind],
    ...details(candidate, shows),
    sortText: String(place).padStart(4, '0'),
    ...(filter === undefined ? {} : { filterText: filter }),
    textEdit: shows.insertReplace
      ? InsertReplaceEdit.create(text, toRange(lines, found.insert), replace)
      : TextEdit.replace(replace, text),
    ...(snippet === undefined ? {} : { insertTextFormat: InsertTextFormat.Snippet }),
    ...(text.includes('\n') ? { insertTextMode: InsertTextMode.adjustIndentation } : {}),
    ...(data === undefined ? {} : { data }),
  };
}

/** Several lines only for a client that says how it indents them. */
function snippetFor({ snippet }: Candidate, shows: ClientShows): string | undefined {
  if (snippet === undefined || !shows.snippets) return undefined;
  return snippet.includes('\n') && !shows.adjustsIndentation ? undefined : snippet;
}

function details({ detail, why }: Candidate, shows: ClientShows): Pick<CompletionItem, 'detail' | 'labelDetails'> {
  const labelDetails: CompletionItemLabelDetails = {
    ...(why === undefined ? {} : { detail: ` ${why}` }),
    ...(detail === undefined ? {} : { description: detail }),
  };
  if (shows.labelDetails) return detail === undefined && why === undefined ? {} : { labelDetails };
  const both = [detail, why].filter((one) => one !== undefined).join(' · ');
  return both === '' ? {} : { detail: both };
}

const KINDS: Readonly<Record<CandidateKind, CompletionItemKind>> = {
  key: CompletionItemKind.Property,
  verb: CompletionItemKind.Function,
  word: CompletionItemKind.EnumMember,
  condition: CompletionItemKind.EnumMember,
  unit: CompletionItemKind.Unit,
  value: CompletionItemKind.Value,
  file: CompletionItemKind.File,
  rule: CompletionItemKind.Event,
  part: CompletionItemKind.Class,
  tool: CompletionItemKind.Module,
  consumable: CompletionItemKind.Field,
  limit: CompletionItemKind.Interface,
  reading: CompletionItemKind.Variable,
  'limit-or-reading': CompletionItemKind.Variable,
  check: CompletionItemKind.Event,
  step: CompletionItemKind.Method,
  figure: CompletionItemKind.File,
  variant: CompletionItemKind.Enum,
  option: CompletionItemKind.Enum,
  outcome: CompletionItemKind.EnumMember,
  assembly: CompletionItemKind.Struct,
  'balance-group': CompletionItemKind.Struct,
  dimension: CompletionItemKind.Constant,
  family: CompletionItemKind.File,
};
