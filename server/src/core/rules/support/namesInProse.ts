import { documentValue } from '../../analysis/documentUnit';
import type { ProcedureView } from '../../analysis/procedureView';
import { mentionsIn } from '../../model/readValues';
import type { Mention, Prose, Text } from '../../model/values';
import type { SyntaxDocument } from '../../syntax/readDocument';
import { rememberedByText } from '../../text/byText';
import { isCommand, isForbidden } from './sentenceSense';
import { WordTrie, wordsOf } from './wordTrie';

/** What a name in plain words may stand for. */
export interface Named {
  readonly kind: 'tool' | 'consumable' | 'part';
  readonly id: string;
}

/** A tool or consumable that a text names in plain words and does not forbid; offsets are within the text. */
export interface NameInProse {
  readonly kind: 'tool' | 'consumable';
  /** Those that have the name: several where it leaves the size open, as "the torque wrench" does. */
  readonly ids: readonly string[];
  readonly from: number;
  readonly to: number;
}

/**
 * The tools and consumables that a text names in plain words. The longest name counts, and the name of a part hides a
 * shorter one within it; `<id>` is a mention and no plain word.
 */
export function namesInProse(procedure: ProcedureView, prose: Prose): readonly NameInProse[] {
  const tries = triesOf(procedure);
  const known = prose.remembered as Found | undefined;
  if (known?.tries === tries) return known.names;
  const find = finders.get(tries) ?? rememberedByText((text) => findNames(tries, text));
  finders.set(tries, find);
  const names = find(prose.text);
  prose.remembered = { tries, names } satisfies Found;
  return names;
}

/** What was found stays found while the names and the sentence are the same objects, however often the rest changes. */
interface Found {
  readonly tries: readonly WordTrie<Named>[];
  readonly names: readonly NameInProse[];
}

/** Procedures for one family say the same sentences, so each is searched once. */
const finders = new WeakMap<readonly WordTrie<Named>[], (text: string) => readonly NameInProse[]>();

function findNames(tries: readonly WordTrie<Named>[], text: string): readonly NameInProse[] {
  const mentions = mentionsIn(text);
  const words = wordsOf(text);
  const names: NameInProse[] = [];
  for (let start = 0; start < words.length; ) {
    const { length, values } = longest(tries, words, start, text);
    const from = words[start]?.from ?? 0;
    const to = words[start + length - 1]?.to ?? 0;
    if (length > 0 && isMeant(text, mentions, from, to, length)) names.push(...byKind(values, from, to));
    start += Math.max(1, length);
  }
  return names;
}

function longest(
  tries: readonly WordTrie<Named>[],
  words: ReturnType<typeof wordsOf>,
  start: number,
  text: string,
): { length: number; values: readonly Named[] } {
  let best: { length: number; values: readonly Named[] } = { length: 0, values: [] };
  for (const trie of tries) {
    const one = trie.longestAt(words, start, text);
    if (one.length > best.length) best = one;
    else if (one.length > 0 && one.length === best.length) {
      best = { length: one.length, values: [...best.values, ...one.values] };
    }
  }
  return best;
}

function isMeant(text: string, mentions: readonly Mention[], from: number, to: number, length: number): boolean {
  if (mentions.some((mention) => from < mention.to && mention.from < to)) return false;
  // Part of a longer word: "degreaser-proof", or the 8 mm socket of "8 mm socket head screw".
  if (/[\p{L}\p{N}]-$/u.test(text.slice(0, from)) || /^-[\p{L}\p{N}]|^\s+head\b/u.test(text.slice(to))) return false;
  if (length === 1 && isCommand(text, from, to)) return false;
  return !isForbidden(text, from, to);
}

/** A name that a part has as well says nothing certain. */
function byKind(values: readonly Named[], from: number, to: number): NameInProse[] {
  if (values.some((value) => value.kind === 'part')) return [];
  return (['tool', 'consumable'] as const).flatMap((kind) => {
    const ids = values.filter((value) => value.kind === kind).map((value) => value.id);
    return ids.length === 0 ? [] : [{ kind, ids: [...new Set(ids)], from, to }];
  });
}

const triesByView = new WeakMap<ProcedureView, readonly WordTrie<Named>[]>();
const lastTries = new WeakMap<SyntaxDocument, readonly WordTrie<Named>[]>();
const trieByDocument = new WeakMap<SyntaxDocument, WordTrie<Named>>();

function triesOf(procedure: ProcedureView): readonly WordTrie<Named>[] {
  const known = triesByView.get(procedure);
  if (known !== undefined) return known;
  const items = [...procedure.tools.values(), ...procedure.consumables.values()];
  const documents = new Set(items.map((item) => item.document));
  if (procedure.family !== undefined) documents.add(procedure.family.document);
  const tries = sameList([...documents]);
  triesByView.set(procedure, tries);
  return tries;
}

/** The list made last time for these documents, so that what was found with it is found again. */
function sameList(documents: readonly SyntaxDocument[]): readonly WordTrie<Named>[] {
  const tries = documents.map(trieOf);
  const [first] = documents;
  const last = first === undefined ? undefined : lastTries.get(first);
  if (last?.length === tries.length && last.every((trie, i) => trie === tries[i])) return last;
  if (first !== undefined) lastTries.set(first, tries);
  return tries;
}

/** Made once for a reading of a document, so that a thousand procedures share that of their stores. */
function trieOf(document: SyntaxDocument): WordTrie<Named> {
  const known = trieByDocument.get(document);
  if (known !== undefined) return known;
  const trie = new WordTrie<Named>();
  const stores = documentValue(document, 'stores');
  for (const { id, value } of stores?.tools ?? []) addNames(trie, { kind: 'tool', id: id.id }, value);
  for (const { id, value } of stores?.consumables ?? []) addNames(trie, { kind: 'consumable', id: id.id }, value);
  for (const { id, value } of documentValue(document, 'family')?.parts ?? []) {
    addNames(trie, { kind: 'part', id: id.id }, value);
  }
  trieByDocument.set(document, trie);
  return trie;
}

function addNames(
  trie: WordTrie<Named>,
  named: Named,
  value: { readonly name?: Prose; readonly also?: readonly Text[] },
): void {
  for (const name of [value.name?.text ?? '', ...(value.also ?? []).map((one) => one.text)]) {
    trie.add(name, named);
    trie.add(withoutSize(name), named);
  }
}

/** A writer says "the torque wrench" for the "torque wrench 2–10 N·m". A name that starts with its size keeps it. */
function withoutSize(name: string): string {
  const at = name.search(/\s\S*\d/);
  return at <= 0 ? name : name.slice(0, at);
}
