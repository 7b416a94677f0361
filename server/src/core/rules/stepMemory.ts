import { pathsOf } from '../analysis/links';
import type { ProcedureView, StepView } from '../analysis/procedureView';
import type { BuildSet } from '../builds';
import type { Unit } from '../model/facts';
import type { Rule } from './defineRule';
import type { FindingDraft, Surroundings } from './ruleContext';

/**
 * Everything beside a step's own text that findings at it may depend on. Two checks with the same surroundings have the
 * same object.
 */
export interface StepEnvironment {
  readonly parts: readonly unknown[];
}

interface Remembered {
  readonly environment: StepEnvironment;
  readonly where: BuildSet | undefined;
  readonly drafts: readonly FindingDraft[];
}

/** Few procedures are worked on at a time; each is found again after a keystroke as long as it is among the last. */
const MOST = 16;
const recent: StepEnvironment[] = [];

/** The surroundings of a procedure's steps: its head, what it links to, settings, day and rules. */
export function environmentOf(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]): StepEnvironment {
  const parts = partsOf(procedure, around, rules);
  const at = recent.findIndex(
    (one) => one.parts.length === parts.length && one.parts.every((part, i) => part === parts[i]),
  );
  const environment = recent[at] ?? { parts };
  if (at >= 0) recent.splice(at, 1);
  recent.unshift(environment);
  recent.length = Math.min(recent.length, MOST);
  return environment;
}

function partsOf(procedure: ProcedureView, around: Surroundings, rules: readonly Rule[]): unknown[] {
  const { document, steps, kits, snapshot } = procedure;
  const inSteps = new Set(steps.map(({ step }) => step.node.item));
  const head = document.items.filter((item) => !inSteps.has(item));
  const torn = document.problems.map((problem) => problem.range.item);
  const links = pathsOf(document).map((path) => {
    const target = procedure.follow(path);
    return target.is === 'document' ? target.document : target.is === 'file' ? target.text : target.is;
  });
  const families = kits.map((kit) => kit.family?.document);
  // A mention means a tool only where no step has the same id.
  const shared = steps.flatMap(({ id }) => (isShared(procedure, id) ? [id] : []));
  return [
    rules,
    around.settings,
    around.today,
    snapshot.roots,
    ...shared,
    ...links,
    ...families,
    'head',
    ...head,
    'torn',
    ...torn,
  ];
}

function isShared({ tools, consumables, family }: ProcedureView, id: string): boolean {
  return tools.has(id) || consumables.has(id) || family?.part(id) !== undefined;
}

/** What was found at a step in the same surroundings; undefined where it must be looked at anew. */
export function recall(
  unit: Unit,
  environment: StepEnvironment,
  view: StepView | undefined,
): readonly FindingDraft[] | undefined {
  const known = unit.remembered as Remembered | undefined;
  return known?.environment === environment && known.where === view?.where ? known.drafts : undefined;
}

/** Keeps what was found at a step, without what depends on other steps. */
export function remember(
  unit: Unit,
  environment: StepEnvironment,
  view: StepView | undefined,
  drafts: readonly FindingDraft[],
): void {
  const own = drafts.filter((draft) => draft.rule.looksAt !== 'procedure');
  unit.remembered = { environment, where: view?.where, drafts: own } satisfies Remembered;
}
