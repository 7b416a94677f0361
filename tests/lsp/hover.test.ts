import { describe, expect, test } from 'vitest';
import { type Hover, HoverRequest, type MarkupContent } from 'vscode-languageserver/node';
import { EXAMPLE_PATHS } from '../../server/src/core/rules/exampleDocuments';
import { inStep } from '../../server/src/core/rules/examples';
import { LineIndex } from '../../server/src/core/text/lineIndex';
import { TestClient } from './client';

const { procedure, family } = EXAMPLE_PATHS;
const EXAMPLE = inStep('- tighten: cap-nut\n  torque: 4.6 ± 0.3 N·m\n  with: [torque-wrench-10, socket-8]');

/** The hover at the start of a word, and the text that it marks. */
async function hoverAt(client: TestClient, path: string, text: string, word: string) {
  const lines = new LineIndex(text);
  const position = lines.position(text.indexOf(word) + 1);
  const hover: Hover | null = await client.connection.sendRequest(HoverRequest.type, {
    textDocument: { uri: client.uri(path) },
    position,
  });
  if (hover === null) return undefined;
  const { kind, value } = hover.contents as MarkupContent;
  const { start, end } = hover.range ?? { start: position, end: position };
  return { kind, value, marked: text.slice(lines.offset(start), lines.offset(end)) };
}

describe('hovering', () => {
  test('over a torque shows its working as Markdown', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    const hover = await hoverAt(client, procedure, EXAMPLE.files[procedure] ?? '', '4.6 ±');
    expect(hover?.kind).toBe('markdown');
    expect(hover?.marked).toBe('4.6 ± 0.3 N·m');
    expect(hover?.value).toContain('| Torque of the cap nut |');
    expect(hover?.value).toContain('40.7 ± 2.7 lbf·in (38.1 to 43.4); ');
    expect(hover?.value).toContain('```text\nd = 5 mm, P = 0.8 mm, ');
  });

  test('over the fastener shows the same, and over a word that means nothing shows nothing', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    const text = EXAMPLE.files[procedure] ?? '';
    expect((await hoverAt(client, procedure, text, 'cap-nut'))?.value).toContain('| Torque of the cap nut |');
    expect(await hoverAt(client, procedure, text, 'Assemble')).toBeUndefined();
    expect(await hoverAt(client, 'nowhere.procedure.yaml', 'x', 'x')).toBeUndefined();
  });

  test('over an id shows the facts of what it stands for, and as plain text where that is wanted', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    const hover = await hoverAt(client, procedure, EXAMPLE.files[procedure] ?? '', 'cap-nut');
    expect(hover?.marked).toBe('cap-nut');
    expect(hover?.value).toContain('| **cap nut** | part: nut · `cap-nut` |');
    expect(hover?.value).toContain('| Hand | right-hand (clockwise to tighten) on K1-A |');
    const plain = await TestClient.start(EXAMPLE.files, { hoverFormats: ['plaintext'] });
    const text = EXAMPLE.files[procedure] ?? '';
    expect((await hoverAt(plain, procedure, text, 'threadlocker'))?.value).toMatch(
      /^threadlocker \(consumable.*\n {2}Cures/,
    );
  });

  test('follows the text that is open, not yet saved, in this document and in the one that it links to', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    const text = (EXAMPLE.files[procedure] ?? '').replace('4.6 ± 0.3', '4.8 ± 0.3');
    client.open(procedure, text);
    expect((await hoverAt(client, procedure, text, '4.8 ±'))?.value).toContain('4.5 to 5.1 N·m');
    const changed = (EXAMPLE.files[family] ?? '').replace('thread: M5×0.8', 'thread: M6×1');
    client.open(family, changed);
    expect((await hoverAt(client, procedure, text, '4.8 ±'))?.value).toContain('M6×1');
  });

  test('finds its place behind characters of two units and lines that end in CR LF', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    const step = '- { note: "🔧🔧", tighten: cap-nut, torque: 4.6 ± 0.3 N·m, with: [torque-wrench-10, socket-8] }';
    const text = (inStep(step).files[procedure] ?? '').replaceAll('\n', '\r\n');
    client.open(procedure, text);
    const hover = await hoverAt(client, procedure, text, '4.6 ±');
    expect(hover?.marked).toBe('4.6 ± 0.3 N·m');
    expect(hover?.value).toContain('| Torque of the cap nut |');
  });

  test('shows what it can in a broken document', async () => {
    const client = await TestClient.start(EXAMPLE.files);
    const text = `${EXAMPLE.files[procedure]}          - tighten: "cap\n          - wait: 20 min\n: : [\n`;
    client.open(procedure, text);
    expect((await hoverAt(client, procedure, text, '4.6 ±'))?.value).toContain('| Torque of the cap nut |');
    client.change(procedure, 'phases: [');
    expect(await hoverAt(client, procedure, 'phases: [', 'phases')).toMatchObject({ marked: 'phases' });
    client.change(procedure, '[phases');
    expect(await hoverAt(client, procedure, '[phases', 'phases')).toBeUndefined();
  });

  test('is plain text for a client that shows no Markdown', async () => {
    const client = await TestClient.start(EXAMPLE.files, { hoverFormats: ['plaintext'] });
    const hover = await hoverAt(client, procedure, EXAMPLE.files[procedure] ?? '', '4.6 ±');
    expect(hover?.kind).toBe('plaintext');
    expect(hover?.value).toMatch(/^Torque of the cap nut.*\n {2}Stated +4\.6 ± 0\.3 N·m\n/);
  });

  test('shows the working of a finding that stands there', async () => {
    const strange = inStep('- tighten: cap-nut\n  torque: 46 ± 3 N·m\n  with: [torque-wrench-10, socket-8]');
    const client = await TestClient.start(strange.files);
    const hover = await hoverAt(client, procedure, strange.files[procedure] ?? '', '46 ±');
    expect(hover?.value).toContain('would be right in lbf·in');
    // What the place and the findings there rest on alike is shown once.
    expect(hover?.value.match(/\| Stated \| 46 ± 3 N·m \|/g)?.length).toBe(1);
  });
});
