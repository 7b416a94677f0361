import { expect, test } from 'vitest';
import { drawingFault, pictureFault } from '../../server/src/pdf/pictureFaults';

const svg = (inside: string): string => `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 9 9">${inside}</svg>`;

test.each([
  ['a plain drawing', svg('<g><rect width="9" height="9"/></g>')],
  ['a reference within', svg('<g id="a"/><use href="#a"/><rect fill="url(#b)"/>')],
  ['a picture that it carries', svg('<image href="data:image/png;base64,AAAA"/>')],
  ['a link for a reader', svg('<a href="https://example.invalid/"><text>a</text></a>')],
  ['a script, which nothing runs', svg('<script>alert(1)</script>')],
  ['a document type as drawing programs write it', `<!DOCTYPE svg PUBLIC "a" "b">${svg('')}`],
  ['groups beside each other', svg('<g><g></g></g><!-- <g> -->'.repeat(5000))],
  ['words that look like groups', svg('<desc><![CDATA[<g>]]></desc><!-- <g><g> --><text x=">">a</text>'.repeat(300))],
  ['a torn drawing, which the engine refuses', '<svg><g>'.repeat(9)],
])('%s is printed', (_, text) => {
  expect(drawingFault(text)).toBeUndefined();
});

test.each([
  ['entities', '<!DOCTYPE svg [<!ENTITY a "b">]><svg><text>&a;</text></svg>', { kind: 'entities' }],
  ['a file beside it', svg('<image href="../secret.png"/>'), { kind: 'outside', link: '../secret.png' }],
  ['a file anywhere', svg("<image x='1' xlink:href='/etc/passwd'/>"), { kind: 'outside', link: '/etc/passwd' }],
  ['an address', svg('<use href="https://example.invalid/a.svg#b"/>'), { kind: 'outside' }],
  ['a drawing in a drawing', svg('<image href="data:image/svg+xml;base64,PHN2Zy8+"/>'), { kind: 'outside' }],
  ['a thousand groups inside each other', svg('<g>'.repeat(1000) + '</g>'.repeat(1000)), { kind: 'tooDeep' }],
  ['more than a drawing ever is', svg(' '.repeat(9_000_000)), { kind: 'tooLarge' }],
])('%s is refused', (_, text, fault) => {
  expect(drawingFault(text)).toMatchObject(fault);
});

test('a picture of 50 MB is refused, one of 1 MB is not', () => {
  expect(pictureFault(new Uint8Array(50_000_000))).toMatchObject({ kind: 'tooLarge', bytes: 50_000_000 });
  expect(pictureFault(new Uint8Array(1_000_000))).toBeUndefined();
});

test('looks at each character once, also where a drawing is torn on purpose', () => {
  for (const torn of ['<', '<g', '<style>', '<a "', '<!--', '<image ', "<use href='"])
    expect(() => drawingFault(torn.repeat(8_000_000 / torn.length))).not.toThrow();
});
