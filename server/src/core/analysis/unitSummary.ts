import { type Unit, unitsIn } from '../model/facts';
import type { RefKind } from '../model/shape';
import type { Declared, Mention, PathRef } from '../model/values';
import { type KnownRuns, keptWith, type Numbered, nextSerial, type Run, runsOf } from './runs';

/** What the procedure as a whole is asked about again and again, gathered from a stretch of it. */
export interface UnitSummary extends Numbered {
  readonly declared: readonly Declared[];
  /** The first thing of a kind that is declared with an id. */
  find(kind: RefKind, id: string): Declared | undefined;
  /** Kinds and ids of what is declared, as one text. */
  readonly ids: string;
  /** Ids by kind, without those of lists such as `tools`. */
  readonly named: ReadonlyMap<RefKind, ReadonlySet<string>>;
  /** `<id>` in texts that the fitter reads, each way of writing it once. */
  readonly mentions: readonly Mention[];
  /** The same in remarks that are not printed. */
  readonly noted: readonly Mention[];
  readonly paths: readonly PathRef[];
  /** Each path once, by what it leads to. */
  readonly targets: ReadonlyMap<string, PathRef>;
  /** Something of an instruction, a step or a phase cannot be read as what it is meant to be, or is not written yet. */
  readonly unsettled: boolean;
}

/**
 * The summaries of a document in the order of its text: one of each long row of steps, which is kept with it, and one of each
 * stretch between. So what asks all of a long procedure after each key goes through a few, and not through all that is in
 * them. Made once for a reading.
 */
export function summariesOf(root: Unit): readonly UnitSummary[] {
  const known = root.summary as Whole | undefined;
  if (known !== undefined) return known.summaries;
  const summaries = stretchesOf(root);
  root.summary = { summaries } satisfies Whole;
  return summaries;
}

interface Whole {
  readonly summaries: readonly UnitSummary[];
}

function stretchesOf(unit: Unit): UnitSummary[] {
  const summaries = [summaryOf([unit])];
  let steps: UnitSummary[] = [];
  const endSteps = (): void => {
    const runs = runsOf(steps, knownRuns).map(summaryOfRun);
    // Of two thousand steps a hundred runs are left, and of these ten.
    for (const run of runsOf(runs, knownRunsOfRuns)) summaries.push(summaryOfRun(run));
    steps = [];
  };
  for (const child of unit.children) {
    if (child.def === 'procedure/step') {
      steps.push(summaryOfStep(child));
      continue;
    }
    endSteps();
    if (child.def === 'procedure/phase') for (const one of stretchesOf(child)) summaries.push(one);
    else summaries.push(summaryOf(unitsIn(child)));
  }
  endSteps();
  return summaries;
}

const knownRuns: KnownRuns<UnitSummary> = new WeakMap();
const knownRunsOfRuns: KnownRuns<UnitSummary> = new WeakMap();

function summaryOfRun(run: Run<UnitSummary>): UnitSummary {
  const [only] = run.things;
  if (run.things.length === 1 && only !== undefined) return only;
  return keptWith(run, summaryOfRun, undefined, () => {
    const gathering = new Gathering();
    for (const one of run.things) gathering.addSummary(one);
    return gathering;
  });
}

function summaryOfStep(step: Unit): UnitSummary {
  const known = step.summary as UnitSummary | undefined;
  if (known !== undefined) return known;
  const summary = summaryOf(unitsIn(step));
  step.summary = summary;
  return summary;
}

function summaryOf(units: readonly Unit[]): UnitSummary {
  const gathering = new Gathering();
  for (const unit of units) gathering.addUnit(unit);
  return gathering;
}

class Gathering implements UnitSummary {
  readonly serial = nextSerial();
  readonly declared: Declared[] = [];
  ids = '';
  readonly named = new Map<RefKind, Set<string>>();
  readonly mentions: Mention[] = [];
  readonly noted: Mention[] = [];
  readonly paths: PathRef[] = [];
  readonly targets = new Map<string, PathRef>();
  unsettled = false;
  #byKind: Map<RefKind, Map<string, Declared>> | undefined;

  find(kind: RefKind, id: string): Declared | undefined {
    if (this.declared.length < FEW) return this.declared.find((one) => one.kind === kind && one.id === id);
    this.#byKind ??= firstByKind(this.declared);
    return this.#byKind.get(kind)?.get(id);
  }

  addUnit(unit: Unit): void {
    const { declared, paths, refs, prose } = unit.facts;
    for (const one of declared) this.#declare(one);
    for (const one of paths) this.paths.push(one);
    for (const one of paths) addTarget(this.targets, `${one.to} ${one.path}`, one);
    for (const { ref } of refs) if (!ref.listing) setOf(this.named, ref.kind).add(ref.id);
    for (const { key, prose: text } of prose) addMentions(key === 'note' ? this.noted : this.mentions, text.mentions);
    this.unsettled ||= isUnsettled(unit);
  }

  addSummary(one: UnitSummary): void {
    for (const declared of one.declared) this.#declare(declared);
    for (const path of one.paths) this.paths.push(path);
    for (const [key, path] of one.targets) addTarget(this.targets, key, path);
    for (const [kind, ids] of one.named) for (const id of ids) setOf(this.named, kind).add(id);
    addMentions(this.mentions, one.mentions);
    addMentions(this.noted, one.noted);
    this.unsettled ||= one.unsettled;
  }

  #declare(declared: Declared): void {
    this.declared.push(declared);
    this.ids += `${declared.kind} ${declared.id}\n`;
  }
}

/** So many are looked through sooner than they are put in order. */
const FEW = 8;

function firstByKind(declared: readonly Declared[]): Map<RefKind, Map<string, Declared>> {
  const byKind = new Map<RefKind, Map<string, Declared>>();
  for (const one of declared) {
    const byId = byKind.get(one.kind) ?? new Map<string, Declared>();
    byKind.set(one.kind, byId);
    if (!byId.has(one.id)) byId.set(one.id, one);
  }
  return byKind;
}

function addMentions(known: Mention[], more: readonly Mention[]): void {
  for (const mention of more) {
    if (!known.some(({ id, kind }) => id === mention.id && kind === mention.kind)) known.push(mention);
  }
}

function addTarget(targets: Map<string, PathRef>, key: string, path: PathRef): void {
  if (!targets.has(key)) targets.set(key, path);
}

function setOf(named: Map<RefKind, Set<string>>, kind: RefKind): Set<string> {
  const known = named.get(kind) ?? new Set<string>();
  named.set(kind, known);
  return known;
}

/** Whether a part of the work holds a key that nothing reads or that has no value yet, so that what seems to be missing may be it. */
export function isUnsettled({ def, problems }: Unit): boolean {
  if (problems.length === 0 || !isOfStep(def)) return false;
  return problems.some(({ kind }) => kind !== 'duplicate-key' && kind !== 'wrong-id' && kind !== 'wrong-date');
}

function isOfStep(def: string): boolean {
  return (
    def === 'procedure/step' ||
    def === 'procedure/phase' ||
    def === 'procedure/sentence' ||
    def.startsWith('procedure/verb-')
  );
}
