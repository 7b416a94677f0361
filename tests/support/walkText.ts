import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { describeBuilds } from '../../server/src/core/builds';
import { EXAMPLE_PATHS, EXAMPLE_STORES } from '../../server/src/core/rules/exampleDocuments';
import { type Example, inStep, withFamily, withFiles } from '../../server/src/core/rules/examples';
import type { LaneKey } from '../../server/src/core/walk/lane';
import { walkOf } from '../../server/src/core/walk/walkProcedure';
import { openFiles } from './memoryFiles';

export interface WalkedText {
  /** What fails while the work goes on, as `cause part other (builds)`; what is at the place of nothing is left out. */
  readonly failures: readonly string[];
  /** The same for what is found at the end. */
  readonly end: readonly string[];
  /** Where a fact of a part holds at the end, in words: '' everywhere, 'no build' nowhere. */
  fact(part: string, fact: LaneKey | 'fitted' | 'torqued' | 'partly'): string;
}

/** Walks the instructions of one step, on the example family with some of its entries changed. */
export function walkSteps(steps: string, family?: string): Promise<WalkedText> {
  const stores = `${EXAMPLE_STORES}  oil: { name: assembly oil, kind: oil }\n`;
  const example = withFiles(inStep(steps), { [EXAMPLE_PATHS.stores]: stores });
  return walkExample(family === undefined ? example : withFamily(example, family));
}

export async function walkExample(example: Example): Promise<WalkedText> {
  const { workspace, document } = await openFiles(example.files, example.at);
  const view = ProcedureView.of(workspace.snapshot, document);
  const trace = view === undefined ? undefined : walkOf(view);
  if (view === undefined || trace === undefined) throw new Error('The example cannot be walked');
  const words = (where: Parameters<typeof describeBuilds>[0]): string =>
    describeBuilds(where, view.space, (index) => trace.forks[index]);
  const shown = trace.failures.map(({ cause, about, other, where, at }) => ({
    ends: at === undefined,
    text: [cause, about, other, words(where) === '' ? undefined : `(${words(where)})`]
      .filter((one) => one !== undefined)
      .join(' '),
  }));
  return {
    failures: shown.filter((one) => !one.ends).map((one) => one.text),
    end: shown.filter((one) => one.ends).map((one) => one.text),
    fact: (part, fact) => {
      const set = trace.end.get(part)?.[fact];
      return set === undefined ? 'no such part' : words(set);
    },
  };
}
