import { formatNumber } from '../quantity';
import type { Grip } from './toolGrip';
import type { SizeNeed } from './toolSizeNeeds';

/** A grip as a fitter calls it: `8 mm`, `12.7 mm (1/2 in)`, `T30`. */
export function gripText(grip: Grip): string {
  return grip.is === 'named' ? grip.name : widthText(grip.width);
}

/** `8 mm across flats`, `T30`, and what it is assumed from. */
export function needText(need: SizeNeed): string {
  const size = need.grip.is === 'named' ? need.grip.name : `${gripText(need.grip)} across flats`;
  return need.known === 'stated' ? size : `${size} (assumed from ${need.standard})`;
}

/** A width in mm, with the inch size that it is where it is one. */
export function widthText(width: number): string {
  const shown = `${formatNumber(width, placesOf(width))} mm`;
  const inch = inchName(width);
  return inch === undefined ? shown : `${shown} (${inch} in)`;
}

/** Three digits are enough to tell any two sizes apart: 7.94 mm is 5/16 in and 8 mm is not. */
function placesOf(width: number): number {
  return [1, 0.1].find((place) => Math.abs(width / place - Math.round(width / place)) < 1e-6) ?? 0.01;
}

/** The inch size of a width, to the 32nd; whole millimetres are metric, though 1 in is 25.4 mm and 8 mm nearly 5/16 in. */
function inchName(width: number): string | undefined {
  const parts = (width / 25.4) * 32;
  const whole = Math.round(parts);
  if (whole === 0 || (Math.abs(parts - whole) / 32) * 25.4 > 0.011 || Number.isInteger(width)) return undefined;
  return fraction(whole, 32);
}

function fraction(top: number, bottom: number): string {
  if (top % 2 === 0 && bottom > 1) return fraction(top / 2, bottom / 2);
  if (bottom === 1) return `${top}`;
  return top > bottom ? `${Math.floor(top / bottom)}-${top % bottom}/${bottom}` : `${top}/${bottom}`;
}

/** A computed number to a few significant digits: 0.38, 4.23, 118. */
export function significant(value: number, digits = 3): string {
  if (value === 0 || !Number.isFinite(value)) return `${value}`;
  const place = Math.floor(Math.log10(Math.abs(value))) - digits + 1;
  const rounded = Number(value.toPrecision(digits));
  // 4.20 says no more than 4.2.
  return formatNumber(rounded, 10 ** Math.min(0, Math.max(place, -decimalsIn(rounded))));
}

function decimalsIn(value: number): number {
  return `${value}`.split('.')[1]?.length ?? 0;
}
