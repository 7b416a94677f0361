import { describe, expect, test } from 'vitest';
import { DocumentText } from '../../server/src/core/text/documentText';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { toClientUri, toCoreUri, toRange, toSpan } from '../../server/src/lsp/convert';
import { applyChanges } from '../../server/src/lsp/openDocument';

describe('URIs', () => {
  test('are plain inside, whatever a client has encoded', () => {
    expect(toCoreUri('file:///c%3A/Bay%202/Pr%C3%BCfung.kit.yaml')).toBe('file:///c:/Bay 2/Prüfung.kit.yaml');
    expect(toCoreUri('file:///work/50%25.kit.yaml')).toBe('file:///work/50%.kit.yaml');
    expect(toCoreUri('untitled:Untitled-1')).toBe('untitled:Untitled-1');
  });

  test('that are no proper encoding are taken as they stand', () => {
    expect(toCoreUri('file:///work/50%.kit.yaml')).toBe('file:///work/50%.kit.yaml');
  });

  test('come back to the same file by way of a client', () => {
    for (const uri of ['file:///c:/a b/é#?%41&.kit.yaml', 'untitled:Untitled-1', 'file:///work/𝛥.family.yaml']) {
      expect(toCoreUri(toClientUri(uri))).toBe(uri);
      expect(new URL(toClientUri(uri)).href).toBe(toClientUri(uri));
    }
  });
});

describe('positions', () => {
  const text = 'a🔧b\r\nc\rd\n';
  const lines = new LineIndex(text);

  test('come back to the same offsets', () => {
    for (let start = 0; start <= text.length; start++) {
      // Between CR and LF there is no position of its own.
      if (text.slice(start - 1, start + 1) === '\r\n') continue;
      expect(toSpan(lines, toRange(lines, { start, end: text.length }))).toEqual({ start, end: text.length });
    }
  });

  test('beyond the end of a line or of the text mean that end', () => {
    const at = (line: number, character: number) => ({ start: { line, character }, end: { line, character } });
    expect(toSpan(lines, at(0, 99)).start).toBe(text.indexOf('\r\n'));
    expect(toSpan(lines, at(99, 0)).start).toBe(text.length);
  });
});

describe('changes', () => {
  test('count each from what the one before it left', () => {
    const at = (line: number, from: number, to: number) => ({
      start: { line, character: from },
      end: { line, character: to },
    });
    const changes = [
      { range: at(0, 0, 3), text: 'x\n' },
      { range: at(1, 0, 1), text: 'y' },
    ];
    expect(applyChanges(DocumentText.of('a🔧b\r\nc'), changes).whole).toBe('x\ny\r\nc');
    expect(applyChanges(DocumentText.of('anything'), [{ text: 'all new' }]).whole).toBe('all new');
  });
});
