import { declarationsIn, type NamedThing } from '../analysis/declarations';
import { documentValue } from '../analysis/documentUnit';
import { Names } from '../analysis/names';
import type { Snapshot } from '../analysis/snapshot';
import { fileNameOf } from '../analysis/uri';
import { RESERVED_WORDS } from '../builds/condition';
import type { RefKind } from '../model/shape';
import { nounOf } from '../rules/support/nouns';
import type { Item } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import { LineIndex } from '../text/lineIndex';
import { type IdTarget, idOfTarget } from './idTarget';
import { idUsesIn } from './idUses';

/** Words that mean something in a condition or before its `=`, so that no id may be one of them. */
const TAKEN_WORDS: readonly string[] = [...RESERVED_WORDS, 'arrives'];

/** Kinds that are named in the same places, so that one id may not stand for two of them. */
const SHARED: readonly (readonly RefKind[])[] = [
  ['variant', 'option'],
  ['outcome', 'part'],
  ['limit', 'reading'],
];

/** What messages call one thing of a kind: "a step", "an option". */
export function aKind(kind: RefKind): string {
  const noun = nounOf(kind);
  return `${/^[aeiou]/.test(noun) ? 'an' : 'a'} ${noun}`;
}

/** Why a text can be no name for a target; undefined where it can. */
export function illegalName(target: IdTarget, name: string): string | undefined {
  if (target.is === 'value') {
    const isPlain = /^[\p{L}\p{N}][\p{L}\p{N}.+/-]*(?: [\p{L}\p{N}.+/-]+)*$/u.test(name);
    return isPlain ? undefined : `"${name}" can be no value: write words of letters, digits and . + / -`;
  }
  if (TAKEN_WORDS.includes(name)) return `"${name}" can be no id: it is a word of its own in conditions`;
  if (/^[a-z][a-z0-9-]{2,}$/.test(name)) return undefined;
  return `"${name}" can be no id: write three or more small letters, digits or hyphens, a letter first`;
}

/** What has the name already where the target can be seen, in words; undefined where nothing has. */
export function collisionOf(snapshot: Snapshot, target: IdTarget, name: string): string | undefined {
  if (target.is === 'value') return valueCollision(target, name);
  if (target.is === 'file') return undefined;
  for (const document of documentsThatSee(snapshot, target.thing)) {
    const taken = thingWith(snapshot, document, target.thing.kind, name);
    if (taken === undefined) continue;
    return `The id "${name}" is that of ${aKind(taken.kind)} in ${fileNameOf(taken.document.uri)} already`;
  }
  return undefined;
}

function valueCollision({ of, value }: IdTarget & { is: 'value' }, name: string): string | undefined {
  const identify = documentValue(of.document, 'family')?.identify?.find(({ id }) => id === of.declared);
  const isTaken = value !== name && (identify?.value.values ?? []).some((one) => one.text === name);
  return isTaken ? `${of.id} has the value "${name}" already` : undefined;
}

function thingWith(snapshot: Snapshot, document: SyntaxDocument, kind: RefKind, name: string): NamedThing | undefined {
  const kinds = SHARED.find((some) => some.includes(kind)) ?? [kind];
  const names = Names.of(snapshot, document);
  const found = kinds.flatMap((one) => names.find(one, name) ?? declarationsIn(document).find(one, name) ?? []);
  return found[0];
}

function* documentsThatSee(snapshot: Snapshot, thing: NamedThing): Generator<SyntaxDocument> {
  yield thing.document;
  for (const uri of snapshot.uris) {
    const document = snapshot.document(uri);
    if (document === undefined || document === thing.document) continue;
    if (Names.of(snapshot, document).find(thing.kind, thing.id)?.declared === thing.declared) yield document;
  }
}

/** A broken place of a document that sees the target and has its id in more places than could be read. */
export function unreadablePlace(snapshot: Snapshot, target: IdTarget): string | undefined {
  const id = idOfTarget(target);
  if (target.is === 'file' || id === undefined) return undefined;
  for (const document of documentsThatSee(snapshot, target.is === 'thing' ? target.thing : target.of)) {
    const item = document.items.find((one) => isBroken(one) && countIn(one.text, id) > readIn(document, one, id));
    if (item === undefined) continue;
    const { start } = document.spanOf({ item, from: 0, to: 0 });
    const line = new LineIndex(document.text).position(start).line + 1;
    const name = fileNameOf(document.uri);
    return `What begins on line ${line} of ${name} cannot be read, and may name "${id}"; mend it first`;
  }
  return undefined;
}

function isBroken(item: Item): boolean {
  return item.problems.some((problem) => problem.kind === 'broken');
}

function countIn(text: string, id: string): number {
  const escaped = id.replace(/[.+/]/g, '\\$&');
  return [...text.matchAll(new RegExp(`(?<![\\p{L}\\p{N}-])${escaped}(?![\\p{L}\\p{N}-])`, 'gu'))].length;
}

function readIn(document: SyntaxDocument, item: Item, id: string): number {
  return (idUsesIn(document).get(id) ?? []).filter((use) => use.range.item === item).length;
}
