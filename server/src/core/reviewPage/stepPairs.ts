import { documentValue } from '../analysis/documentUnit';
import { ProcedureView } from '../analysis/procedureView';
import { settingsFor } from '../analysis/settings';
import { pickBuild } from '../builds';
import type { Change } from '../review/change';
import type { Version } from '../review/version';
import { buildSheet } from '../sheet/buildSheet';
import { sheetToPage } from '../sheet/html';
import type { HtmlBlock } from '../sheet/htmlBlocks';
import type { Reviewed } from './reviewed';

/** A step of the sheet of one build as it was and as it is; markup of our own sheet, ready to print. */
export interface StepPair {
  readonly id: string;
  readonly before: string | undefined;
  readonly after: string | undefined;
  readonly changes: readonly Change[];
}

/** The changed steps of a procedure, for the plainest build that they are on. */
export interface ChangedSheet {
  readonly document: string;
  readonly title: string;
  readonly build: string;
  readonly steps: readonly StepPair[];
}

/** Every procedure of which the steps differ, with these steps side by side. */
export function changedSheets(reviewed: Reviewed): ChangedSheet[] {
  const byUri = new Map<string, Map<string, Change[]>>();
  for (const change of reviewed.changes) {
    if (change.class === 'looks') continue;
    for (const { uri, steps } of change.reached) {
      const bySteps = byUri.get(uri) ?? new Map<string, Change[]>();
      byUri.set(uri, bySteps);
      for (const step of steps) bySteps.set(step, [...(bySteps.get(step) ?? []), change]);
    }
  }
  return [...byUri].flatMap(([uri, steps]) => sheetOf(reviewed, uri, steps) ?? []);
}

function sheetOf(
  reviewed: Reviewed,
  uri: string,
  changed: ReadonlyMap<string, readonly Change[]>,
): ChangedSheet | undefined {
  const builds = [...changed.values()]
    .flat()
    .flatMap((one) => one.reached.find((reached) => reached.uri === uri)?.builds ?? []);
  const [build] = builds;
  if (build === undefined) return undefined;
  const before = pieceOf(reviewed.before, earlierUri(reviewed, uri), build);
  const after = pieceOf(reviewed.after, uri, build);
  const shown = after ?? before;
  if (shown === undefined) return undefined;
  const steps = [...changed].map(([id, changes]): StepPair => {
    const old = changes.find((one) => one.of.step === id && one.kind === 'renamed')?.before?.text ?? id;
    return { id, before: before?.steps.get(old), after: after?.steps.get(id), changes };
  });
  return { ...shown, steps: steps.filter((one) => one.before !== undefined || one.after !== undefined) };
}

/** A document that was given another name is found by its number. */
function earlierUri({ before, after }: Reviewed, uri: string): string {
  if (before.uris.includes(uri)) return uri;
  const number = numberOf(after, uri);
  return before.uris.find((one) => number !== undefined && numberOf(before, one) === number) ?? uri;
}

function numberOf({ snapshot }: Version, uri: string): string | undefined {
  const document = snapshot.document(uri);
  return document === undefined ? undefined : documentValue(document, 'procedure')?.procedure?.text;
}

interface Printed {
  readonly document: string;
  readonly title: string;
  readonly build: string;
  readonly steps: ReadonlyMap<string, string>;
}

function pieceOf({ snapshot }: Version, uri: string, build: string): Printed | undefined {
  const document = snapshot.document(uri);
  const procedure = document === undefined ? undefined : ProcedureView.of(snapshot, document);
  const picked = procedure === undefined ? undefined : pickBuild(procedure.space, build);
  if (procedure === undefined || picked?.kind !== 'picked') return undefined;
  const settings = settingsFor(snapshot, uri);
  const sheet = buildSheet(procedure, picked, {
    findings: [],
    settings,
    language: settings.language,
    paper: settings.paper,
  });
  const page = sheetToPage(sheet);
  const { document: number, title, build: label } = sheet.header;
  return { document: number, title, build: label, steps: new Map(stepsIn(page.blocks)) };
}

function* stepsIn(blocks: readonly HtmlBlock[]): Generator<[string, string]> {
  for (const block of blocks) {
    if ('parts' in block) yield* stepsIn(block.parts);
    else if (block.key.startsWith('step ')) yield [block.key.slice('step '.length), block.html];
  }
}
