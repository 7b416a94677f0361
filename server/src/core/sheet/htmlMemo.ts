import type { HtmlPiece } from './htmlPieces';
import type { HtmlOptions } from './htmlText';
import type { SheetLanguage } from './sheet';

/**
 * Pieces that were printed lately, by the object that they were printed from. A preview is printed at every key, and
 * nearly all parts of its sheet are the objects of the last one (`build/ground.ts`). An object of a sheet never changes,
 * so nothing remembered can be out of date; `make` must look at nothing but its value, the language and the mode.
 */
export class HtmlMemo {
  readonly #pieces = new WeakMap<object, HtmlPiece>();

  remembered<Value extends object>(value: Value, make: (value: Value) => HtmlPiece): HtmlPiece {
    const known = this.#pieces.get(value);
    if (known !== undefined) return known;
    const piece = make(value);
    this.#pieces.set(value, piece);
    return piece;
  }
}

const memos = new Map<string, HtmlMemo>();

export function memoFor(language: SheetLanguage, { mode, figureUrl }: HtmlOptions): HtmlMemo {
  // Where pictures come from is known to the caller alone.
  if (figureUrl !== undefined) return new HtmlMemo();
  const key = `${language} ${mode}`;
  const memo = memos.get(key) ?? new HtmlMemo();
  memos.set(key, memo);
  return memo;
}
