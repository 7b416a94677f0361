import type { SignalWord, TurnDirection } from './sheet';

/**
 * The few symbols a sheet needs, drawn once for every printer. `currentColor` lets HTML follow the theme;
 * `inkSvg` turns it black for paper.
 */
const alertTriangle =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 24 22">' +
  '<path d="M12 1.6 22.9 20.4H1.1Z" fill="none" stroke="currentColor" stroke-width="2" stroke-linejoin="round"/>' +
  '<path d="M10.7 7.6h2.6l-.5 6.6h-1.6Z" fill="currentColor"/><circle cx="12" cy="17" r="1.4" fill="currentColor"/></svg>';

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
