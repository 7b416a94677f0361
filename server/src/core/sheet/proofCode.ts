import { encode } from 'uqr';

/** The quiet zone that a QR code needs around it (ISO/IEC 18004). */
const QUIET = 4;

/** A text as QR code with medium error correction: one drawing in black, a unit for each square. */
export function qrCodeSvg(text: string): string {
  const { data, size } = encode(text, { ecc: 'M', border: QUIET, boostEcc: true });
  const path = data.flatMap((row, y) => strokes(row).map(([x, width]) => `M${x} ${y}h${width}v1h-${width}z`));
  const frame = `width="${size}" height="${size}" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges"`;
  return `<svg xmlns="http://www.w3.org/2000/svg" ${frame}><path fill="#000" d="${path.join('')}"/></svg>`;
}

/** Where dark squares stand side by side they are one rectangle, so that no hair of white is left between them. */
function strokes(row: readonly boolean[]): [x: number, width: number][] {
  const found: [number, number][] = [];
  row.forEach((dark, x) => {
    const last = found.at(-1);
    if (dark && last !== undefined && last[0] + last[1] === x) last[1] += 1;
    else if (dark) found.push([x, 1]);
  });
  return found;
}
