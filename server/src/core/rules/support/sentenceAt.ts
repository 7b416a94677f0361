import type { Span } from '../../text/span';

/** The sentence of a text that holds an offset: from behind the end of the one before to its own end. */
export function sentenceAt(text: string, offset: number): Span {
  let start = 0;
  for (const { index, 0: stop } of text.matchAll(STOP)) {
    const end = index + stop.length;
    if (end > offset) return { start, end };
    start = end;
  }
  return { start, end: text.length };
}

/** All sentences of a text. */
export function sentencesIn(text: string): Span[] {
  const spans: Span[] = [];
  for (let at = 0; at < text.length; at = spans.at(-1)?.end ?? text.length) spans.push(sentenceAt(text, at));
  return spans;
}

/** A full stop within a number or a short form (`approx. 5`) ends nothing: white space and no small letter or digit follow. */
const STOP = /[.!?;](?=\s+[^\s\p{Ll}\d])\s+|\n\s*\n/gu;
