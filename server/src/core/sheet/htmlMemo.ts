import type { Html, HtmlOptions } from './htmlText';
import type { SheetLanguage } from './sheet';

/**
 * Markup that was printed lately, by the object that it was printed from. A preview is printed at every key, and nearly
 * all parts of its sheet are the objects of the last one (`build/ground.ts`). An object of a sheet never changes, so
 * nothing remembered can be out of date; `make` must look at nothing but its value, the language and the mode.
 */
export class HtmlMemo {
  readonly #markup = new WeakMap<object, Html>();

  remembered<Value extends object>(value: Value, make: (value: Value) => Html): Html {
    const known = this.#markup.get(value);
    if (known !== undefined) return known;
    const markup = make(value);
    this.#markup.set(value, markup);
    return markup;
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
