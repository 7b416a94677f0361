import type { Candidate } from '../../server/src/core/ide/completion/candidate';
import { completionsAt } from '../../server/src/core/ide/completion/complete';
import { applyEdits } from '../../server/src/core/text/span';
import { openMarks, variantsOf } from '../support/markedText';
import { example, steps } from './markedExample';

/** What is offered at `‸`, and what the text becomes; the same whatever the line ends are. */
export interface Offered {
  readonly labels: readonly string[];
  find(label: string): Candidate;
  /** The line of the cursor as it is once a label is chosen. */
  line(label: string): string;
  /** The same with places to fill in, where there are any; lines below it included. */
  snippet(label: string): string;
}

export async function offeredAt(
  source: Readonly<Record<string, string>>,
  files: readonly string[] = [],
): Promise<Offered> {
  const [plain, crlf] = await Promise.all(variantsOf(source).map((variant) => offeredIn(variant, files)));
  if (plain === undefined || crlf === undefined) throw new Error('No variants');
  if (JSON.stringify(plain.labels) !== JSON.stringify(crlf.labels)) {
    throw new Error(`With CR LF: ${crlf.labels.join(' ')}, and not ${plain.labels.join(' ')}`);
  }
  return plain;
}

async function offeredIn(source: Readonly<Record<string, string>>, files: readonly string[]): Promise<Offered> {
  const { marked, snapshot, document } = await openMarks(source);
  const uris = [...snapshot.uris, ...files.map((path) => document.uri.replace(/[^/]*$/, path))];
  const found = completionsAt({ snapshot, document, offset: marked.offset, files: uris });
  const candidates = found?.candidates ?? [];
  const find = (label: string): Candidate => {
    const candidate = candidates.find((one) => one.label === label);
    if (candidate === undefined) throw new Error(`No ${label} among ${candidates.map((one) => one.label).join(' ')}`);
    return candidate;
  };
  const chosen = (text: string) => {
    const span = found?.replace ?? { start: 0, end: 0 };
    const after = applyEdits(document.text, [{ span, text }]);
    const start = after.lastIndexOf('\n', span.start - 1) + 1;
    return after.slice(start, after.length - (document.text.length - lineEnd(document.text, marked.offset)));
  };
  return {
    labels: candidates.map((one) => one.label),
    find,
    line: (label) => chosen(find(label).text ?? label).trim(),
    snippet: (label) => chosen(find(label).snippet ?? '').trim(),
  };
}

function lineEnd(text: string, offset: number): number {
  const end = text.slice(offset).search(/\r?\n|$/);
  return offset + end;
}

/** The same in an instruction of a step, in the head of the procedure, and in another document with a stretch replaced. */
export async function inStep(instructions: string, files?: readonly string[]) {
  return offeredAt(example(steps(instructions)), files);
}

export async function inHead(lines: string) {
  return offeredAt(example(steps('- install: wheel', lines)));
}

export async function inFile(path: string, from: string, to: string) {
  return offeredAt(example(steps('- install: wheel'), { [path]: [[from, to]] }));
}
