/** What a line that is not indented is, if it must not reach the YAML reader. */
export type UnsafeLine = 'conflict-marker' | 'directive' | 'bare-marker' | 'marker';

const CONFLICT = /^(?:<{7}|={7}|>{7}|\|{7})(?:\s|$)/;
const FIRST_SIGNS = '<=>|-.%';

/** Says it by the text of the line alone, so that it need not be asked again of a line that did not change. */
export function unsafeLine(text: string, start: number, end: number): UnsafeLine | undefined {
  if (start === end || !FIRST_SIGNS.includes(text.charAt(start))) return undefined;
  const content = text.slice(start, end);
  if (CONFLICT.test(content)) return 'conflict-marker';
  if (/^---(?:\s|$)/.test(content)) return content.trim() === '---' ? 'bare-marker' : 'marker';
  if (/^\.\.\.(?:\s|$)/.test(content)) return 'marker';
  return content.startsWith('%') ? 'directive' : undefined;
}
