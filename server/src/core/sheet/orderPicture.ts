import { printableText } from './printableText';

/**
 * A small drawing of the order in which pieces are tightened. A black disc bears the turn, an open circle the piece.
 * Pieces that are plainly numbered from 1 stand around a circle, clockwise from the top; named ones stand in a row.
 */
export function orderPicture(pieces: readonly string[]): string | undefined {
  const onCircle = placesOnCircle(pieces);
  if (onCircle !== undefined) return circlePicture(onCircle);
  return pieces.length <= LONGEST_ROW && pieces.every((name) => name.length <= LONGEST_NAME)
    ? rowPicture(pieces)
    : undefined;
}

/** Whether the pieces are drawn around a circle rather than in a row. */
export function isCircular(pieces: readonly string[]): boolean {
  return placesOnCircle(pieces) !== undefined;
}

/** More pieces than this would be too small to read. */
const MOST_ON_CIRCLE = 16;
const LONGEST_ROW = 8;
/** A longer name does not fit below its circle. */
const LONGEST_NAME = 4;

/** The turn of each place around the circle, or undefined where the names are not exactly the numbers from 1. */
function placesOnCircle(pieces: readonly string[]): number[] | undefined {
  const { length } = pieces;
  if (length < 3 || length > MOST_ON_CIRCLE) return undefined;
  const turns = pieces.map((_, place) => pieces.indexOf(String(place + 1)) + 1);
  return turns.every((turn) => turn > 0) ? turns : undefined;
}

const SIDE = 120;
const MIDDLE = SIDE / 2;

function circlePicture(turns: readonly number[]): string {
  const piece = turns.length <= 8 ? 11 : turns.length <= 12 ? 9 : 7.5;
  const [radius, inner] = [MIDDLE - piece - 1, MIDDLE - 3 * piece - 3.5];
  const at = (place: number, distance: number): [number, number] => {
    const angle = (2 * Math.PI * place) / turns.length;
    return [MIDDLE + distance * Math.sin(angle), MIDDLE - distance * Math.cos(angle)];
  };
  const ring = `<circle cx="${MIDDLE}" cy="${MIDDLE}" r="${number(radius)}" fill="none" stroke="#000000" stroke-width="1"/>`;
  const marks = turns.map(
    (turn, place) =>
      openMark(...at(place, radius), piece, String(place + 1)) + discMark(...at(place, inner), piece, turn),
  );
  return drawing(SIDE, SIDE, ring + marks.join(''));
}

function rowPicture(pieces: readonly string[]): string {
  const step = 34;
  const width = step * pieces.length;
  const line = `<path d="M${step / 2} 20H${width - step / 2}" fill="none" stroke="#000000" stroke-width="1"/>`;
  const marks = pieces.map((name, index) => {
    const x = step * (index + 0.5);
    return discMark(x, 20, 11, index + 1) + openMark(x, 46, 12, name);
  });
  return drawing(width, 62, line + marks.join(''));
}

function openMark(x: number, y: number, radius: number, name: string): string {
  return mark(x, y, radius, name, '#ffffff', '#000000', 400);
}

function discMark(x: number, y: number, radius: number, turn: number): string {
  return mark(x, y, radius * 0.88, String(turn), '#000000', '#ffffff', 700);
}

function mark(
  x: number,
  y: number,
  radius: number,
  words: string,
  ground: string,
  ink: string,
  weight: number,
): string {
  const size = radius * (words.length > 2 ? 0.85 : 1.25);
  return (
    `<circle cx="${number(x)}" cy="${number(y)}" r="${number(radius)}" fill="${ground}" stroke="#000000" stroke-width="1.4"/>` +
    `<text x="${number(x)}" y="${number(y + size * 0.36)}" font-size="${number(size)}" font-weight="${weight}" fill="${ink}" text-anchor="middle">${escaped(words)}</text>`
  );
}

function drawing(width: number, height: number, content: string): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}" viewBox="0 0 ${width} ${height}" font-family="Noto Sans, sans-serif">${content}</svg>`;
}

// One decimal place, so that the drawing is the same bytes on every machine.
function number(value: number): string {
  return String(Math.round(value * 10) / 10);
}

function escaped(words: string): string {
  return printableText(words).replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');
}
