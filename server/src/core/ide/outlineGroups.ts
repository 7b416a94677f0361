import type { DocumentKind } from '../syntax/documentKind';
import { type MapNode, type Node, type Pair, pairOf } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { nodeSpan } from './nodeSpan';
import type { OutlineEntry, OutlineKind } from './outlineEntry';

/** The keys of a document below which things are listed, and what these are. */
const GROUPS: Readonly<Record<DocumentKind, Readonly<Record<string, OutlineKind>>>> = {
  family: {
    variants: 'variant',
    options: 'option',
    identify: 'outcome',
    parts: 'part',
    assemblies: 'assembly',
    'balance-groups': 'balance-group',
    checks: 'check',
    dimensions: 'dimension',
    limits: 'limit',
    readings: 'reading',
    figures: 'figure',
  },
  kit: { lines: 'kit-line' },
  stores: { tools: 'tool', consumables: 'consumable' },
  procedure: { readings: 'reading', figures: 'figure', concessions: 'concession' },
  settings: { severities: 'setting', units: 'setting' },
};

/** The groups of a document with their entries; a group without any is left out. */
export function groupsIn(document: SyntaxDocument): OutlineEntry[] {
  return (document.root?.pairs ?? []).flatMap((pair) => {
    const kind = GROUPS[document.kind][pair.key.text];
    if (kind === undefined || pair.value === undefined) return [];
    const children = entriesIn(document, pair.value, kind);
    if (children.length === 0) return [];
    const labelSpan = document.spanOf(pair.key);
    const span = { start: labelSpan.start, end: nodeSpan(document, pair.value).end };
    return [{ kind: 'group' as const, label: pair.key.text, detail: '', symbol: undefined, span, labelSpan, children }];
  });
}

function entriesIn(document: SyntaxDocument, node: Node, kind: OutlineKind): OutlineEntry[] {
  if (node.kind === 'map') return node.pairs.flatMap((pair) => entryOf(document, pair, kind) ?? []);
  if (node.kind === 'scalar') return [];
  return node.items.flatMap((item) => (item.kind === 'map' ? (lineOf(document, item, kind) ?? []) : []));
}

function entryOf(document: SyntaxDocument, { key, value }: Pair, kind: OutlineKind): OutlineEntry | undefined {
  if (key.text === '') return undefined;
  const labelSpan = document.spanOf(key);
  const end = value === undefined ? labelSpan.end : Math.max(labelSpan.end, nodeSpan(document, value).end);
  const name = nameIn(value);
  const isThing = kind !== 'setting';
  return {
    kind,
    label: key.text,
    detail: name,
    symbol: isThing ? { id: key.text, name: name === '' ? key.text : name } : undefined,
    span: { start: labelSpan.start, end },
    labelSpan,
    children: [],
  };
}

/** What a thing is called: its name, what a check says, or a value that stands alone. */
function nameIn(value: Node | undefined): string {
  if (value?.kind === 'scalar') return oneLine(value.text);
  if (value?.kind !== 'map') return '';
  return textAt(value, 'name') || textAt(value, 'say') || textAt(value, 'caption');
}

function lineOf(document: SyntaxDocument, map: MapNode, kind: OutlineKind): OutlineEntry | undefined {
  const { label, detail, symbol, key } = kind === 'kit-line' ? kitLine(map) : concession(map);
  if (label === '') return undefined;
  const span = nodeSpan(document, map);
  const named = pairOf(map, key)?.value;
  const labelSpan = named === undefined ? { start: span.start, end: span.start } : document.spanOf(named);
  return { kind, label, detail, symbol, span, labelSpan, children: [] };
}

type Line = Pick<OutlineEntry, 'label' | 'detail' | 'symbol'> & { readonly key: string };

/** A line is looked for by the number on the bag. */
function kitLine(map: MapNode): Line {
  const [item, part, number, quantity] = ['item', 'part', 'number', 'quantity'].map((key) => textAt(map, key));
  const count = quantity === '' ? '' : `${quantity} ×`;
  const symbol = number === undefined || number === '' ? undefined : { id: number, name: part ?? '' };
  return { label: joined(item, part), detail: joined(count, number), symbol, key: 'part' };
}

function concession(map: MapNode): Line {
  return { label: textAt(map, 'rule'), detail: joined('at', textAt(map, 'at')), symbol: undefined, key: 'rule' };
}

function joined(...texts: readonly (string | undefined)[]): string {
  return texts.filter((text) => text !== undefined && text !== '').join(' ');
}

/** A text of a map, where it has translations the first wording. */
export function textAt(map: MapNode, key: string): string {
  const value = pairOf(map, key)?.value;
  if (value?.kind === 'scalar') return oneLine(value.text);
  return value?.kind === 'map' && key !== 'text' ? textAt(value, 'text') : '';
}

export function oneLine(text: string): string {
  return text.replace(/\s+/g, ' ').trim();
}
