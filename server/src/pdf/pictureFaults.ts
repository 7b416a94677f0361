/** Why a figure cannot be printed. */
export type PictureFault =
  /** Nothing says what it shows, for whoever cannot see it. */
  | { kind: 'noText' }
  | { kind: 'tooLarge'; bytes: number; most: number }
  /** Drawn groups inside each other beyond what an engine follows. */
  | { kind: 'tooDeep' }
  /** Words that stand for others, with which a short drawing can be made endless. */
  | { kind: 'entities' }
  /** Something that lies outside the drawing; a sheet is made from its sources alone. */
  | { kind: 'outside'; link: string };

/** A drawing as text; larger ones are scans in disguise, and take minutes. */
const LARGEST_DRAWING = 8 * 1024 * 1024;
const LARGEST_PICTURE = 32 * 1024 * 1024;
/** The engine in its WebAssembly form loses its stack at a thousand. */
const DEEPEST = 256;

export function pictureFault(bytes: Uint8Array): PictureFault | undefined {
  return bytes.length > LARGEST_PICTURE ? { kind: 'tooLarge', bytes: bytes.length, most: LARGEST_PICTURE } : undefined;
}

/** What in a drawing must not reach the engine. Scripts may: nothing runs them. */
export function drawingFault(svg: string): PictureFault | undefined {
  if (svg.length > LARGEST_DRAWING) return { kind: 'tooLarge', bytes: svg.length, most: LARGEST_DRAWING };
  if (/<!ENTITY/u.test(svg)) return { kind: 'entities' };
  const link = outsideLink(svg);
  if (link !== undefined) return { kind: 'outside', link };
  return (depthOf(svg) ?? 0) > DEEPEST ? { kind: 'tooDeep' } : undefined;
}

/** What an element that draws takes from elsewhere. What it carries inside it or names within the drawing is its own. */
function outsideLink(svg: string): string | undefined {
  for (const [tag] of svg.matchAll(
    /<(?:\w+:)?(?:image|use|feImage|pattern|linearGradient|radialGradient|filter)\b[^>]*/gu,
  )) {
    const link = /\s(?:xlink:)?href\s*=\s*(?:"([^"]*)"|'([^']*)')/u.exec(tag);
    const target = (link?.[1] ?? link?.[2] ?? '#').trim();
    if (!/^(?:#|data:image\/(?:png|jpeg|gif|webp)[;,])/iu.test(target) && target !== '') return target.slice(0, 80);
  }
  return undefined;
}

/** How many elements are open at once, at most; undefined where what opens is not closed, so that it is no drawing. */
export function depthOf(svg: string): number | undefined {
  const open: string[] = [];
  let deepest = 0;
  for (let at = svg.indexOf('<'); at >= 0; at = svg.indexOf('<', at)) {
    const end = endOfMarkup(svg, at);
    if (end === undefined) return undefined;
    const name = /^<\/?([^\s/>!?][^\s/>]{0,99})/u.exec(svg.slice(at, at + 102))?.[1];
    if (name !== undefined && svg[at + 1] === '/') {
      if (open.pop() !== name) return undefined;
    } else if (name !== undefined && svg[end - 2] !== '/') open.push(name);
    deepest = Math.max(deepest, open.length);
    at = end;
  }
  return open.length === 0 ? deepest : undefined;
}

/** Where a tag, a comment or the like ends that begins at a place. Looks at each character once. */
function endOfMarkup(svg: string, at: number): number | undefined {
  for (const [start, stop] of [
    ['<!--', '-->'],
    ['<![CDATA[', ']]>'],
    ['<?', '?>'],
  ] as const) {
    if (!svg.startsWith(start, at)) continue;
    const end = svg.indexOf(stop, at + start.length);
    return end < 0 ? undefined : end + stop.length;
  }
  let quote = '';
  for (let index = at + 1; index < svg.length; index += 1) {
    const character = svg[index] ?? '';
    if (character === '<') return undefined;
    if (quote !== '') quote = character === quote ? '' : quote;
    else if (character === '"' || character === "'") quote = character;
    else if (character === '>') return index + 1;
  }
  return undefined;
}
