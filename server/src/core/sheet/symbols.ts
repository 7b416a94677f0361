import type { SignalWord, TurnDirection } from './sheet';

/**
 * The few symbols a sheet needs, drawn once for every printer. `currentColor` lets HTML follow the theme;
 * `inkSvg` turns it black for paper.
 */
// Solid, with the mark left open: it shows the ground of the panel, in black and white too.
const alertTriangle =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 22"><path fill="currentColor" fill-rule="evenodd" d="' +
  'M12 .8a1.6 1.6 0 0 1 1.4.8L23.7 19a1.6 1.6 0 0 1-1.4 2.4H1.7A1.6 1.6 0 0 1 .3 19L10.6 1.6A1.6 1.6 0 0 1 12 .8Z' +
  'M10.4 6.6h3.2l-.6 7.4h-2ZM12 15.4a1.7 1.7 0 1 0 0 3.4 1.7 1.7 0 0 0 0-3.4Z"/></svg>';

// An arc of 270 degrees with an arrow head at its end; the other direction is the same picture mirrored.
const turnArrow = (mirror: string): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 24"><g${mirror}>` +
  '<path d="M4.4 14.6A8 8 0 1 1 19.5 14.8" fill="none" stroke="currentColor" stroke-width="2.4"/>' +
  '<path d="M22.9 13.2 17.9 21.2 14.6 12.2Z" fill="currentColor"/></g></svg>';

/** The safety alert symbol of ISO 3864-2; a notice carries none, because it is about property, not people. */
export function alertSymbol(word: SignalWord): string | undefined {
  return word === 'notice' ? undefined : alertTriangle;
}

export function turnSymbol(direction: TurnDirection): string {
  return turnArrow(direction === 'clockwise' ? '' : ' transform="translate(24 0) scale(-1 1)"');
}

/** The same drawing in black, for a printer that knows no current colour. */
export function inkSvg(svg: string): string {
  return svg.replaceAll('currentColor', '#000000');
}
