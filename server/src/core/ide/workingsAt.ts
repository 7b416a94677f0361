import { FamilyView } from '../analysis/familyView';
import { ProcedureView } from '../analysis/procedureView';
import type { Snapshot } from '../analysis/snapshot';
import { type BuildSpace, pickBuild } from '../builds';
import type { Quantity } from '../quantity';
import type { Finding } from '../rules/finding';
import type { SyntaxDocument } from '../syntax/readDocument';
import type { Span } from '../text/span';
import { quantityWorking } from '../workings/quantityWorking';
import type { Working } from '../workings/working';
import type { FoundWorking } from './finders/finder';
import type { Place } from './place';
import { placesWithin } from './placeAt';
import { shortRepeats } from './shortRepeats';
import { workingsFound } from './workingFinders';

/** What is asked: the workings in a span of a document, which may be a single offset. */
export interface WorkingsRequest {
  readonly snapshot: Snapshot;
  readonly document: SyntaxDocument;
  readonly span: Span;
  /** What was found in the document: a finding shows the calculation that it rests on. */
  readonly findings: readonly Finding[];
  /** Only what holds on this build, as it is named for a sheet. */
  readonly build?: string;
}

/** Workings, and what of the text they are about. */
export interface WorkingsThere {
  readonly span: Span;
  readonly workings: readonly Working[];
}

/** The workings of everything that stands in a span, each once; undefined where there is nothing to work out. */
export function workingsAt(request: WorkingsRequest): WorkingsThere | undefined {
  const { snapshot, document, span, findings, build } = request;
  const places = placesWithin(snapshot, document, span);
  const atPlaces = places.map((place) => ({ span: place.span, workings: workingsOf(place, build) }));
  const touched = findings.filter((one) => one.span.start <= span.end && span.start <= one.span.end);
  const ofFindings = touched.map((one) => ({ span: one.span, workings: one.working() }));
  const told = [...atPlaces, ...ofFindings].filter(({ workings }) => workings.length > 0);
  const [first] = told;
  if (first === undefined) return undefined;
  return { span: first.span, workings: shortRepeats(withoutDoubles(told.flatMap(({ workings }) => workings))) };
}

/** The builds that a document speaks of: those of its procedure or of the family that it is; undefined for others. */
export function buildSpaceOf(snapshot: Snapshot, document: SyntaxDocument): BuildSpace | undefined {
  if (document.kind === 'procedure') return ProcedureView.of(snapshot, document)?.space;
  return FamilyView.of(document)?.space;
}

function workingsOf(place: Place, build: string | undefined): readonly Working[] {
  const quantity = quantityAt(place);
  const engineering = workingsFound(place)
    .filter((one) => build === undefined || holdsOn(one, build))
    .map(({ working }) => working);
  if (quantity === undefined || engineering.length > 0) return engineering;
  return [quantityWorking(quantity)].filter((working) => working !== undefined);
}

function quantityAt({ value }: Place): Quantity | undefined {
  if (value.is === 'in-prose') return value.quantity;
  return value.is === 'quantity' ? value.value.reading.quantity : undefined;
}

function holdsOn({ holds }: FoundWorking, build: string): boolean {
  if (holds === undefined) return true;
  const picked = pickBuild(holds.space, build);
  return picked.kind === 'refused' || !picked.set.and(holds.set).isEmpty;
}

/** A finding often rests on the very calculation that is shown for its place. */
function withoutDoubles(workings: readonly Working[]): Working[] {
  const told = new Set<string>();
  return workings.filter(({ title, builds, steps, missing }) => {
    const key = JSON.stringify([title, builds, steps, missing]);
    const isNew = !told.has(key);
    told.add(key);
    return isNew;
  });
}
