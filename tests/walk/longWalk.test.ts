import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import process from 'node:process';
import { expect, test } from 'vitest';
import { ProcedureView } from '../../server/src/core/analysis/procedureView';
import { Workspace } from '../../server/src/core/analysis/workspace';
import type { BuildSet } from '../../server/src/core/builds';
import type { ItemRange } from '../../server/src/core/syntax/node';
import type { SyntaxDocument } from '../../server/src/core/syntax/readDocument';
import { readDocument } from '../../server/src/core/syntax/readDocument';
import { ReadingMemo } from '../../server/src/core/syntax/readingMemo';
import type { Failure, Happening } from '../../server/src/core/walk/failure';
import type { Lane } from '../../server/src/core/walk/lane';
import type { Moment } from '../../server/src/core/walk/trace';
import { walkOf } from '../../server/src/core/walk/walkProcedure';
import { overheated } from '../../server/src/core/workings/fitHeatLimits';
import { fittingJudgements } from '../../server/src/core/workings/fitJudgement';
import type { Warmed } from '../../server/src/core/workings/fitSurroundings';
import { type TemperedPart, temperatureTrace } from '../../server/src/core/workings/fitTrace';
import { NodeFiles, uriOfPath } from '../../server/src/node/nodeFiles';
import { seededRandom } from '../support/seededRandom';
import { editOfSteps, writtenRounds } from './writtenRounds';

const SEED = Number(process.env.WITNESSMARK_SEED ?? Math.floor(Math.random() * 2 ** 31));
/** How many edits are tried with each text. */
const EDITS = Number(process.env.WITNESSMARK_EDITS ?? 25);

const pathOf = (name: string): string => resolve('sample-procedures/procedures', `${name}.procedure.yaml`);

/** Sets of builds by number, so that two walks in one space can be compared as texts. */
class Sets {
  readonly #numbers = new Map<BuildSet, number>();

  of = (set: BuildSet): number => {
    const number = this.#numbers.get(set) ?? this.#numbers.size;
    this.#numbers.set(set, number);
    return number;
  };
}

/** All that a walk says, and what is concluded of its temperatures, in words and numbers. */
class Shown {
  constructor(
    readonly document: SyntaxDocument,
    readonly set: Sets['of'],
  ) {}

  all(procedure: ProcedureView): readonly string[] {
    const trace = walkOf(procedure);
    if (trace === undefined) throw new Error('no walk');
    const { failures, forks, moments, start, end, alive, whole } = trace;
    const { fittings, heatings } = temperatureTrace(procedure);
    return [
      `alive ${this.set(alive)} whole ${whole}`,
      ...failures.map((one) => this.failure(one)),
      ...forks.map(({ index, taken, notTaken }) => `fork ${index} ${taken} ${notTaken}`),
      ...moments.map((one) => this.moment(one)),
      ...[...(procedure.family?.parts.keys() ?? [])].map(
        (id) => `${id} by ${trace.momentsOf(id).map(({ at }) => this.place(at))}`,
      ),
      ...[...start].map(([id, lane]) => `start ${id} ${this.lane(lane)}`),
      ...[...end].map(([id, lane]) => `end ${id} ${this.lane(lane)}`),
      ...fittings.map(
        ({ ref, step, where, tempered }) =>
          `fitting ${this.place(ref.range)} ${step.id} ${this.set(where)} ${tempered.map((one) => this.tempered(one))}`,
      ),
      ...heatings.map(
        ({ source, warmed, at }) =>
          `heating ${this.tempered(source)} ${warmed.map((one) => this.warmed(one))} ${this.place(at?.range)}`,
      ),
      ...fittingJudgements(procedure).map(
        ({ fit, fitted, source, reached, enough, where }) =>
          `judged ${fit.part} ${this.place(fitted.range)} ${this.tempered(source)} ${reached} ${enough} ${this.set(where)}`,
      ),
      ...overheated(procedure).map(
        ({ source, warmed, stands, reaches, at, where }) =>
          `overheated ${this.tempered(source)} ${this.warmed(warmed)} ${stands} ${reaches} ${this.place(at?.range)} ${this.set(where)}`,
      ),
    ];
  }

  place(at: ItemRange | undefined): string {
    const span = at === undefined ? undefined : this.document.spanOf(at);
    return span === undefined ? 'nowhere' : `${span.start}..${span.end}`;
  }

  failure({ cause, about, other, where, at, index, because, undone, within }: Failure): string {
    const led = `${this.happening(because)} undone ${this.happening(undone)}`;
    const inner = within === undefined ? '' : ` (${this.failure(within)})`;
    return `${cause} ${about} ${other} ${this.set(where)} at ${this.place(at)} ${index} since ${led}${inner}`;
  }

  happening(one: Happening | undefined): string {
    return one === undefined
      ? '-'
      : `${one.what} ${one.part} ${this.set(one.where)} ${this.place(one.at)} ${one.index}`;
  }

  moment({ step, instruction, where, at, again, lanes, made, reads, changes }: Moment): string {
    const now = [...lanes].map(([id, lane]) => `${id}: ${this.lane(lane)}`);
    const cells = `${[...reads].sort()} to ${changes.map(({ cell }) => cell)}`;
    return `${step.id} ${instruction.verb} ${this.set(where)} ${this.place(at)} ${again} ${now} ${made} ${cells}`;
  }

  lane(lane: Lane): string {
    return Object.entries(lane)
      .map(([key, value]) => {
        const sets =
          value instanceof Map
            ? [...value].sort(([a], [b]) => a - b).map(([n, set]) => `${n}x${this.set(set)}`)
            : [this.set(value)];
        return `${key}${sets}`;
      })
      .join();
  }

  tempered({ part, is, until, step, served, where }: TemperedPart): string {
    return `${part} ${is} ${this.place(until.node)} ${step.id} ${this.set(served)} ${this.set(where)}`;
  }

  warmed(one: Warmed): string {
    return `${one.id} ${one.is === 'consumable' ? one.on : ''} ${this.set(one.where)}`;
  }
}

/** Edits a text again and again; each time, what was taken over is held against a walk that knows of no other. */
async function runScript(name: string, steps: number, seed: number): Promise<void> {
  const uri = uriOfPath(pathOf(name));
  const workspace = new Workspace([uriOfPath('sample-procedures')]);
  await workspace.loadLinked(uri, new NodeFiles());
  const random = seededRandom(seed);
  const whole = writtenRounds(readFileSync(pathOf(name), 'utf8'), steps);
  let text = whole;
  const sets = new Sets();
  const shown = (document: SyntaxDocument | undefined): readonly string[] => {
    const view = document === undefined ? undefined : ProcedureView.of(workspace.snapshot, document);
    if (document === undefined || view === undefined) return ['unread'];
    return new Shown(document, sets.of).all(view);
  };
  for (let i = 0; i <= EDITS; i++) {
    workspace.set(uri, { is: 'text', text });
    const fresh = readDocument(uri.replace(name, `fresh-${i}`), 'procedure', text, new ReadingMemo());
    expect(shown(workspace.snapshot.document(uri)), `edit ${i}`).toEqual(shown(fresh));
    text = random() < 0.1 ? whole : editOfSteps(text, random);
  }
}

test.each([
  ['v4-major', 150],
  ['v4-major', 40],
  ['h9-rebuild', 70],
])(
  `%s with %i steps: after each edit the walk is what a walk from the start gives (seed ${SEED})`,
  async (name, steps) => {
    await runScript(name, steps, SEED);
  },
  600_000,
);
