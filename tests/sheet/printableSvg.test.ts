import { expect, test } from 'vitest';
import { printableSvg } from '../../server/src/pdf/figures';

test.each([
  [
    '<style>text { font-family: "Noto Sans", Arial; font-size: 3.2px }</style>',
    '<style>text {  font-size: 3.2px }</style>',
  ],
  ["<style>text{font-family:'Noto Sans'}</style>", '<style>text{}</style>'],
  ['<text style="font-family: Arial; fill: red" x="1">a</text>', '<text style=" fill: red" x="1">a</text>'],
  ['<text font-family="Arial" font-size="3">a</text>', '<text font-size="3">a</text>'],
])('the family of a drawing gives way to that of the sheet and nothing else is lost: %s', (inside, kept) => {
  const svg = (body: string): string => `<svg xmlns="http://www.w3.org/2000/svg">${body}</svg>`;
  expect(printableSvg(svg(inside))).toBe(svg(kept).replace('<svg', '<svg font-family="SheetSans, SheetSymbol"'));
});
