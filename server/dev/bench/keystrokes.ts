import { checkDocument } from '../../src/core/rules/checkDocument';
import { cpuPair, line } from './measure';
import { bareParse, procedureOf, SAMPLE_URI, TODAY, workspaceOfSample } from './procedures';

interface Keystroke {
  readonly name: string;
  edit(text: string, round: number): string;
}

/** What a writer does in the middle of a long procedure. */
const KEYSTROKES: readonly Keystroke[] = [
  {
    name: 'typing inside a value',
    edit: (text, round) => insertAt(text, afterTitle(text), 'x'.repeat((round % 7) + 1)),
  },
  {
    name: 'adding a line',
    edit: (text, round) =>
      insertAt(text, lineEnd(text, afterTitle(text)), `${newline(text)}        note: remark ${round}`),
  },
  { name: 'deleting a step', edit: (text, round) => withoutStep(text, 140 + (round % 5)) },
];

/** The time from a changed text to its findings, with everything else remembered, as in an editor. */
export async function keystrokes(): Promise<void> {
  for (const [name, text] of [
    ['LF', procedureOf(300)],
    ['CRLF', procedureOf(300).replaceAll('\n', '\r\n')],
  ] as const) {
    for (const keystroke of KEYSTROKES) {
      const workspace = await workspaceOfSample();
      let round = 0;
      const press = (): void => {
        workspace.set(SAMPLE_URI, { is: 'text', text: keystroke.edit(text, round++) });
        const document = workspace.snapshot.document(SAMPLE_URI);
        if (document !== undefined) checkDocument(workspace.snapshot, document, { today: TODAY });
      };
      const { ms, peerMs } = cpuPair(press, () => bareParse(text), 15, 6);
      line(`300 steps, ${name}: ${keystroke.name}`, ms, peerMs);
    }
  }
}

function afterTitle(text: string): number {
  const middle = text.indexOf('title: ', text.length / 2);
  return lineEnd(text, middle);
}

function lineEnd(text: string, at: number): number {
  const end = text.indexOf('\n', at);
  return text.charAt(end - 1) === '\r' ? end - 1 : end;
}

function newline(text: string): string {
  return text.includes('\r\n') ? '\r\n' : '\n';
}

function insertAt(text: string, at: number, added: string): string {
  return text.slice(0, at) + added + text.slice(at);
}

function withoutStep(text: string, index: number): string {
  const chunks = text.split(/(?=^ {6}- step: )/m);
  chunks.splice(index, 1);
  return chunks.join('');
}
