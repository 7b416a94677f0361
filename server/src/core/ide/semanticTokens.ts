import { documentUnit } from '../analysis/documentUnit';
import { MENTION_KINDS, Names } from '../analysis/names';
import type { Snapshot } from '../analysis/snapshot';
import type { Unit } from '../model/facts';
import type { RefKind } from '../model/shape';
import type { ItemRange } from '../syntax/node';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import type { IdUse } from './idUses';
import { type TokenModifier, type TokenType, TYPE_OF_KIND } from './tokens/tokenTypes';
import { forEachToken, type UnitToken } from './tokens/unitTokens';

/** A stretch of a document with what it means. It never goes over a line end. */
export interface SemanticToken {
  readonly span: Span;
  readonly type: TokenType;
  readonly modifiers: readonly TokenModifier[];
}

/**
 * What only the meaning tells of a document: the kind of thing that each id stands for, the numbers and units of
 * quantities, the verbs. In the order of the text, without overlaps; those that touch `within` where that is given.
 */
export function semanticTokensOf(snapshot: Snapshot, document: SyntaxDocument, within?: Span): SemanticToken[] {
  const unit = documentUnit(document);
  if (unit === undefined) return [];
  const colours = new Colours(Names.of(snapshot, document), usedIds(unit));
  const tokens: SemanticToken[] = [];
  forEachToken(unit, (token) => {
    const span = document.spanOf(token.range);
    if (within !== undefined && (span.end < within.start || within.end < span.start)) return;
    const colour = colours.of(token);
    if (colour === undefined) return;
    const { type, modifiers } = colour;
    for (const line of onLines(token.range.item.text, token.range, span)) tokens.push({ span: line, type, modifiers });
  });
  return withoutOverlaps(tokens.sort((a, b) => a.span.start - b.span.start));
}

type Colour = Pick<SemanticToken, 'type' | 'modifiers'>;

const PLAIN: readonly TokenModifier[] = [];

/** Tells what ids stand for. */
class Colours {
  readonly #plain = new Map<TokenType, Colour>();

  constructor(
    readonly names: Names,
    readonly used: ReadonlySet<string>,
  ) {}

  of(token: UnitToken): Colour | undefined {
    if (token.is === 'plain') return this.#colour(token.type);
    const colour = this.#ofUse(token.use);
    const idle = token.listed && colour?.modifiers.length === 0 && !this.used.has(token.use.id);
    return idle ? { type: colour.type, modifiers: ['unused'] } : colour;
  }

  #ofUse(use: IdUse): Colour | undefined {
    switch (use.is) {
      case 'declared':
        return this.#ofKind(use.kind, ['declaration']);
      case 'named':
        return this.#named(use);
      case 'mentioned':
        return this.#mentioned(use);
      case 'value-listed':
      case 'value-asked':
        return this.#colour('enumMember');
      case 'path':
        return undefined;
    }
  }

  #named({ kinds, id }: IdUse & { is: 'named' }): Colour | undefined {
    const found = kinds.find((kind) => this.names.find(kind, id) !== undefined);
    const [first] = kinds;
    if (found !== undefined || first === undefined) return this.#ofKind(found ?? first);
    const unknown = kinds.every((kind) => this.names.lookUp(kind, id).is === 'unknown');
    return this.#ofKind(first, unknown ? ['unknown'] : PLAIN);
  }

  #mentioned({ kind: written, id }: IdUse & { is: 'mentioned' }): Colour | undefined {
    const kind = MENTION_KINDS.find((one) => one === written);
    const [thing] = this.names.mentionable(id);
    if (kind === undefined && thing !== undefined) return this.#ofKind(thing.kind, ['mention']);
    const { is } = this.names.lookUpMention({ kind: written, id, from: 0, to: 0 });
    const modifiers: readonly TokenModifier[] = is === 'unknown' ? ['mention', 'unknown'] : ['mention'];
    return is === 'unreadable' ? undefined : this.#ofKind(kind ?? 'part', modifiers);
  }

  #ofKind(kind: RefKind | undefined, modifiers = PLAIN): Colour | undefined {
    const type = kind === undefined ? undefined : TYPE_OF_KIND[kind];
    return type === undefined ? undefined : this.#colour(type, modifiers);
  }

  /** Most tokens have no modifier and can share what is said of them. */
  #colour(type: TokenType, modifiers = PLAIN): Colour {
    if (modifiers.length > 0) return { type, modifiers };
    const known = this.#plain.get(type) ?? { type, modifiers };
    this.#plain.set(type, known);
    return known;
  }
}

/** The ids that are more than an entry of a list of what is laid out. */
function usedIds(unit: Unit): Set<string> {
  const used = new Set<string>();
  forEachToken(unit, (token) => {
    if (token.is === 'id' && !token.listed) used.add(token.use.id);
  });
  return used;
}

/** The part of each line that a span covers: a folded text may break between a number and its unit. */
function onLines(text: string, { from, to }: ItemRange, span: Span): Span[] {
  if (!hasLineEnd(text, from, to)) return to > from ? [span] : [];
  return [...text.slice(from, to).matchAll(/[^\s][^\r\n]*/g)].map((match) => ({
    start: span.start + match.index,
    end: span.start + match.index + match[0].trimEnd().length,
  }));
}

function hasLineEnd(text: string, from: number, to: number): boolean {
  for (let i = from; i < to; i++) {
    const code = text.charCodeAt(i);
    if (code === 10 || code === 13) return true;
  }
  return false;
}

function withoutOverlaps(tokens: readonly SemanticToken[]): SemanticToken[] {
  let end = 0;
  return tokens.filter(({ span }) => {
    const isFree = span.start >= end;
    if (isFree) end = span.end;
    return isFree;
  });
}
